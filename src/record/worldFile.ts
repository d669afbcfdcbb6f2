/**
 * The file of the world's fields, stored once it was fetched. It lives in a database of its own: it
 * is no record of anything, can be fetched again, and is the same for every store. Not in the
 * worker's caches, which pages served over plain http don't have.
 */

import type { DBSchema } from 'idb';
import { openDatabase } from './database';

const DB_NAME = 'lapstrip-world';
const DB_VERSION = 1;
const PART = 'files';
const KEY = 'fields';

/** The file as it was fetched, still packed, and where the app had it from. */
export interface StoredWorld {
  readonly path: string;
  readonly packed: Uint8Array<ArrayBuffer>;
}

interface Parts extends DBSchema {
  files: { readonly key: string; readonly value: unknown };
}

async function within<T>(
  use: (db: Awaited<ReturnType<typeof openDatabase<Parts>>>) => Promise<T>,
): Promise<T> {
  const db = await openDatabase<Parts>(DB_NAME, DB_VERSION, {
    lost: () => undefined,
    upgrade: (fresh) => void fresh.createObjectStore(PART),
  });
  try {
    return await use(db);
  } finally {
    db.close();
  }
}

const isStored = (value: unknown): value is StoredWorld =>
  typeof value === 'object' &&
  value !== null &&
  'path' in value &&
  typeof value.path === 'string' &&
  'packed' in value &&
  value.packed instanceof Uint8Array;

/** The stored file; null if there is none, or the device stores nothing. */
export async function readWorldFile(): Promise<StoredWorld | null> {
  try {
    const value = await within((db) => db.get(PART, KEY));
    return isStored(value) ? value : null;
  } catch {
    return null;
  }
}

/** Stores it in place of an older one. Resolves to whether it is on disk. */
export async function keepWorldFile(file: StoredWorld): Promise<boolean> {
  try {
    await within((db) => db.put(PART, file, KEY));
    return true;
  } catch {
    return false;
  }
}

/** Drops it, because it can't be read. */
export async function dropWorldFile(): Promise<void> {
  await within((db) => db.delete(PART, KEY)).catch(() => undefined);
}
