/**
 * Where the record is stored: IndexedDB with strict durability, so that a tick survives a dead
 * battery. Refused storage is not an error: the app works, and says that it will forget.
 *
 * Entries made here and entries from elsewhere are kept apart, so that starting never waits for an
 * old log, and nothing imported becomes the sortie in progress unasked.
 *
 * The database's version is that of its parts, not of their content: a release that adds parts
 * raises it and keeps the existing parts and keys, so that an older app can still read it.
 */

import type { DBSchema, IDBPDatabase } from 'idb';
import type { Entry, Id, OwnedDocument } from '../core';
import { isNewer, openDatabase } from './database';
import { storeName } from './storeName';

/** How a document came to be here. */
export type Origin = 'drawn' | 'written' | 'copied' | 'map' | 'file' | 'link' | 'lesson' | 'log';

/** A document a sortie uses, stored as it was. */
export interface KeptDocument extends OwnedDocument {
  /** The pilot added it; the others came with the app and were stored when they were flown. */
  readonly own: boolean;
  readonly from?: Origin | undefined;
  /** The name of the file or the lesson it came from. */
  readonly fromName?: string | undefined;
  /** What the pilot calls this version. */
  readonly title?: string | undefined;
}

/** Stored values may have any shape until the reader of their version has checked them. */
interface OfSorties {
  key: string;
  value: unknown;
  indexes: { sortie: string; seq: number };
}

/** The parts of the database. */
export interface StoreParts extends DBSchema {
  entries: OfSorties;
  brought: OfSorties;
  documents: { key: string; value: unknown };
  summaries: { key: string; value: unknown };
}

/**
 * The parts of the store: entries made here, entries from elsewhere, documents, and log summaries,
 * each deleted when its sortie gains an entry.
 */
export type StorePart = 'entries' | 'brought' | 'documents' | 'summaries';

/** What to write, by part. */
export type StoreWriting = Readonly<Partial<Record<StorePart, readonly unknown[]>>>;

const DB_VERSION = 2;

/** The key of each part, and its indexes. */
const SHAPE: Readonly<Record<StorePart, { readonly key: string; readonly by: readonly string[] }>> =
  {
    entries: { key: 'id', by: ['seq', 'sortie'] },
    brought: { key: 'id', by: ['sortie'] },
    documents: { key: 'hash', by: [] },
    summaries: { key: 'sortie', by: [] },
  };

/** How many of the latest entries are read at the start: fifteen sorties or more. */
const RECENT = 1500;

/**
 * A newer version of the app stores its record differently: it is all there, but this version can
 * read none of it.
 */
export class NewerStore extends Error {}

/** Stores entries and documents. Any call may reject, and a rejection means "not stored". */
export interface Store {
  /** The latest sorties, whole, as stored. */
  recent(): Promise<readonly unknown[]>;
  /** Everything in a part; or, of its entries, those of one sortie. */
  read(part: StorePart, sortie?: Id): Promise<readonly unknown[]>;
  /** Writes all or nothing; resolves when it is on disk. */
  write(writing: StoreWriting): Promise<void>;
  /** Removes values from a part, by key. */
  remove(part: StorePart, keys: readonly string[]): Promise<void>;
  /** The database itself, for rare tasks. */
  readonly db: IDBPDatabase<StoreParts>;
}

/**
 * Opens the store. Rejects if the device refuses storage, and with {@link NewerStore}. `lost` is
 * called when it must be reopened: a newer version in another window upgraded it, or the device
 * closed it.
 */
export async function openStore(lost: () => void): Promise<Store> {
  const db = await openDatabase<StoreParts>(storeName, DB_VERSION, {
    lost,
    upgrade(fresh, oldVersion, _to, change) {
      if (oldVersion < 1) {
        fresh.createObjectStore('entries', { keyPath: 'id' });
        fresh.createObjectStore('documents', { keyPath: 'hash' });
      }
      const entries = change.objectStore('entries');
      entries.createIndex('seq', 'seq');
      entries.createIndex('sortie', 'sortie');
      fresh.createObjectStore('brought', { keyPath: 'id' }).createIndex('sortie', 'sortie');
      fresh.createObjectStore('summaries', { keyPath: 'sortie' });
    },
  });
  if (isNewer(db, DB_VERSION) && !isReadable(db)) {
    db.close();
    throw new NewerStore();
  }
  return {
    db,
    recent: async () => {
      const few = await db.getAll('entries', null, RECENT);
      if (few.length < RECENT) return few;
      const { recentIn } = await import('./recent');
      return recentIn(db, RECENT);
    },
    read: (part, sortie) =>
      sortie !== undefined && (part === 'entries' || part === 'brought')
        ? db.getAllFromIndex(part, 'sortie', sortie)
        : db.getAll(part),
    write: (writing) => writeAll(db, writing),
    remove: async (part, keys) => {
      const removing = db.transaction(part, 'readwrite', { durability: 'strict' });
      const asked = keys.map((key) => removing.store.delete(key));
      await Promise.all([...asked, removing.done]);
    },
  };
}

/** Whether a newer database still has the parts used here. */
function isReadable(db: IDBPDatabase<StoreParts>): boolean {
  const parts = Object.keys(SHAPE) as StorePart[];
  if (!parts.every((part) => db.objectStoreNames.contains(part))) return false;
  const reading = db.transaction(parts);
  return parts.every((part) => {
    const { keyPath, indexNames } = reading.objectStore(part);
    const indexes: readonly string[] = [...indexNames];
    return keyPath === SHAPE[part].key && SHAPE[part].by.every((by) => indexes.includes(by));
  });
}

/** Writes all or nothing; resolves when it is on disk. */
async function writeAll(db: IDBPDatabase<StoreParts>, writing: StoreWriting): Promise<void> {
  const parts = Object.keys(writing) as StorePart[];
  const touching: StorePart[] = [...parts, 'summaries'];
  const write = db.transaction(touching, 'readwrite', { durability: 'strict' });
  const asked: Promise<unknown>[] = [write.done];
  try {
    for (const part of parts) {
      for (const value of writing[part] ?? []) asked.push(write.objectStore(part).put(value));
    }
    // A log summary is void once its sortie gains an entry.
    const touched = [...(writing.entries ?? []), ...(writing.brought ?? [])] as Entry[];
    for (const sortie of new Set(touched.map(({ sortie }) => sortie))) {
      asked.push(write.objectStore('summaries').delete(sortie));
    }
    // Commit explicitly: by itself the browser would first report to a page that may be gone.
    write.commit();
  } catch (refusal) {
    // If one put is refused outright, those before it must not stand.
    abort(write);
    await Promise.allSettled(asked);
    throw refusal;
  }
  await Promise.all(asked);
}

/** Aborts unless already aborted. */
function abort(write: { abort(): void }): void {
  try {
    write.abort();
  } catch {
    // The device did.
  }
}
