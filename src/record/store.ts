/**
 * Where the record is kept: IndexedDB, with strict durability, so that a tick outlives a dead
 * battery. A device that refuses storage is not an error: the app works and says it will forget.
 *
 * What was entered here and what came from elsewhere are kept apart, so that starting never waits
 * for an old log and what is brought never becomes the sortie that is being flown.
 */

import type { Entry, Hash, Id } from '../core';
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

/**
 * The parts of the store: entries made here, those brought from elsewhere, documents, and what was
 * worked out from the entries of a sortie, which is forgotten as soon as one is added to it.
 */
export type Part = 'entries' | 'brought' | 'documents' | 'summaries';

/** What is to be written, by part. */
export type Writing = Readonly<Partial<Record<Part, readonly unknown[]>>>;

const DB_VERSION = 2;

/** So many of the entries made last are read at the start: fifteen sorties or more. */
const RECENT = 1500;

/** Keeps entries and documents; every call may reject, and a rejection means "not kept". */
export interface Store {
  /** The sorties flown last, whole. */
  recent(): Promise<readonly Entry[]>;
  /** All that stands in a part, or what of its entries belongs to a sortie. */
  read(part: Part, sortie?: Id): Promise<readonly unknown[]>;
  /** Writes all of it or nothing; resolves when it is on the disk. */
  write(writing: Writing): Promise<void>;
  /** The device's own, for what is rarely done. */
  readonly db: IDBDatabase;
}

/** Opens the store; rejects where the device refuses storage. */
export async function openStore(): Promise<Store> {
  const opening = indexedDB.open(storeName, DB_VERSION);
  opening.onupgradeneeded = ({ oldVersion }) => {
    const db = opening.result;
    if (oldVersion < 1) {
      db.createObjectStore('entries', { keyPath: 'id' });
      db.createObjectStore('documents', { keyPath: 'hash' });
    }
    const entries = opening.transaction?.objectStore('entries');
    entries?.createIndex('seq', 'seq');
    for (const part of [entries, db.createObjectStore('brought', { keyPath: 'id' })]) {
      part?.createIndex('sortie', 'sortie');
    }
    db.createObjectStore('summaries', { keyPath: 'sortie' });
  };
  const db = await answerTo(opening);
  // A newer version in another window waits for this one: give way rather than block the update.
  db.onversionchange = () => db.close();
  return {
    db,
    recent: async () => {
      const few = await answerTo(entriesIn(db).getAll(null, RECENT));
      if (few.length < RECENT) return few;
      const { recentIn } = await import('./recent');
      return recentIn(entriesIn(db), RECENT);
    },
    read: async (part, sortie) => {
      const store = db.transaction(part).objectStore(part);
      return answerTo(sortie === undefined ? store.getAll() : store.index('sortie').getAll(sortie));
    },
    write: (writing) => writeAll(db, writing),
  };
}

const entriesIn = (db: IDBDatabase) => db.transaction('entries').objectStore('entries');

/** What the device answers to a request. */
export function answerTo<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Writes all of it or nothing; resolves when it is on the disk. */
function writeAll(db: IDBDatabase, writing: Writing): Promise<void> {
  return new Promise((resolve, reject) => {
    const parts = Object.keys(writing) as Part[];
    const write = db.transaction([...parts, 'summaries'], 'readwrite', { durability: 'strict' });
    let refusal: unknown = null;
    write.oncomplete = () => resolve();
    write.onabort = () => reject(refusal ?? write.error);
    try {
      for (const part of parts) {
        for (const value of writing[part] ?? []) write.objectStore(part).put(value);
      }
      // What was worked out from a sortie holds no longer.
      const touched = [...(writing.entries ?? []), ...(writing.brought ?? [])] as Entry[];
      for (const sortie of new Set(touched.map(({ sortie }) => sortie))) {
        write.objectStore('summaries').delete(sortie);
      }
      // Not left to the browser, which would first answer to a page that may be gone by then.
      write.commit();
    } catch (error) {
      // A put that is refused outright must not leave those before it standing.
      refusal = error;
      abort(write);
    }
  });
}

/** Aborts what is not aborted already. */
function abort(write: IDBTransaction): void {
  try {
    write.abort();
  } catch {
    // The device did it.
  }
}
