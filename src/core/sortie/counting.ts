/** Which entries of the record count: undo is an entry too, and nothing is ever taken out. */

import { compareEntries, type Entry, type Id, type StepOutcome } from './entry';
import { isUnderstood } from './understood';

/**
 * The entries that count, in the order of the list: those undone are left out, and so is what this
 * version does not know. An undo that was itself undone does nothing. Undoing a tick takes back the
 * same tick given twice, as two windows can.
 */
export function entriesThatCount(entries: readonly Entry[]): readonly Entry[] {
  const ordered = entries.filter(isUnderstood).sort(compareEntries);
  const sayings = sayingsOf(ordered);
  const undone = new Set<Id>();
  /** By what was said: the number of the last undo that takes it back. */
  const unsaidAt = new Map<string, number>();
  for (const entry of ordered.toReversed()) {
    if (entry.kind !== 'undo' || undone.has(entry.id)) continue;
    undone.add(entry.target);
    const said = sayings.get(entry.target);
    if (said !== undefined && !unsaidAt.has(said)) unsaidAt.set(said, entry.seq);
  }
  return ordered.filter((entry) => {
    if (entry.kind === 'undo' || undone.has(entry.id)) return false;
    const unsaid = unsaidAt.get(sayings.get(entry.id) ?? '');
    return unsaid === undefined || entry.seq > unsaid;
  });
}

/**
 * What each tick says of its step. Ticks that follow one another with the same outcome, under the
 * same facts, say the same; a step done again, because its facts had moved, is another saying.
 */
function sayingsOf(ordered: readonly Entry[]): ReadonlyMap<Id, string> {
  const sayings = new Map<Id, string>();
  const names = namesOfRuns(ordered);
  const lastOf = new Map<string, { readonly content: string; readonly turn: number }>();
  for (const entry of ordered) {
    if (!isTick(entry)) continue;
    const step = [names.get(entry.run), entry.pass, entry.step].join('/');
    const content = `${entry.kind} ${JSON.stringify(entry.saw)}`;
    const last = lastOf.get(step) ?? { content, turn: 0 };
    const turn = last.content === content ? last.turn : last.turn + 1;
    lastOf.set(step, { content, turn });
    sayings.set(entry.id, `${step}/${turn}`);
  }
  return sayings;
}

/** The one name of each run: two windows that began the same at once gave it two. */
function namesOfRuns(ordered: readonly Entry[]): ReadonlyMap<Id, Id> {
  const names = new Map<Id, Id>();
  const standing = new Map<string, Id>();
  for (const entry of ordered) {
    if (entry.kind === 'open') {
      const steps = JSON.stringify([entry.procedure, entry.list]);
      const name = standing.get(steps) ?? entry.run;
      standing.set(steps, name);
      names.set(entry.run, name);
    } else if (entry.kind === 'close') {
      const closed = names.get(entry.run);
      for (const [steps, name] of standing) if (name === closed) standing.delete(steps);
    }
  }
  return names;
}

type Tick = Extract<Entry, { kind: StepOutcome | 'passed' }>;

function isTick(entry: Entry): entry is Tick {
  return (
    entry.kind === 'done' ||
    entry.kind === 'held' ||
    entry.kind === 'cannot' ||
    entry.kind === 'passed'
  );
}
