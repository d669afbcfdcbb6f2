/** Where the pilot flew last. */

import type { Entry, Hash, Id } from './entry';
import { foldSortie } from './fold';

/** As far back as is looked, sorties: who has flown more often from one field than this wants that one. */
const LOOKED_THROUGH = 20;

/** The fields of the sorties flown last, each once, newest first; `sorties` is in order, newest last. */
export function fieldsFlown(sorties: ReadonlyMap<Id, readonly Entry[]>): readonly Hash[] {
  const latest = [...sorties.values()].slice(-LOOKED_THROUGH).reverse();
  const fields = latest.map((entries) => foldSortie(entries).inputs.field);
  return [...new Set(fields)].filter((field) => field !== null);
}
