/**
 * What is half done and belongs to the device: a procedure being written, a field being drawn, a wind
 * being typed, and what was set aside because it could not be read. In IndexedDB with strict durability
 * as the record is, and not in localStorage, which a browser writes to the disk when it likes; and apart
 * from the record, because it is no entry of a sortie and is gone when it is done.
 *
 * The database has the name and the shape it had when only procedures were in it, so that an older
 * app still finds those. What is not the draft of a procedure bears a name with a blank, as no code does.
 */

import type { DBSchema, IDBPDatabase } from 'idb';
import { openDatabase } from './database';
import { storeName } from './storeName';

const DB_NAME = `${storeName}-unkept`;
const DB_VERSION = 1;
const PART = 'edits';

/** A draft as it is kept, under its name. */
export interface Draft {
  readonly code: string;
}

interface Parts extends DBSchema {
  edits: { readonly key: string; readonly value: unknown };
}

let opened: { readonly from: IDBFactory; readonly db: Promise<IDBPDatabase<Parts>> } | null = null;

/** The database; asked for anew where it could not be had, or was shut. */
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

/** What was kept under a name; undefined where nothing was, or nothing is kept here. */
export async function readDraft(name: string): Promise<unknown> {
  try {
    return await (await open()).get(PART, name);
  } catch {
    return undefined;
  }
}

/** Keeps a draft in the place of what was kept under its name. Whether it will be there again. */
export const writeDraft = <D extends Draft>(draft: D): Promise<boolean> => change([draft], []);

/** What changes is on the device so soon, however fast it is changed on, ms. */
const KEPT_AFTER_MS = 50;

/** Keeps a draft as it changes. */
export interface DraftKeeper {
  /** It changed. */
  soon(): void;
  /** Keeps it at once. Whether it is on the disk then. */
  now(): Promise<boolean>;
  /** Keeps at once what waits to be kept, as before another draft takes its place. */
  flush(): void;
}

/**
 * Keeps what `draft` gives at that moment, or forgets the draft of the name that it gives. `told` is
 * told each time whether that is on the disk.
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
  // A page that is left may not come back.
  for (const leaving of ['visibilitychange', 'pagehide']) addEventListener(leaving, flush);
  return {
    soon: () => {
      waiting ??= setTimeout(now, KEPT_AFTER_MS);
    },
    now,
    flush,
  };
}

/** Forgets a draft. Whether it is forgotten. */
export const forgetDraft = (name: string): Promise<boolean> => change([], [name]);

/** Every draft whose name begins so; empty where nothing is kept here. */
export async function draftsUnder(prefix: string): Promise<readonly unknown[]> {
  try {
    return await (await open()).getAll(PART, IDBKeyRange.bound(prefix, `${prefix}\uffff`));
  } catch {
    return [];
  }
}

/** Every draft there is. */
export const allDrafts = (): Promise<readonly unknown[]> => draftsUnder('');

/** Keeps some and forgets others, all or none of it. Whether that is on the disk. */
export async function change(kept: readonly Draft[], names: readonly string[]): Promise<boolean> {
  try {
    const writing = (await open()).transaction(PART, 'readwrite', { durability: 'strict' });
    const { store } = writing;
    const asked = [
      ...kept.map((draft) => store.put(draft)),
      ...names.map((name) => store.delete(name)),
    ];
    // Not left to the browser, which would first answer to a page that may be gone by then.
    writing.commit();
    await Promise.all([...asked, writing.done]);
    return true;
  } catch {
    // The device keeps nothing, which the app says already: it stands for as long as the window.
    return false;
  }
}
