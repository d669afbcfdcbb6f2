/** The whole record, including old and imported sorties. Loaded the first time it is needed. */

import { type Entry, type Hash, type Id, readEntry } from '../core';
import { allSetAside, type SetAside } from './aside';
import { allDrafts } from './drafts';
import type { SortieRecord } from './record';
import type { KeptDocument, Store } from './store';

/** Everything stored, plus everything that is only in memory. */
export interface WholeRecord {
  readonly entries: readonly Entry[];
  readonly documents: readonly KeptDocument[];
}

const byId = (...lists: readonly (readonly unknown[])[]): Entry[] => [
  ...new Map((lists.flat() as Entry[]).map((entry) => [entry.id, entry])).values(),
];

/** The stored entries this version can use; newer ones stay in the store and are noted. */
const readable = (record: SortieRecord, written: readonly unknown[]): readonly Entry[] =>
  written.flatMap((value) => {
    const { entry, problem } = readEntry(value);
    if (problem === 'newer') record.noteNewer(Object(value).id);
    return entry ?? [];
  });

/**
 * Everything, for export, exactly as first written: entries are not lifted, and those of a newer
 * version go out with the rest. Rejects if the store can't be read.
 */
export async function wholeRecord(record: SortieRecord): Promise<WholeRecord> {
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

/** What this device keeps outside the record: what was set aside, and unfinished work. */
export interface BesideRecord {
  readonly setAside: readonly Omit<SetAside, 'code'>[];
  readonly drafts: readonly unknown[];
}

/** What no export of the record contains, and would be lost with the device. */
export async function besideRecord(record: SortieRecord): Promise<BesideRecord> {
  // This comes first, because it sets aside what it can't read.
  const readableNow = new Set<unknown>((await record.documents()).map(({ hash }) => hash));
  const aside = await allSetAside();
  const codes = new Set<unknown>(aside.map(({ code }) => code));
  const documents = (await record.store?.read('documents').catch(() => [])) ?? [];
  return {
    setAside: [
      ...aside.map(({ part, value }) => ({ part, value })),
      // Newer documents stay in their part; no export that others can read may contain them.
      ...documents
        .filter((value) => !readableNow.has(Object(value).hash))
        .map((value) => ({ part: 'documents', value }) as const),
    ],
    drafts: (await allDrafts()).filter((draft) => !codes.has(Object(draft).code)),
  };
}

/** The entries of several sorties, by sortie, read in one transaction. */
export async function entriesOf(
  record: SortieRecord,
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

/** The ids of all stored sorties, whether or not a line of the log has been computed for them. */
export async function sortieNames({ db }: Store): Promise<ReadonlySet<Id>> {
  const names = new Set<Id>();
  const reading = db.transaction(['entries', 'brought']);
  for (const part of ['entries', 'brought'] as const) {
    const sorties = reading.objectStore(part).index('sortie');
    // Steps from id to id: WebKit fails to open a unique-key cursor on an empty index.
    let search = await sorties.openKeyCursor();
    while (search !== null) {
      names.add(search.key);
      search = await search.continue(`${search.key}\0`);
    }
  }
  return names;
}

/** What a merge added; it never touches what was there before. */
export interface MergedCount {
  readonly entries: number;
  readonly sorties: number;
  readonly documents: number;
  /** Entries left out because they would have changed sorties flown on this device. */
  readonly leftOut: number;
}

/** Kinds written into a logged sortie; adding one doesn't make you its pilot. */
const WRITTEN_INTO: ReadonlySet<string> = new Set(['noted', 'corrected', 'undo']);

/** Which of these sorties were flown on this device. */
async function flownHere(record: SortieRecord, store: Store, sorties: ReadonlySet<Id>) {
  const made = store.db.transaction('entries').store.index('sortie');
  const inStore = await Promise.all([...sorties].map((id) => made.getAll(id)));
  return new Set(
    [...readable(record, inStore.flat()), ...record.entries]
      .filter(({ kind, sortie }) => sorties.has(sortie) && !WRITTEN_INTO.has(kind))
      .map(({ sortie }) => sortie),
  );
}

/**
 * Merges imported entries by id and documents by hash, in one transaction: all or nothing. Nothing
 * gets into a sortie flown on this device. Each entry has already passed its schema. Rejects if the
 * device stores nothing or refuses.
 */
export async function mergeBrought(
  record: SortieRecord,
  brought: WholeRecord,
): Promise<MergedCount> {
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
  // Of two with one id the first counts, as stored entries count before imported ones.
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
