/** Reading the latest sorties of a record too long to be read whole at the start. */

import type { IDBPDatabase } from 'idb';
import type { StoreParts } from './store';

const sortieOf = (written: unknown): readonly string[] => {
  if (typeof written !== 'object' || written === null || !('sortie' in written)) return [];
  return typeof written.sortie === 'string' ? [written.sortie] : [];
};

/**
 * The `most` entries with the highest numbers, plus the rest of any sortie this would cut in two.
 */
export async function recentIn(
  db: IDBPDatabase<StoreParts>,
  most: number,
): Promise<readonly unknown[]> {
  const { store } = db.transaction('entries');
  const newest = await store.index('seq').openKeyCursor(null, 'prev');
  const from = await newest?.advance(most);
  if (from == null) return store.getAll();
  const last = await store.index('seq').getAll(IDBKeyRange.lowerBound(from.key));
  // Two sorties are needed whole: the one the reading starts in the middle of, and the one being
  // flown.
  const cut = new Set([last[0], last.at(-1)].flatMap(sortieOf));
  const whole = await Promise.all([...cut].map((sortie) => store.index('sortie').getAll(sortie)));
  return [
    ...whole.flat(),
    ...last.filter((written) => !sortieOf(written).some((sortie) => cut.has(sortie))),
  ];
}
