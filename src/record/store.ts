/**
 * Where the record is kept: IndexedDB, with strict durability, so that a tick outlives a dead
 * battery. A device that refuses storage is not an error: the app works and says it will forget.
 */

import type { Entry, Hash } from '../core';

/** A document that a sortie uses, kept as it was. */
export interface KeptDocument {
  readonly hash: Hash;
  /** `field`, `aircraft` or `procedure`. */
  readonly kind: string;
  readonly content: unknown;
  /** The pilot brought it; the others came with the app and are kept as they were flown. */
  readonly own: boolean;
}

const DB_NAME = 'lapstrip';
const DB_VERSION = 1;

/** Keeps entries and documents; every call may reject, and a rejection means "not kept". */
export interface Store {
  entries(): Promise<readonly Entry[]>;
  addEntries(entries: readonly Entry[]): Promise<void>;
  documents(): Promise<readonly KeptDocument[]>;
  addDocument(document: KeptDocument): Promise<void>;
}

/** Opens the store; rejects where the device refuses storage. */
export async function openStore(): Promise<Store> {
  const opening = indexedDB.open(DB_NAME, DB_VERSION);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore('entries', { keyPath: 'id' });
    opening.result.createObjectStore('documents', { keyPath: 'hash' });
  };
  const db = await answerTo(opening);
  // A newer version in another window waits for this one: give way rather than block the update.
  db.onversionchange = () => db.close();
  return {
    entries: async () => answerTo(db.transaction('entries').objectStore('entries').getAll()),
    addEntries: (entries) => putAll(db, 'entries', entries),
    documents: async () => answerTo(db.transaction('documents').objectStore('documents').getAll()),
    addDocument: (document) => putAll(db, 'documents', [document]),
  };
}

/** What the device answers to a request. */
function answerTo<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Writes all of it or nothing; resolves when it is on the disk. */
function putAll(db: IDBDatabase, name: string, values: readonly unknown[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const write = db.transaction(name, 'readwrite', { durability: 'strict' });
    let refusal: unknown = null;
    write.oncomplete = () => resolve();
    write.onabort = () => reject(refusal ?? write.error);
    try {
      for (const value of values) write.objectStore(name).put(value);
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
