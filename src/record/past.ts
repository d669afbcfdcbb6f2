/** The whole record, old sorties and brought ones included. Loaded with what first asks for it. */

import { type Entry, type Hash, type Id, readEntry } from '../core';
import { allSetAside, type SetAside } from './aside';
import { allDrafts } from './drafts';
import type { Record } from './record';
import type { KeptDocument, Store } from './store';

/** All that is kept, and all that is only in memory. */
export interface WholeRecord {
  readonly entries: readonly Entry[];
  readonly documents: readonly KeptDocument[];
}

const byId = (...lists: readonly (readonly unknown[])[]): Entry[] => [
  ...new Map((lists.flat() as Entry[]).map((entry) => [entry.id, entry])).values(),
];

/** What can be used of what was written; what is newer is kept where it is, and noted. */
const readable = (record: Record, written: readonly unknown[]): readonly Entry[] =>
  written.flatMap((value) => {
    const { entry, problem } = readEntry(value);
    if (problem === 'newer') record.noteNewer(Object(value).id);
    return entry ?? [];
  });

/**
 * Everything, for an export, as it was first written: an entry is not lifted, and one of a newer version
 * goes out with the others. Rejects where the store cannot be read.
 */
export async function wholeRecord(record: Record): Promise<WholeRecord> {
  await record.settled();
  const { store } = record;
  const parts = store === null ? [] : [store.read('brought'), store.read('entries')];
  const written = (await Promise.all(parts)).map((part) =>
    part.filter((value) => readEntry(value).problem !== 'damaged'),
  );
  const kept = byId(...written);
  const ids = new Set(kept.map(({ id }) => id));
  return {
    entries: [...kept, ...record.entries.filter(({ id }) => !ids.has(id))],
    documents: await record.documents(),
  };
}

/** What stands beside the record on this device: what was set aside, and what is half done. */
export interface BesideRecord {
  readonly setAside: readonly Omit<SetAside, 'code'>[];
  readonly drafts: readonly unknown[];
}

/** What no export of the record holds, and would be lost with the device. */
export async function besideRecord(record: Record): Promise<BesideRecord> {
  // First, because it sets aside what it cannot read.
  const readableNow = new Set<unknown>((await record.documents()).map(({ hash }) => hash));
  const aside = await allSetAside();
  const codes = new Set<unknown>(aside.map(({ code }) => code));
  const documents = (await record.store?.read('documents').catch(() => [])) ?? [];
  return {
    setAside: [
      ...aside.map(({ part, value }) => ({ part, value })),
      // Newer ones stay in their part, and can be in no export that others read.
      ...documents
        .filter((value) => !readableNow.has(Object(value).hash))
        .map((value) => ({ part: 'documents', value }) as const),
    ],
    drafts: (await allDrafts()).filter((draft) => !codes.has(Object(draft).code)),
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
  const read = sorties.map(async (id) => {
    const [made, brought] = await Promise.all(
      (['entries', 'brought'] as const).map((part) =>
        reading.objectStore(part).index('sortie').getAll(id),
      ),
    );
    const kept = [brought, made].map((part) => readable(record, part ?? []));
    return [id, byId(...kept, inMemory(id))] as const;
  });
  return new Map(await Promise.all(read));
}

/** The names of all sorties kept, whether or not a line of the log was worked out for them. */
export async function sortieNames({ db }: Store): Promise<ReadonlySet<Id>> {
  const names = new Set<Id>();
  const reading = db.transaction(['entries', 'brought']);
  for (const part of ['entries', 'brought'] as const) {
    const sorties = reading.objectStore(part).index('sortie');
    // From name to name: WebKit fails to open a cursor for unique keys where there are none at all.
    let search = await sorties.openKeyCursor();
    while (search !== null) {
      names.add(search.key);
      search = await search.continue(`${search.key}\0`);
    }
  }
  return names;
}

/** What merging added: nothing that was there before is touched. */
export interface Merged {
  readonly entries: number;
  readonly sorties: number;
  readonly documents: number;
  /** Entries that were left out, because they would have changed sorties that were flown here. */
  readonly leftOut: number;
}

/** What is written into a sortie in the log; it makes nobody its pilot. */
const WRITTEN_INTO: ReadonlySet<string> = new Set(['noted', 'corrected', 'undo']);

/** The sorties among these that were flown on this device. */
async function flownHere(record: Record, store: Store, sorties: ReadonlySet<Id>) {
  const made = store.db.transaction('entries').store.index('sortie');
  const inStore = await Promise.all([...sorties].map((id) => made.getAll(id)));
  return new Set(
    [...readable(record, inStore.flat()), ...record.entries]
      .filter(({ kind, sortie }) => sorties.has(sortie) && !WRITTEN_INTO.has(kind))
      .map(({ sortie }) => sortie),
  );
}

/**
 * Merges what came from elsewhere, by id and by hash, in one transaction: all of it is kept, or none.
 * Nothing of it gets into a sortie that was flown here. Each entry has passed its schema where it came
 * in. Rejects where the device keeps nothing, or refuses this.
 */
export async function mergeBrought(record: Record, brought: WholeRecord): Promise<Merged> {
  const { store } = record;
  if (store === null) throw new Error('nothing is kept here');
  await record.settled();
  const reading = store.db.transaction(['entries', 'brought', 'documents']);
  const [made, before, documentsKept] = await Promise.all(
    (['entries', 'brought', 'documents'] as const).map((part) =>
      reading.objectStore(part).getAllKeys(),
    ),
  );
  const known = new Set<unknown>([
    ...(made ?? []),
    ...(before ?? []),
    ...record.entries.map(({ id }) => id),
  ]);
  const hashes = new Set<unknown>(documentsKept);
  // The first of two with one name counts, as what is kept counts before what is brought.
  const unknown = [...brought.entries.toReversed()].filter(({ id }) => !known.has(id));
  const own = await flownHere(record, store, new Set(unknown.map(({ sortie }) => sortie)));
  const entries = unknown.filter(({ sortie }) => !own.has(sortie));
  const fresh = new Map(entries.map((entry) => [entry.id, entry]));
  const documents = brought.documents.filter(({ hash }: { hash: Hash }) => !hashes.has(hash));
  if (fresh.size + documents.length > 0) {
    await store.write({ brought: [...fresh.values()], documents });
  }
  return {
    entries: fresh.size,
    sorties: new Set([...fresh.values()].map(({ sortie }) => sortie)).size,
    documents: documents.length,
    leftOut: unknown.length - entries.length,
  };
}
