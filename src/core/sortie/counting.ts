/** Which entries of the record count: undo is an entry too, and nothing is ever removed. */

import type { StepId } from '../procedure/procedure';
import { compareEntries, type Entry, type Id, type StepOutcome } from './entry';
import { isUnderstood } from './understood';

/**
 * The entries that count, in list order; the input may be in any order and contain duplicates.
 * Leaves out what was undone and what this version doesn't know. An undo that was itself undone
 * does nothing. Undoing a tick also takes back the same tick given twice, as two windows can.
 */
export function entriesThatCount(entries: readonly Entry[]): readonly Entry[] {
  const byId = new Map<Id, Entry>();
  for (const entry of entries) byId.set(entry.id, entry);
  const ordered = [...byId.values()].filter(isUnderstood).sort(compareEntries);
  /** By id of the undone entry, the number of the last undo of it; latest undo first. */
  const undoneAt = new Map<Id, number>();
  for (const entry of ordered.toReversed()) {
    if (entry.kind !== 'undo' || undoneAt.has(entry.id) || undoneAt.has(entry.target)) continue;
    undoneAt.set(entry.target, entry.seq);
  }
  if (undoneAt.size === 0) return ordered;

  const steps = new Set<StepId>();
  for (const id of undoneAt.keys()) {
    const entry = byId.get(id);
    if (entry && isTick(entry)) steps.add(entry.step);
  }
  const sayings = sayingsOf(ordered, steps);
  for (const [id, at] of undoneAt) {
    const saying = sayings.get(id);
    if (saying) saying.unsaidAt ??= at;
  }
  return ordered.filter((entry) => {
    const { id } = entry;
    if (entry.kind === 'undo' || undoneAt.has(id)) return false;
    const unsaidAt = sayings.get(id)?.unsaidAt;
    return unsaidAt === undefined || entry.seq > unsaidAt;
  });
}

/** What one or several equal ticks say about a step. */
interface Saying {
  readonly content: string;
  /** The number of the last undo that takes it back. */
  unsaidAt?: number;
}

/**
 * What each tick of certain steps says about its step. Consecutive ticks with the same outcome,
 * under the same facts, say the same; a step done again because its facts had moved says something
 * new.
 */
function sayingsOf(ordered: readonly Entry[], steps: ReadonlySet<StepId>): ReadonlyMap<Id, Saying> {
  const sayings = new Map<Id, Saying>();
  const names = namesOfRuns(ordered);
  const lastOf = new Map<string, Saying>();
  for (const entry of ordered) {
    if (!isTick(entry) || !steps.has(entry.step)) continue;
    const step = `${names.get(entry.run)}/${entry.pass}/${entry.step}`;
    const content = entry.kind + JSON.stringify(entry.saw);
    let saying = lastOf.get(step);
    if (saying?.content !== content) {
      saying = { content };
      lastOf.set(step, saying);
    }
    sayings.set(entry.id, saying);
  }
  return sayings;
}

/** One canonical id per run: two windows that began the same run at once gave it two. */
function namesOfRuns(ordered: readonly Entry[]): ReadonlyMap<Id, Id> {
  const names = new Map<Id, Id>();
  const standing = new Map<string, Id>();
  for (const entry of ordered) {
    switch (entry.kind) {
      case 'open': {
        const steps = JSON.stringify([entry.procedure, entry.list]);
        const name = standing.get(steps) ?? entry.run;
        standing.set(steps, name);
        names.set(entry.run, name);
        break;
      }
      case 'close': {
        const closed = names.get(entry.run);
        for (const [steps, name] of standing) if (name === closed) standing.delete(steps);
      }
    }
  }
  return names;
}

type Tick = Extract<Entry, { kind: StepOutcome | 'passed' }>;

function isTick(entry: Entry): entry is Tick {
  const { kind } = entry;
  return kind === 'done' || kind === 'held' || kind === 'cannot' || kind === 'passed';
}
