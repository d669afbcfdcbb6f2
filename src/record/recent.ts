/** Reading the sorties flown last out of a record that is too long to be read at the start. */

import type { Entry } from '../core';
import { answerTo } from './store';

/** So many entries numbered last, and the rest of the sorties that would be cut. */
export async function recentIn(store: IDBObjectStore, most: number): Promise<readonly Entry[]> {
  const from = await new Promise<IDBValidKey | null>((resolve, reject) => {
    const search = store.index('seq').openKeyCursor(null, 'prev');
    let skipped = false;
    search.onerror = () => reject(search.error);
    search.onsuccess = () => {
      const reached = search.result;
      if (reached === null || skipped) return resolve(reached?.key ?? null);
      skipped = true;
      reached.advance(most);
    };
  });
  if (from === null) return answerTo(store.getAll());
  const last: readonly Entry[] = await answerTo(
    store.index('seq').getAll(IDBKeyRange.lowerBound(from)),
  );
  // The sortie that the reading begins amid, and the one that is flown, are wanted whole.
  const cut = new Set([last[0], last.at(-1)].flatMap((entry) => entry?.sortie ?? []));
  const whole = [...cut].map((sortie) => answerTo<Entry[]>(store.index('sortie').getAll(sortie)));
  return [...(await Promise.all(whole)).flat(), ...last.filter(({ sortie }) => !cut.has(sortie))];
}
