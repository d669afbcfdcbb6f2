/** What the pilot chooses: field, aircraft, runway end, clock, limits. */

import type { ListedAircraft, ListedField } from 'virtual:lapstrip-catalogue';
import { type Chosen, type Event, type Hash, hasMoved, type Inputs } from '../../core';
import { day, sortie } from '../board';
import { aircraft } from '../documents/inUse';
import { typing } from '../places';
import { setWind } from '../wind/windEntry';
import { add, undoable } from './adding';
import { endSortie, NO_CONDITIONS } from './nextSortie';

/** Sets what the pilot chose. */
export function setInputs(chosen: Partial<Inputs>): void {
  add({ kind: 'set', inputs: chosen });
}

/** Closes a runway end for today, or opens it. */
export function closeEnd(end: string, closed: boolean): void {
  const others = day.inputs().closedToday.filter((one) => one !== end);
  setInputs({ closedToday: closed ? [...others, end] : others });
}

/** Sets how much of an end may be landed on, m; null for all of it. */
export function holdShort(end: string, metres: number | null): void {
  const { [end]: _before, ...others } = day.inputs().holdShortM;
  setInputs({ holdShortM: metres === null ? others : { ...others, [end]: metres } });
}

/** Fits one of the procedure's options, or leaves it out. */
export function fitOption(id: string, fitted: boolean): void {
  setInputs({ options: { ...day.inputs().options, [id]: fitted } });
}

/** Stands, stretches and entries of one field mean nothing on another. */
const NO_ROUTE = {
  stand: null,
  taxiClosed: [],
  taxiEntry: null,
  taxiVia: null,
  taxiTold: null,
  rollsFromM: 0,
};

/** What another field takes with it; an end of the old one can't stay in use. */
export function atField(hash: Hash): Partial<Inputs> {
  // Before the first field, what was entered was entered for it.
  const elsewhere = day.inputs().field === null ? {} : NO_CONDITIONS;
  return { field: hash, chosen: null, ...NO_ROUTE, ...elsewhere };
}

/** Switches to another field. */
export function chooseField(field: ListedField): void {
  if (field.hash === day.inputs().field) return;
  const first = day.inputs().field === null;
  const entries = add({ kind: 'set', inputs: atField(field.hash) });
  if (!first) undoable.value = { what: 'field', entries };
}

/** What belongs to an aircraft, and not to the next one. */
const AS_USUAL = { procedure: null, load: null, bingoKg: null, brakesUsedMs: null } as const;

/**
 * Takes another aircraft, with its usual procedure and its usual load, and without the bingo fuel of
 * the one before. Once that one has moved, what it did stays with it: the sortie is ended, and the
 * next begins. A newer version of the same aircraft flies on.
 */
export function chooseAircraft({ hash, code }: ListedAircraft, chosen: Partial<Inputs> = {}): void {
  if (hash === day.inputs().aircraft) return;
  const taken = { aircraft: hash, ...AS_USUAL, ...chosen };
  const isOther = code !== aircraft.value?.code;
  if (isOther && hasMoved(sortie.value)) endSortie(taken);
  else takeUp(taken);
}

/** Leaves the steps begun so far where they are; those of what is taken now start afresh. */
export function takeUp(chosen: Partial<Inputs>): void {
  const { run } = sortie.value;
  // Before there is a field, nothing was chosen that anyone could miss.
  const first = day.inputs().aircraft === null || day.inputs().field === null;
  const left: Event[] = run === null ? [] : [{ kind: 'close', run: run.id, leadsTo: 'return' }];
  const entries = add(...left, { kind: 'set', inputs: chosen });
  if (!first) undoable.value = { what: 'aircraft', entries };
}

export function setClock(sortieMs: number, rate: number): void {
  add({ kind: 'clock', sortieMs, rate });
}

/** Uses a runway end, for what Wind judges for. */
export function useEnd(end: Chosen['end']): void {
  if (setWind()) typing.value = false;
  const changing = day.wind().using !== null && day.wind().using !== end;
  const entries = add({
    kind: 'set',
    inputs: {
      chosen: { end, purpose: day.purpose() },
      // An intersection belongs to its end: with another end, the whole run counts again.
      ...(day.inputs().taxiEntry === null ? {} : { taxiEntry: null, rollsFromM: 0 }),
    },
  });
  undoable.value = changing ? { what: 'end', entries } : null;
}
