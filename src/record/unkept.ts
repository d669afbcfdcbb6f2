/**
 * An edit that is not kept yet, so that it outlives a reload and a dead battery: in IndexedDB with
 * strict durability as the record is, and not in localStorage, which a browser writes to the disk
 * when it likes. It stands apart from the record, because it is no entry of a sortie, changes with
 * every key, and is gone when its version is kept.
 */

import type { Edit, Hash, Procedure } from '../core';
import { answerTo } from './store';
import { storeName } from './storeName';

/** An edit: its start, its changes in order, and how many of them are made; the others were taken back. */
export interface UnkeptEdit {
  /** The code of the procedure. */
  readonly code: string;
  readonly start: Procedure;
  readonly edits: readonly Edit[];
  readonly made: number;
  /** The versions that were known when it was made: one that is not among them was kept elsewhere since. */
  readonly known?: readonly Hash[];
}

const DB_NAME = `${storeName}-unkept`;
const PART = 'edits';

let opened: Promise<IDBDatabase> | null = null;

/** The database; asked for anew where it could not be had. */
function open(): Promise<IDBDatabase> {
  opened ??= openNow().catch((error: unknown) => {
    opened = null;
    throw error;
  });
  return opened;
}

async function openNow(): Promise<IDBDatabase> {
  const opening = indexedDB.open(DB_NAME, 1);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore(PART, { keyPath: 'code' });
  };
  return answerTo(opening);
}

/** The edit of a procedure as it was left; null where there is none, or where nothing is kept. */
export async function readUnkept(code: string): Promise<UnkeptEdit | null> {
  try {
    const db = await open();
    const found: UnkeptEdit | undefined = await answerTo(
      db.transaction(PART).objectStore(PART).get(code),
    );
    return found ?? null;
  } catch {
    return null;
  }
}

/** Every edit that is kept, as it is stored; none where nothing is kept. */
export async function readAllUnkept(): Promise<readonly unknown[]> {
  try {
    return await answerTo((await open()).transaction(PART).objectStore(PART).getAll());
  } catch {
    return [];
  }
}

/** Keeps an edit in the place of what was kept of it before. Resolves where that is refused, too. */
export const writeUnkept = (edit: UnkeptEdit): Promise<void> => write((part) => part.put(edit));

/** Forgets an edit. */
export const forgetUnkept = (code: string): Promise<void> => write((part) => part.delete(code));

async function write(ask: (part: IDBObjectStore) => IDBRequest): Promise<void> {
  try {
    const db = await open();
    const writing = db.transaction(PART, 'readwrite', { durability: 'strict' });
    const asked = ask(writing.objectStore(PART));
    // Not left to the browser, which would first answer to a page that may be gone by then.
    writing.commit();
    await answerTo(asked);
  } catch {
    // The device keeps nothing, which the app says already: the edit stands for as long as the window.
  }
}
