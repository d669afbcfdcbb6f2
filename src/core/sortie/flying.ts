/** Which sortie is in progress. */

import { entriesThatCount } from './counting';
import type { Entry, Id } from './entry';
import { foldSortie, NO_SORTIE, type Sortie } from './fold';

/** The number under which a sortie was begun or, if later, resumed. */
function begunAt(entries: readonly Entry[]): number {
  const first = entries[0]?.seq ?? 0;
  if (!entries.some(({ kind }) => kind === 'taken up')) return first;
  const again = entriesThatCount(entries).findLast(({ kind }) => kind === 'taken up');
  return Math.max(first, again?.seq ?? 0);
}

/**
 * The sortie in progress: the one begun or resumed last, unless that was undone. `sorties` are in
 * the order they were begun, each with its entries in list order. Those in `passedOver` can't be
 * flown, for instance because a part of them can't be understood.
 */
export function sortieFlown(
  sorties: ReadonlyMap<Id, readonly Entry[]>,
  passedOver: ReadonlySet<Id> = new Set(),
): Sortie {
  const latestFirst = [...sorties]
    .filter(([id]) => !passedOver.has(id))
    .map(([, entries]) => ({ entries, at: begunAt(entries) }))
    .reverse()
    .sort((a, b) => b.at - a.at);
  for (const { entries } of latestFirst) {
    const folded = foldSortie(entries);
    if (folded.id !== null) return folded;
  }
  return NO_SORTIE;
}
