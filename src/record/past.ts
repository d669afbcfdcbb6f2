/** The whole record, old sorties and brought ones included. Loaded with what first asks for it. */

import type { Entry, Hash, Id } from '../core';
import type { Record } from './record';
import { answerTo, type KeptDocument, type Store } from './store';

/** All that is kept, and all that is only in memory. */
export interface WholeRecord {
  readonly entries: readonly Entry[];
  readonly documents: readonly KeptDocument[];
}

const byId = (...lists: readonly (readonly unknown[])[]): Entry[] => [
  ...new Map((lists.flat() as Entry[]).map((entry) => [entry.id, entry])).values(),
];

/** Everything, for an export. Rejects where the store cannot be read. */
export async function wholeRecord(record: Record): Promise<WholeRecord> {
  await record.settled();
  const { store } = record;
  const parts = store === null ? [] : [store.read('brought'), store.read('entries')];
  return {
    entries: byId(...(await Promise.all(parts)), record.entries),
    documents: await record.documents(),
  };
}

/** The entries of some sorties, each with its own, in one reading. */
export async function entriesOf(
  record: Record,
  sorties: readonly Id[],
): Promise<ReadonlyMap<Id, readonly Entry[]>> {
  const { store } = record;
  const inMemory = (id: Id) => record.entries.filter(({ sortie }) => sortie === id);
  if (store === null) return new Map(sorties.map((id) => [id, inMemory(id)]));
  const reading = store.db.transaction(['entries', 'brought']);
  const [made, brought] = (['entries', 'brought'] as const).map((part) =>
    reading.objectStore(part).index('sortie'),
  );
  const read = sorties.map(async (id) => {
    const kept = [brought, made].map((index) => (index ? answerTo(index.getAll(id)) : []));
    return [id, byId(...(await Promise.all(kept)), inMemory(id))] as const;
  });
  return new Map(await Promise.all(read));
}

/** The names of all sorties kept, whether or not a line of the log was worked out for them. */
export async function sortieNames({ db }: Store): Promise<ReadonlySet<Id>> {
  const names = new Set<Id>();
  const reading = db.transaction(['entries', 'brought']);
  const parts = (['entries', 'brought'] as const).map(
    (part) =>
      new Promise<void>((resolve, reject) => {
        const search = reading.objectStore(part).index('sortie').openKeyCursor(null, 'nextunique');
        search.onerror = () => reject(search.error);
        search.onsuccess = () => {
          const found = search.result;
          if (found === null) return resolve();
          names.add(String(found.key));
          found.continue();
        };
      }),
  );
  await Promise.all(parts);
  return names;
}

/** What merging added: nothing that was there before is touched. */
export interface Merged {
  readonly entries: number;
  readonly sorties: number;
  readonly documents: number;
}

/**
 * Merges what came from elsewhere, by id and by hash, in one transaction: all of it is kept, or none.
 * Rejects where the device keeps nothing, or refuses this.
 */
export async function mergeBrought(record: Record, brought: WholeRecord): Promise<Merged> {
  const { store } = record;
  if (store === null) throw new Error('nothing is kept here');
  await record.settled();
  const reading = store.db.transaction(['entries', 'brought', 'documents']);
  const keysIn = (part: 'entries' | 'brought' | 'documents') =>
    answerTo(reading.objectStore(part).getAllKeys());
  const kept = await Promise.all([keysIn('entries'), keysIn('brought'), keysIn('documents')]);
  const [made, before, documentsKept] = kept;
  const known = new Set<unknown>([...made, ...before, ...record.entries.map(({ id }) => id)]);
  const hashes = new Set<unknown>(documentsKept);
  // The first of two with one name counts, as what is kept counts before what is brought.
  const entries = [...brought.entries.toReversed()].filter(({ id }) => !known.has(id));
  const fresh = new Map(entries.map((entry) => [entry.id, entry]));
  const documents = brought.documents.filter(({ hash }: { hash: Hash }) => !hashes.has(hash));
  if (fresh.size + documents.length > 0) {
    await store.write({ brought: [...fresh.values()], documents });
  }
  return {
    entries: fresh.size,
    sorties: new Set([...fresh.values()].map(({ sortie }) => sortie)).size,
    documents: documents.length,
  };
}
