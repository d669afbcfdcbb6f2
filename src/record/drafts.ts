/**
 * Unfinished work that belongs to the device: a procedure being written, a field being drawn, a
 * wind being typed, and what was set aside because it couldn't be read. It lives in IndexedDB with
 * strict durability, as the record does, not in localStorage, which browsers flush when they
 * please; and outside the record, because it is no entry of a sortie and goes away when it is
 * finished.
 *
 * The database keeps the name and shape it had when it held only procedures, so that an older app
 * still finds those. Every other draft has a space in its name, which no procedure's code has.
 */

import type { DBSchema, IDBPDatabase } from 'idb';
import { openDatabase } from './database';
import { storeName } from './storeName';

const DB_NAME = `${storeName}-unkept`;
const DB_VERSION = 1;
const PART = 'edits';

/** A draft as stored, under its name. */
export interface Draft {
  readonly code: string;
}

interface Parts extends DBSchema {
  edits: { readonly key: string; readonly value: unknown };
}

let opened: { readonly from: IDBFactory; readonly db: Promise<IDBPDatabase<Parts>> } | null = null;

/** The database; reopened if opening failed or it was closed. */
function open(): Promise<IDBPDatabase<Parts>> {
  if (opened?.from !== indexedDB) {
    const db = openDatabase<Parts>(DB_NAME, DB_VERSION, {
      lost: () => {
        opened = null;
      },
      upgrade: (fresh) => void fresh.createObjectStore(PART, { keyPath: 'code' }),
    });
    opened = { from: indexedDB, db };
    db.catch(() => {
      opened = null;
    });
  }
  return opened.db;
}

/** The draft stored under a name; undefined if there is none or the device stores nothing. */
export async function readDraft(name: string): Promise<unknown> {
  try {
    return await (await open()).get(PART, name);
  } catch {
    return undefined;
  }
}

/** Stores a draft, replacing the one of the same name. Resolves to whether it is on disk. */
export const writeDraft = <D extends Draft>(draft: D): Promise<boolean> =>
  changeDrafts([draft], []);

/** However fast a draft changes, it is written within this time, ms. */
const KEPT_AFTER_MS = 50;

/** Stores a draft as it changes. */
export interface DraftKeeper {
  /** The draft changed: write it soon. */
  soon(): void;
  /** Writes it now. Resolves to whether it is on disk. */
  now(): Promise<boolean>;
  /** Writes a pending change now, for instance before another draft takes this one's place. */
  flush(): void;
}

/**
 * Stores what `draft` returns at the time of writing, or deletes the draft whose name it returns.
 * `told` hears each time whether that reached the disk.
 */
export function draftKeeper(
  draft: () => Draft | string,
  told: (isKept: boolean) => void = () => {},
): DraftKeeper {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const now = async () => {
    clearTimeout(waiting);
    waiting = undefined;
    const kept = draft();
    const isKept = await (typeof kept === 'string' ? forgetDraft(kept) : writeDraft(kept));
    told(isKept);
    return isKept;
  };
  const flush = () => waiting !== undefined && void now();
  // A page that is left may never come back.
  for (const leaving of ['visibilitychange', 'pagehide']) addEventListener(leaving, flush);
  return {
    soon: () => {
      waiting ??= setTimeout(now, KEPT_AFTER_MS);
    },
    now,
    flush,
  };
}

/** Deletes a draft. Resolves to whether it is gone. */
export const forgetDraft = (name: string): Promise<boolean> => changeDrafts([], [name]);

/** Every draft whose name starts with `prefix`; empty if the device stores nothing. */
export async function draftsUnder(prefix: string): Promise<readonly unknown[]> {
  try {
    return await (await open()).getAll(PART, IDBKeyRange.bound(prefix, `${prefix}\uffff`));
  } catch {
    return [];
  }
}

/** Every draft. */
export const allDrafts = (): Promise<readonly unknown[]> => draftsUnder('');

/**
 * Stores some drafts and deletes others, all or nothing. Resolves to whether that reached the disk.
 */
export async function changeDrafts(
  kept: readonly Draft[],
  names: readonly string[],
): Promise<boolean> {
  try {
    const writing = (await open()).transaction(PART, 'readwrite', { durability: 'strict' });
    const { store } = writing;
    const asked = [
      ...kept.map((draft) => store.put(draft)),
      ...names.map((name) => store.delete(name)),
    ];
    // Commit explicitly: by itself the browser would first report to a page that may be gone.
    writing.commit();
    await Promise.all([...asked, writing.done]);
    return true;
  } catch {
    // The device stores nothing, as the app already says: the draft lives as long as the window.
    return false;
  }
}
