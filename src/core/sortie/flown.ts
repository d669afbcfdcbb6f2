/** Where the pilot flew last. */

import type { Entry, Hash, Id } from './entry';
import { foldSortie } from './fold';

/** How many sorties to look back: anyone who flew more often from one field wants that one. */
const LOOKED_THROUGH = 20;

/**
 * The fields of the sorties flown last, each once, newest first; `sorties` is in order, newest
 * last.
 */
export function fieldsFlown(sorties: ReadonlyMap<Id, readonly Entry[]>): readonly Hash[] {
  const latest = [...sorties.values()].slice(-LOOKED_THROUGH).reverse();
  const fields = latest.map((entries) => foldSortie(entries).inputs.field);
  return [...new Set(fields)].filter((field) => field !== null);
}
