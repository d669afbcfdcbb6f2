/** What the last sorties with the procedure say of its steps, and doing such a step earlier. */

import { computed } from '@preact/signals';
import {
  type Habit,
  type Hash,
  habitsIn,
  habitsOf,
  type Id,
  type Procedure,
  procedureFlown,
  type SortieHabits,
  type StepId,
  tieKey,
} from '../core';
import { add } from './adding';
import { all, chosenProcedure } from './allDocuments';
import { inputs, sortie, sorties } from './board';
import { procedure } from './flight';

/** So many sorties are spoken of, and so many are looked through for them: some fly several aircraft by turns. */
const SPOKEN_OF = 10;
const LOOKED_THROUGH = 200;

/** What a sortie said, for as long as it has no more entries and the procedure stays the same. */
interface Kept {
  readonly entries: number;
  readonly flown: Hash | null;
  readonly by: Procedure | null;
  readonly habits: SortieHabits | null;
}

const kept = new Map<Id, Kept>();

/** The habits of the sorties flown last with the procedure, without the one that is being flown. */
export const habits = computed((): readonly Habit[] => {
  const by = procedure.value;
  if (by === null) return [];
  const codes = new Map(all.value.map(({ hash, code }) => [hash, code]));
  const isSame = (hash: Hash | null) =>
    hash !== null && (hash === chosenProcedure.value || codes.get(hash) === by.code);
  const said: SortieHabits[] = [];
  const names = [...sorties.value.keys()].filter((id) => id !== sortie.value.id);
  for (const id of names.slice(-LOOKED_THROUGH).reverse()) {
    if (said.length === SPOKEN_OF) break;
    const one = keptOf(id, by, isSame);
    if (one !== null && one.handled.size > 0) said.push(one);
  }
  return habitsIn(said);
});

function keptOf(id: Id, by: Procedure, isSame: (hash: Hash | null) => boolean) {
  const entries = sorties.value.get(id) ?? [];
  const before = kept.get(id);
  if (before?.entries === entries.length && before.by === by) return before.habits;
  const flown = procedureFlown(entries);
  const now = isSame(flown) ? habitsOf(entries, by) : null;
  kept.set(id, { entries: entries.length, flown, by, habits: now });
  return now;
}

/** Does a step earlier from now on, directly before another; null puts it back where the procedure has it. */
export function tie(step: StepId, before: StepId | null): void {
  const { value: by } = procedure;
  if (by === null) return;
  const { [tieKey(by.code, step)]: _was, ...others } = inputs.value.ties;
  const ties = before === null ? others : { ...others, [tieKey(by.code, step)]: before };
  add({ kind: 'set', inputs: { ties } });
}
