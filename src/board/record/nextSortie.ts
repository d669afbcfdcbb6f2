/** The end of a sortie, and what the next one takes over from it. */

import { brakesUsedMs, type Event, type Inputs, sortieTimeMs } from '../../core';
import { newId } from '../../record/record';
import { day, sortie } from '../board';
import { wallNowMs } from '../flight/time';
import { add, addTo, undoable } from './adding';
import { seal } from './sealing';

/** What a field is like today means nothing on another, nor on another sortie. */
export const NO_CONDITIONS = { surface: 'dry', ownQnhHpa: null, ownTemperatureC: null } as const;

/**
 * Ends the sortie, seals its figures, and begins the next with the same field, aircraft and limits,
 * but for what is chosen.
 */
export function endSortie(chosen: Partial<Inputs> = {}): void {
  const { run, lists, clock } = sortie.value;
  const { chosen: _chosen, purpose: _purpose, supersonic: _s, ...kept } = day.inputs();
  const open = lists
    .map((one): Event => ({ kind: 'close', run: one.id, leadsTo: 'end' }))
    .reverse();
  const closing =
    run === null ? [] : add(seal(), ...open, { kind: 'close', run: run.id, leadsTo: 'end' });
  const inputs = {
    ...kept,
    ...NO_CONDITIONS,
    taxiTold: null,
    // The same aircraft's brakes are as hot as they were.
    brakesUsedMs: brakesUsedMs(sortie.value),
    ...chosen,
  };
  const next: Event[] = [{ kind: 'set', inputs }];
  if (clock !== null) {
    next.push({ kind: 'clock', sortieMs: sortieTimeMs(clock, wallNowMs()), rate: clock.rate });
  }
  undoable.value = { what: 'sortie', entries: [...closing, ...addTo(newId(), ...next)] };
}
