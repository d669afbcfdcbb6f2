/** What one undo takes back. */

import type { Entry, Id } from './entry';

/** What an entry takes back with it, of what was added in the same go. */
const TOGETHER: Readonly<Partial<Record<Entry['kind'], readonly Entry['kind'][]>>> = {
  done: ['passed'],
  held: ['passed'],
  cannot: ['passed', 'set'],
  stamp: ['stamp', 'done', 'sealed', 'open', 'passed', 'reopen'],
  open: ['stamp', 'done', 'sealed', 'open', 'passed'],
  close: ['close', 'held'],
  reopen: ['stamp', 'sealed', 'reopen', 'set'],
};

/** Of what was set in the same go, a step takes back only what it left to the next sorties. */
const remembers = (one: Entry): boolean => one.kind !== 'set' || 'notSimulated' in one.inputs;

/**
 * What undoing an entry takes back, itself included: a moment takes the steps tied to it, its seal
 * and the list it opened, all added in one go. Empty if there is no such entry.
 */
export function togetherWith(entries: readonly Entry[], id: Id): readonly Entry[] {
  const entry = entries.find((candidate) => candidate.id === id);
  if (entry === undefined) return [];
  const kinds = TOGETHER[entry.kind] ?? [];
  return entries.filter(
    (one) =>
      one.id === id ||
      (one.sortie === entry.sortie &&
        one.at.wallMs === entry.at.wallMs &&
        kinds.includes(one.kind) &&
        (entry.kind !== 'cannot' || remembers(one))),
  );
}
