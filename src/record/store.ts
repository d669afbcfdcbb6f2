/**
 * Where the record is kept: IndexedDB, with strict durability, so that a tick outlives a dead
 * battery. A device that refuses storage is not an error: the app works and says it will forget.
 *
 * What was entered here and what came from elsewhere are kept apart, so that starting never waits
 * for an old log and what is brought never becomes the sortie that is being flown unasked.
 *
 * The version of the database is that of its parts, not of what stands in them: a release that adds
 * parts raises it, and keeps those that are here with their keys, so that an older app still reads it.
 */

import type { DBSchema, IDBPDatabase } from 'idb';
import type { Entry, Hash, Id } from '../core';
import { isNewer, openDatabase } from './database';
import { storeName } from './storeName';

/** A document that a sortie uses, kept as it was. */
export interface KeptDocument {
  readonly hash: Hash;
  /** `field`, `aircraft` or `procedure`. */
  readonly kind: string;
  readonly content: unknown;
  /** The pilot brought it; the others came with the app and are kept as they were flown. */
  readonly own: boolean;
  /** It came from elsewhere, and the pilot has not chosen it yet: until then nothing uses it. */
  readonly received?: true | undefined;
}

/** What stands in the store is of any shape, until it was read by the version written in it. */
interface OfSorties {
  key: string;
  value: unknown;
  indexes: { sortie: string; seq: number };
}

/** The parts of the database. */
export interface Parts extends DBSchema {
  entries: OfSorties;
  brought: OfSorties;
  documents: { key: string; value: unknown };
  summaries: { key: string; value: unknown };
}

/**
 * The parts of the store: entries made here, those brought from elsewhere, documents, and what was
 * worked out from the entries of a sortie, which is forgotten as soon as one is added to it.
 */
export type Part = 'entries' | 'brought' | 'documents' | 'summaries';

/** What is to be written, by part. */
export type Writing = Readonly<Partial<Record<Part, readonly unknown[]>>>;

const DB_VERSION = 2;

/** By which property each part is keyed, and what it is searched by. */
const SHAPE: Readonly<Record<Part, { readonly key: string; readonly by: readonly string[] }>> = {
  entries: { key: 'id', by: ['seq', 'sortie'] },
  brought: { key: 'id', by: ['sortie'] },
  documents: { key: 'hash', by: [] },
  summaries: { key: 'sortie', by: [] },
};

/** So many of the entries made last are read at the start: fifteen sorties or more. */
const RECENT = 1500;

/** A newer version of the app keeps its record otherwise: all is there, and none of it can be read here. */
export class NewerStore extends Error {}

/** Keeps entries and documents; every call may reject, and a rejection means "not kept". */
export interface Store {
  /** The sorties flown last, whole, as they are written. */
  recent(): Promise<readonly unknown[]>;
  /** All that stands in a part, or what of its entries belongs to a sortie. */
  read(part: Part, sortie?: Id): Promise<readonly unknown[]>;
  /** Writes all of it or nothing; resolves when it is on the disk. */
  write(writing: Writing): Promise<void>;
  /** Takes something out of a part, by its key. */
  remove(part: Part, keys: readonly string[]): Promise<void>;
  /** The device's own, for what is rarely done. */
  readonly db: IDBPDatabase<Parts>;
}

/**
 * Opens the store; rejects where the device refuses storage, and with {@link NewerStore}. `lost` is
 * called when it has to be opened anew: another window made a newer one of it, or the device shut it.
 */
export async function openStore(lost: () => void): Promise<Store> {
  const db = await openDatabase<Parts>(storeName, DB_VERSION, {
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

/** Whether a newer database still has the parts that are used here. */
function isReadable(db: IDBPDatabase<Parts>): boolean {
  const parts = Object.keys(SHAPE) as Part[];
  if (!parts.every((part) => db.objectStoreNames.contains(part))) return false;
  const reading = db.transaction(parts);
  return parts.every((part) => {
    const { keyPath, indexNames } = reading.objectStore(part);
    const indexes: readonly string[] = [...indexNames];
    return keyPath === SHAPE[part].key && SHAPE[part].by.every((by) => indexes.includes(by));
  });
}

/** Writes all of it or nothing; resolves when it is on the disk. */
async function writeAll(db: IDBPDatabase<Parts>, writing: Writing): Promise<void> {
  const parts = Object.keys(writing) as Part[];
  const touching: Part[] = [...parts, 'summaries'];
  const write = db.transaction(touching, 'readwrite', { durability: 'strict' });
  const asked: Promise<unknown>[] = [write.done];
  try {
    for (const part of parts) {
      for (const value of writing[part] ?? []) asked.push(write.objectStore(part).put(value));
    }
    // What was worked out from a sortie holds no longer.
    const touched = [...(writing.entries ?? []), ...(writing.brought ?? [])] as Entry[];
    for (const sortie of new Set(touched.map(({ sortie }) => sortie))) {
      asked.push(write.objectStore('summaries').delete(sortie));
    }
    // Not left to the browser, which would first answer to a page that may be gone by then.
    write.commit();
  } catch (refusal) {
    // A put that is refused outright must not leave those before it standing.
    abort(write);
    await Promise.allSettled(asked);
    throw refusal;
  }
  await Promise.all(asked);
}

/** Aborts what is not aborted already. */
function abort(write: { abort(): void }): void {
  try {
    write.abort();
  } catch {
    // The device did it.
  }
}
