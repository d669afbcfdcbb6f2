/** What the last sorties with the procedure say about its steps, and doing such a step earlier. */

import { computed, signal } from '@preact/signals';
import {
  type Entry,
  type Habit,
  habitsIn,
  habitsOf,
  type Id,
  type Procedure,
  procedureFlown,
  type SortieHabits,
  type StepId,
  sortiesTogether,
  tieKey,
} from '../../core';
import { entriesOf } from '../../record/past';
import { day, record, sortie, sorties } from '../board';
import { chosenProcedure, procedure } from '../documents/inUse';
import { add } from '../record/adding';
import { lines, nameOf, openLog } from '../record/log';

/**
 * How many sorties count, and how many are searched for them: some pilots alternate between
 * aircraft.
 */
const SPOKEN_OF = 10;
const LOOKED_THROUGH = 200;

/** How many sorties are read from the store at a time. */
const AT_ONCE = 20;

/** A sortie's habits, valid until it gains entries or the procedure changes. */
interface Kept {
  readonly entries: number;
  readonly by: Procedure;
  readonly habits: SortieHabits | null;
}

const kept = new Map<Id, Kept>();

/** Stored sorties with the procedure: imported ones too, and those the start didn't read. */
const inStore = signal<ReadonlyMap<Id, readonly Entry[]>>(new Map());

/** The code of the procedure the store was last searched for. */
let lookedFor: string | null = null;

/** The habits of the latest sorties with the procedure, not counting the one in progress. */
export const habits = computed((): readonly Habit[] => {
  const by = procedure.value;
  if (by === null) return [];
  const said: SortieHabits[] = [];
  const all = [...sortiesTogether(inStore.value, sorties.value)];
  for (const [id, entries] of all.slice(0, LOOKED_THROUGH)) {
    if (said.length === SPOKEN_OF) break;
    const one = id === sortie.value.id ? null : keptOf(id, entries, by);
    if (one !== null) said.push(one);
  }
  return habitsIn(said);
});

function keptOf(id: Id, entries: readonly Entry[], by: Procedure): SortieHabits | null {
  const before = kept.get(id);
  if (before?.entries === entries.length && before.by === by) return before.habits;
  const now = spokenOf(entries, by);
  kept.set(id, { entries: entries.length, by, habits: now });
  return now;
}

/** What a sortie says; null if it was flown with another procedure, or nothing was done in it. */
function spokenOf(entries: readonly Entry[], by: Procedure): SortieHabits | null {
  const flown = procedureFlown(entries);
  if (flown === null || (flown !== chosenProcedure.value && nameOf(flown)?.code !== by.code))
    return null;
  const said = habitsOf(entries, by);
  return said.handled.size === 0 ? null : said;
}

/**
 * Searches the store for the last sorties with the procedure: once, and `afresh` after an import.
 * Never rejects: what can't be read now is left out, and searched for again.
 */
export async function recall(afresh = false): Promise<void> {
  const by = procedure.peek();
  if (by === null || (!afresh && by.code === lookedFor)) return;
  lookedFor = by.code;
  try {
    const found = await lastFlownWith(by);
    // Another procedure may have been taken and searched for meanwhile.
    if (lookedFor === by.code) inStore.value = found;
  } catch {
    lookedFor = null;
  }
}

async function lastFlownWith(by: Procedure): Promise<ReadonlyMap<Id, readonly Entry[]>> {
  await openLog();
  const names = (lines.peek() ?? []).slice(0, LOOKED_THROUGH).map((line) => line.sortie);
  const found = new Map<Id, readonly Entry[]>();
  // One more than are needed: the sortie in progress may be among them.
  for (let from = 0; from < names.length && found.size <= SPOKEN_OF; from += AT_ONCE) {
    for (const [id, entries] of await entriesOf(record, names.slice(from, from + AT_ONCE)))
      if (spokenOf(entries, by) !== null) found.set(id, entries);
  }
  return found;
}

/**
 * From now on does a step earlier, directly before another; null puts it back where the procedure
 * has it.
 */
export function tie(step: StepId, before: StepId | null): void {
  const { value: by } = procedure;
  if (by === null) return;
  const { [tieKey(by.code, step)]: _was, ...others } = day.inputs().ties;
  const ties = before === null ? others : { ...others, [tieKey(by.code, step)]: before };
  add({ kind: 'set', inputs: { ties } });
}

/** Says that the simulation has a step after all, which is asked for again. */
export function setSimulated(step: StepId): void {
  const by = procedure.value;
  if (by === null) return;
  const key = tieKey(by.code, step);
  const notSimulated = day.inputs().notSimulated.filter((one) => one !== key);
  add({ kind: 'set', inputs: { notSimulated } });
}
