/**
 * What is in the aircraft: every change is stored at once, and repeated adjustments of one thing
 * are undone together.
 */

import { type Entry, type Load, usualLoad } from '../../core';
import { day, documents } from '../board';
import { add, undoable } from '../record/adding';

/** What was changed last: the fuel, a station by its name, or everything by a preset. */
let changedLast: string | null = null;

/** Changes what a station carries, kg. */
export function loadStation(station: string, kg: number): void {
  changeLoad(station, ({ stations }) => ({ stations: { ...stations, [station]: kg } }));
}

/** Changes the fuel, kg. */
export function loadFuel(fuelKg: number): void {
  changeLoad('fuel', () => ({ fuelKg }));
}

/** Takes a whole load, as a preset is. */
export function loadAs(load: Load): void {
  changeLoad('', () => load);
}

/**
 * `part` names what changes: repeated changes of one part are undone together. What changes is
 * today's load, not the one on the screen, which is drawn only once it is stored.
 */
function changeLoad(part: string, change: (load: Load) => Partial<Load>): void {
  const loading = documents.value.aircraft?.load;
  if (loading === undefined) return;
  const now = day.inputs().load ?? usualLoad(loading);
  const load = { ...now, ...change(now) };
  const { value: offered } = undoable;
  const isGoingOn = offered?.what === 'load' && changedLast === part;
  const before: readonly Entry[] = isGoingOn ? offered.entries : [];
  changedLast = part;
  undoable.value = {
    what: 'load',
    entries: [...before, ...add({ kind: 'set', inputs: { load } })],
  };
}
