/** Adding to the record: nothing else changes anything. */

import { batch, signal } from '@preact/signals';
import { type Entry, type Event, type Id, sortieTimeMs } from '../../core';
import { newId } from '../../record/record';
import { record, sortie } from '../board';
import { wallMs, wallNowMs } from '../flight/time';

/** Adds to the sortie in progress; the first entry begins one. */
export function add(...events: readonly Event[]): readonly Entry[] {
  return addTo(sortie.value.id ?? newId(), ...events);
}

/** Adds to a sortie by its id. */
export function addTo(id: Id, ...events: readonly Event[]): readonly Entry[] {
  return batch(() => {
    wallMs.value = wallNowMs();
    return record.add(id, momentAt(wallMs.value), ...events);
  });
}

/** A moment of the device's clock, with the reading of the sortie's own clock. */
export function momentAt(ms: number): Entry['at'] {
  return { wallMs: ms, sortieMs: Math.round(sortieTimeMs(sortie.value.clock, ms)) };
}

/** A recent change that one tap takes back. */
export interface Undoable {
  readonly what:
    | 'route'
    | 'end'
    | 'field'
    | 'aircraft'
    | 'load'
    | 'sortie'
    | 'jump'
    | 'begun'
    | 'list'
    | 'wind'
    | 'wind elsewhere'
    | 'taken up';
  readonly entries: readonly Entry[];
}

/** The change offered for undo; null most of the time. */
export const undoable = signal<Undoable | null>(null);

/** Takes the offered change back. */
export function undoChange(): void {
  const change = undoable.value;
  undoable.value = null;
  for (const entry of change?.entries ?? []) {
    addTo(entry.sortie, { kind: 'undo', target: entry.id });
  }
}
