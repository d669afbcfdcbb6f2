/**
 * Where the record is kept: IndexedDB, with strict durability, so that a tick outlives a dead
 * battery. A device that refuses storage is not an error: the app works and says it will forget.
 */

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Entry, Hash, Id } from '../core';

interface LapstripDb extends DBSchema {
  entries: { key: Id; value: Entry };
  documents: { key: Hash; value: KeptDocument };
}

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
  const db: IDBPDatabase<LapstripDb> = await openDB<LapstripDb>(DB_NAME, DB_VERSION, {
    upgrade(fresh) {
      fresh.createObjectStore('entries', { keyPath: 'id' });
      fresh.createObjectStore('documents', { keyPath: 'hash' });
    },
    // A newer version in another window waits for this one: give way rather than block the update.
    blocking(_from, _to, event) {
      (event.target as IDBDatabase).close();
    },
  });
  return {
    entries: () => db.getAll('entries'),
    async addEntries(entries) {
      const write = db.transaction('entries', 'readwrite', { durability: 'strict' });
      const puts: Promise<unknown>[] = [];
      try {
        for (const entry of entries) puts.push(write.store.put(entry));
        // Not left to the browser, which would first answer to a page that may be gone by then.
        write.commit();
      } catch (refusal) {
        // A put that is refused outright must not leave those before it standing.
        const settled = Promise.allSettled([...puts, write.done]);
        abort(write);
        await settled;
        throw refusal;
      }
      await Promise.all([...puts, write.done]);
    },
    documents: () => db.getAll('documents'),
    async addDocument(document) {
      const write = db.transaction('documents', 'readwrite', { durability: 'strict' });
      await Promise.all([write.store.put(document), write.done]);
    },
  };
}

/** Aborts what is not aborted already. */
function abort(write: { abort(): void }): void {
  try {
    write.abort();
  } catch {
    // The device did it.
  }
}
