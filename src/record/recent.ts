/** Reading the sorties flown last out of a record that is too long to be read at the start. */

import type { IDBPDatabase } from 'idb';
import type { Parts } from './store';

const sortieOf = (written: unknown): readonly string[] => {
  if (typeof written !== 'object' || written === null || !('sortie' in written)) return [];
  return typeof written.sortie === 'string' ? [written.sortie] : [];
};

/** So many entries numbered last, and the rest of the sorties that would be cut. */
export async function recentIn(db: IDBPDatabase<Parts>, most: number): Promise<readonly unknown[]> {
  const { store } = db.transaction('entries');
  const newest = await store.index('seq').openKeyCursor(null, 'prev');
  const from = await newest?.advance(most);
  if (from == null) return store.getAll();
  const last = await store.index('seq').getAll(IDBKeyRange.lowerBound(from.key));
  // The sortie that the reading begins amid, and the one that is flown, are wanted whole.
  const cut = new Set([last[0], last.at(-1)].flatMap(sortieOf));
  const whole = await Promise.all([...cut].map((sortie) => store.index('sortie').getAll(sortie)));
  return [
    ...whole.flat(),
    ...last.filter((written) => !sortieOf(written).some((sortie) => cut.has(sortie))),
  ];
}
