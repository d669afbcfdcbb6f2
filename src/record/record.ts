/**
 * The record as the app holds it: the list in memory, written as it happens, merged with what other
 * windows add. An entry counts at once; whether it is also kept is said by `keeping`.
 */

import { compareEntries, type Entry, type Event, type Id } from '../core';
import { type Followers, followOthers } from './follow';
import { type KeptDocument, openStore, type Store } from './store';

/** Whether what is entered outlives this window. */
export type Keeping =
  /** Not known yet: the store is being opened. */
  | 'opening'
  | 'kept'
  /** The device refuses storage, or it is full: all is forgotten when the window closes. */
  | 'forgotten';

/** Longer than this the app will not wait for a storage that does not answer. */
const STORE_PATIENCE_MS = 2000;

/** Adds to the record, and says what it holds. */
export class Record {
  readonly #changed: () => void;
  #entries: readonly Entry[] = [];
  #keeping: Keeping = 'opening';
  readonly #known = new Set<Id>();
  #unwritten: Entry[] = [];
  #writing: Promise<unknown> = Promise.resolve();
  #store: Store | null = null;
  #followers: Followers | null = null;
  #seq = 0;
  readonly #readOnly: boolean;

  /**
   * `changed` is called whenever `entries` or `keeping` says something new. One that is `readOnly`
   * follows what is kept and what other windows add, and never adds to it, whatever it is asked.
   */
  constructor(changed: () => void, readOnly = false) {
    this.#changed = changed;
    this.#readOnly = readOnly;
  }

  /** The entries of the sorties flown last, in the order of the list; a new array with every change. */
  get entries(): readonly Entry[] {
    return this.#entries;
  }

  get keeping(): Keeping {
    return this.#keeping;
  }

  /** Where all is kept, also the older sorties; null while it is opened and where storage is refused. */
  get store(): Store | null {
    return this.#store;
  }

  /**
   * Reads what was kept, and begins to follow other windows. Resolves also where nothing is kept, and
   * where the store does not answer: what is entered counts as forgotten until it does.
   */
  async open(): Promise<void> {
    this.#followers = followOthers((entries) => this.#merge(entries));
    await Promise.race([
      this.#openStore(),
      new Promise((done) => setTimeout(done, STORE_PATIENCE_MS)),
    ]);
    if (this.#keeping === 'opening') this.#keep('forgotten');
  }

  async #openStore(): Promise<void> {
    try {
      const store = await openStore();
      this.#merge(await store.recent());
      // Only now: into a store that cannot be read nothing is written, out of its order.
      this.#store = this.#readOnly ? { ...store, write: async () => undefined } : store;
      this.#keep('kept');
    } catch {
      this.#keep('forgotten');
    }
    this.#write();
  }

  /** What is added from now on comes after these entries, which may have been numbered elsewhere. */
  numberAfter(entries: readonly Entry[]): void {
    for (const { seq } of entries) this.#seq = Math.max(this.#seq, seq);
  }

  /** Adds what happened, in one go: all of it is kept, or none. */
  add(sortie: Id, at: Entry['at'], ...events: readonly Event[]): readonly Entry[] {
    if (this.#readOnly) return [];
    // What was kept is not known yet, and holds fewer entries than milliseconds have gone by.
    if (this.#store === null) this.#seq = Math.max(this.#seq, at.wallMs);
    const added = events.map((event): Entry => {
      this.#seq += 1;
      return { ...event, id: newId(), seq: this.#seq, sortie, at };
    });
    this.#merge(added);
    this.#unwritten.push(...added);
    this.#followers?.tell(added);
    this.#write();
    return added;
  }

  /** Reads again what was kept, for a window that slept while another wrote. */
  async refresh(): Promise<void> {
    if (this.#store === null) return;
    try {
      this.#merge(await this.#store.recent());
    } catch {
      this.#keep('forgotten');
    }
  }

  async documents(): Promise<readonly KeptDocument[]> {
    const kept = await this.#store?.read('documents').catch(() => []);
    return (kept ?? []) as readonly KeptDocument[];
  }

  /** Keeps a document; whether that succeeded shows in `keeping`. */
  async keepDocument(document: KeptDocument): Promise<void> {
    try {
      await this.#store?.write({ documents: [document] });
    } catch {
      this.#keep('forgotten');
    }
  }

  /** Resolves when all that was added so far is written, or was refused. */
  settled(): Promise<unknown> {
    return this.#writing;
  }

  #merge(entries: readonly Entry[]): void {
    const fresh = entries.filter((entry) => isEntry(entry) && !this.#known.has(entry.id));
    if (fresh.length === 0) return;
    for (const { id } of fresh) this.#known.add(id);
    this.numberAfter(fresh);
    this.#entries = [...this.#entries, ...fresh].sort(compareEntries);
    this.#changed();
  }

  #keep(keeping: Keeping): void {
    if (this.#keeping === keeping) return;
    this.#keeping = keeping;
    this.#changed();
  }

  /**
   * Writes at once: the store keeps the order, and what waited for an earlier batch to be on the disk
   * would be lost with the page. What was refused is tried again with the next.
   */
  #write(): void {
    const batch = this.#unwritten;
    if (this.#store === null || batch.length === 0) return;
    this.#unwritten = [];
    const written = this.#store.write({ entries: batch }).then(
      () => {
        if (this.#unwritten.length === 0) this.#keep('kept');
      },
      () => {
        this.#unwritten = [...batch, ...this.#unwritten];
        this.#keep('forgotten');
      },
    );
    this.#writing = Promise.all([this.#writing, written]);
  }
}

/** What is read back was written by this app, but perhaps by a damaged or a later one. */
function isEntry(value: unknown): value is Entry {
  if (typeof value !== 'object' || value === null) return false;
  const { id, seq, sortie, kind, at } = value as Partial<Entry>;
  return (
    typeof id === 'string' &&
    Number.isSafeInteger(seq) &&
    typeof sortie === 'string' &&
    typeof kind === 'string' &&
    Number.isFinite(at?.wallMs) &&
    Number.isFinite(at?.sortieMs)
  );
}

/** A new name for an entry, a sortie or a run: 128 random bits. */
export function newId(): Id {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
