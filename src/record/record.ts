/**
 * The record as the app holds it: the list in memory, stored as it grows, merged with what other
 * windows add. An entry counts at once; `keeping` says whether it is also stored.
 */

import {
  compareEntries,
  draftInVersion1,
  ENTRY_VERSION,
  type Entry,
  type Event,
  HIGHEST_SEQ,
  type Id,
  momentWithin,
  readEntry,
  sortieFlown,
  sortiesOf,
  withinBounds,
} from '../core';
import { putBack, setAside } from './aside';
import { type Followers, followOthers, type Heard } from './follow';
import { type KeptDocument, NewerStore, openStore, type Store, type StorePart } from './store';

/** Whether what is entered outlives this window. */
export type Keeping =
  /** Not known yet: the store is opening. */
  | 'opening'
  /** The store hasn't answered for a while: entries wait, and are stored when it does. */
  | 'late'
  | 'kept'
  /** Storage is refused or full: everything is forgotten when the window closes. */
  | 'forgotten'
  /** Everything is there, but a newer version of the app stored it in a way this one can't read. */
  | 'newer';

/** If the store hasn't answered after this, the pilot is told and can work meanwhile, ms. */
const STORE_PATIENCE_MS = 2000;

/**
 * No honest count gets above this: entries are never numbered after one that does, so there is
 * always a next number.
 */
const BELIEVED_SEQ = HIGHEST_SEQ / 2;

/** What this version can't use of the record. */
export interface Unread {
  /** Set aside since the window was opened, because it doesn't have the shape of its version. */
  readonly damaged: number;
  /** Written by a newer version: it stays where it is. */
  readonly newer: number;
}

/** Adds to the record, and says what it holds. */
export class SortieRecord {
  readonly #changed: () => void;
  readonly #by: Id;
  readonly #readOnly: boolean;
  #entries: readonly Entry[] = [];
  #keeping: Keeping = 'opening';
  #unread: Unread = { damaged: 0, newer: 0 };
  readonly #newer = new Set<unknown>();
  readonly #newerSorties = new Set<Id>();
  readonly #known = new Set<Id>();
  /** Added before the store answered: numbered provisionally, and not in the list yet. */
  #pending: readonly Entry[] = [];
  #pendingDocuments: readonly KeptDocument[] = [];
  /** The sortie that pending entries began, and the stored one they turned out to belong to. */
  #renamed: readonly [from: Id, to: Id] | null = null;
  #workedMeanwhile = false;
  #draftOfVersion1: string | null = null;
  #unwritten: Entry[] = [];
  #writing: Promise<unknown> = Promise.resolve();
  #store: Store | null = null;
  #answered: Promise<void> | null = null;
  #followers: Followers | null = null;
  #seq = 0;

  /**
   * `changed` is called whenever the record changes; `by` names the device. A `readOnly` record
   * follows the store and other windows, and ignores every request to add.
   */
  constructor(changed: () => void, by: Id = newId(), readOnly = false) {
    this.#changed = () => {
      // Whatever is drawn from the record may fail: report it, but never lose an entry over it.
      try {
        changed();
      } catch (error) {
        reportError(error);
      }
    };
    this.#by = by;
    this.#readOnly = readOnly;
  }

  /** The entries of the latest sorties, in list order; a new array after every change. */
  get entries(): readonly Entry[] {
    return this.#entries;
  }

  get keeping(): Keeping {
    return this.#keeping;
  }

  get unread(): Unread {
    return this.#unread;
  }

  /** Sorties with an entry by a newer version: what we can read of them isn't all that happened. */
  get newerSorties(): ReadonlySet<Id> {
    return this.#newerSorties;
  }

  /** Whether anything was added before the store answered. */
  get workedMeanwhile(): boolean {
    return this.#workedMeanwhile;
  }

  /** A wind typed but not set, which version 1 kept in the sortie; null if there is none. */
  get draftOfVersion1(): string | null {
    return this.#draftOfVersion1;
  }

  /**
   * Where everything is stored, older sorties included; null while opening or if storage is
   * refused.
   */
  get store(): Store | null {
    return this.#store;
  }

  /**
   * Reads what is stored and starts following other windows. Also resolves if nothing can be
   * stored, or if the store doesn't answer for a while.
   */
  async open(): Promise<void> {
    this.#followers ??= followOthers((heard) => this.#hear(heard));
    this.#answered ??= this.#openStore();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<void>((done) => {
      timer = setTimeout(() => {
        if (this.#keeping === 'opening') this.#keep('late');
        done();
      }, STORE_PATIENCE_MS);
    });
    await Promise.race([this.#answered, late]);
    clearTimeout(timer);
  }

  /** Resolves when the store has answered or refused; never, if it does neither. */
  answered(): Promise<void> {
    return this.#answered ?? Promise.resolve();
  }

  async #openStore(): Promise<void> {
    try {
      const store = await openStore(() => void this.#openAgain());
      const damaged = await this.#read(store);
      this.#keep('kept');
      this.#write();
      if (!this.#readOnly) void this.#tidy(store, damaged);
    } catch (error) {
      this.#addPending();
      this.#keep(error instanceof NewerStore ? 'newer' : 'forgotten');
      this.#tell(this.#unwritten, false);
    }
  }

  /** What another window couldn't store is stored here, if possible. */
  #hear({ entries, written }: Heard): void {
    const fresh = this.#merge(entries);
    if (written) {
      const ids = new Set(entries.map(({ id }) => id));
      this.#unwritten = this.#unwritten.filter(({ id }) => !ids.has(id));
    } else if (fresh.length > 0 && !this.#readOnly) {
      this.#unwritten.push(...fresh);
      if (this.#store !== null) this.#write();
    }
  }

  /** Takes in what is stored, and returns what can't be read of it. */
  async #read(store: Store): Promise<readonly unknown[]> {
    const written = await store.recent();
    const sorted = this.#sort(written);
    const flown = sortieFlown(sortiesOf(sorted.entries), this.#newerSorties).id;
    this.#draftOfVersion1 = draftInVersion1(written, flown);
    // A sortie that came from elsewhere can be resumed too.
    const brought = flown === null ? [] : await store.read('brought', flown);
    // Only now: nothing may be written into a store that can't be read, out of order.
    this.#store = this.#readOnly ? readOnly(store) : store;
    this.#merge([...sorted.entries, ...this.#sort(brought).entries]);
    this.#addPending();
    return sorted.damaged;
  }

  /**
   * The store was closed under this window: by a newer version in another window, or by the device.
   */
  async #openAgain(): Promise<void> {
    this.#store = null;
    this.#answered = this.#openStore();
    const late = setTimeout(() => {
      if (this.#store === null) this.#keep('forgotten');
    }, STORE_PATIENCE_MS);
    await this.#answered;
    clearTimeout(late);
  }

  /** Keeps the stored entries this version can use, and notes the newer ones. */
  #sort(written: readonly unknown[]): {
    readonly entries: readonly Entry[];
    readonly damaged: readonly unknown[];
  } {
    const entries: Entry[] = [];
    const damaged: unknown[] = [];
    for (const value of written) {
      const { entry, problem } = readEntry(value);
      if (entry !== null) entries.push(entry);
      else if (problem === 'damaged') damaged.push(value);
      else this.#noteNewer(value);
    }
    return { entries, damaged };
  }

  #noteNewer(value: unknown): void {
    const { id, sortie, seq } = Object(value) as { readonly [name: string]: unknown };
    this.#newer.add(id);
    if (typeof sortie === 'string') this.#newerSorties.add(sortie);
    if (typeof seq === 'number') this.#numberAfter(seq);
    this.#unread = { ...this.#unread, newer: this.#newer.size };
  }

  /** Sets aside what can't be read, and puts back what was set aside and now can. */
  async #tidy(store: Store, damaged: readonly unknown[]): Promise<void> {
    await this.setAside('entries', damaged).catch(() => undefined);
    const back = await putBack(
      store,
      (part, value) => part !== 'documents' && readEntry(value).entry !== null,
    ).catch(() => []);
    this.#merge(
      back.flatMap(({ part, value }) => (part === 'entries' ? this.#sort([value]).entries : [])),
    );
  }

  /** Moves what can't be read out of a part of the store, and sets it aside. */
  async setAside(part: StorePart, damaged: readonly unknown[]): Promise<void> {
    if (this.#store === null || this.#readOnly || damaged.length === 0) return;
    const moved = await setAside(this.#store, part, damaged);
    if (moved === 0) return;
    this.#unread = { ...this.#unread, damaged: this.#unread.damaged + moved };
    this.#changed();
  }

  /** Entries of a newer version stay in the store, and are reported. */
  noteNewer(key: unknown): void {
    if (this.#newer.has(key)) return;
    this.#newer.add(key);
    this.#unread = { ...this.#unread, newer: this.#newer.size };
    this.#changed();
  }

  /** Numbers new entries after these, which may have been numbered elsewhere. */
  numberAfter(entries: readonly Entry[]): void {
    for (const { seq } of entries) this.#numberAfter(seq);
  }

  #numberAfter(seq: number): void {
    if (seq <= BELIEVED_SEQ) this.#seq = Math.max(this.#seq, seq);
  }

  /**
   * Adds entries, all or nothing. Before the store has answered they wait, to be written into the
   * sortie that turns out to be in progress.
   */
  add(sortie: Id, at: Entry['at'], ...events: readonly Event[]): readonly Entry[] {
    if (this.#readOnly) return [];
    const [from, to] = this.#renamed ?? [];
    const added = events.map((event): Entry => {
      this.#seq += 1;
      return {
        ...withinBounds(event),
        id: newId(),
        v: ENTRY_VERSION,
        seq: this.#seq,
        by: this.#by,
        sortie: sortie === from && to !== undefined ? to : sortie,
        at: { wallMs: momentWithin(at.wallMs), sortieMs: momentWithin(at.sortieMs) },
      };
    });
    if (this.#keeping === 'opening' || this.#keeping === 'late') {
      this.#pending = [...this.#pending, ...added];
      this.#merge(added);
      return added;
    }
    this.#merge(added);
    this.#unwritten.push(...added);
    if (this.#store === null) this.#tell(added, false);
    else this.#write();
    return added;
  }

  /**
   * Numbers the pending entries after the stored ones, and continues the sortie in progress with
   * them.
   */
  #addPending(): void {
    const pending = this.#pending;
    if (pending.length === 0) return;
    this.#pending = [];
    this.#workedMeanwhile = true;
    const ids = new Set(pending.map(({ id }) => id));
    const before = this.#entries.filter(({ id }) => !ids.has(id));
    const begun = pending[0]?.sortie ?? '';
    const flown = sortieFlown(sortiesOf(before), this.#newerSorties).id;
    const isNew = flown !== null && !before.some(({ sortie }) => sortie === begun);
    if (isNew) this.#renamed = [begun, flown];
    const added = pending.map((entry): Entry => {
      this.#seq += 1;
      return {
        ...entry,
        seq: this.#seq,
        sortie: isNew && entry.sortie === begun ? flown : entry.sortie,
      };
    });
    this.#entries = [...before, ...added].sort(compareEntries);
    this.#unwritten.push(...added);
    this.#changed();
  }

  /** Reads the store again, for a window that slept while another wrote. */
  async refresh(): Promise<void> {
    if (this.#store === null) return;
    try {
      this.#merge(this.#sort(await this.#store.recent()).entries);
    } catch {
      this.#keep('forgotten');
    }
  }

  /** Takes in stored entries that weren't read at the start. */
  recall(entries: readonly Entry[]): void {
    this.#merge(entries);
  }

  /** The stored documents this version can read. */
  async documents(): Promise<readonly KeptDocument[]> {
    const { documentsIn } = await import('./documents');
    return documentsIn(this).catch(() => []);
  }

  /** Stores documents, all or none; `keeping` shows whether that worked. */
  async keepDocument(...documents: readonly KeptDocument[]): Promise<void> {
    if (this.#readOnly) return;
    if (this.#store === null) {
      this.#pendingDocuments = [...this.#pendingDocuments, ...documents];
      return;
    }
    try {
      await this.#store.write({ documents });
    } catch {
      this.#keep('forgotten');
    }
  }

  /** Resolves when everything added so far is stored or was refused. */
  settled(): Promise<unknown> {
    return this.#writing;
  }

  #merge(entries: readonly Entry[]): readonly Entry[] {
    const fresh = entries.filter(({ id }) => !this.#known.has(id));
    if (fresh.length === 0) return fresh;
    for (const { id } of fresh) this.#known.add(id);
    this.numberAfter(fresh);
    this.#entries = [...this.#entries, ...fresh].sort(compareEntries);
    this.#changed();
    return fresh;
  }

  #keep(keeping: Keeping): void {
    if (this.#keeping === keeping) return;
    this.#keeping = keeping;
    this.#changed();
  }

  /**
   * Stores entries at once. IndexedDB keeps the order; waiting for an earlier batch to reach the
   * disk would lose them with the page. What was refused is tried again with the next batch. Other
   * windows hear of stored entries, and of refused ones too, because they may be able to store
   * them.
   */
  #write(): void {
    const store = this.#store;
    if (store === null) return;
    const [batch, documents] = [this.#unwritten, this.#pendingDocuments];
    if (batch.length + documents.length === 0) return;
    this.#unwritten = [];
    this.#pendingDocuments = [];
    const written = store
      .write({ entries: batch, ...(documents.length === 0 ? {} : { documents }) })
      .then(
        () => {
          this.#tell(batch, true);
          if (this.#unwritten.length === 0) this.#keep('kept');
        },
        () => {
          this.#unwritten = [...batch, ...this.#unwritten];
          this.#pendingDocuments = [...documents, ...this.#pendingDocuments];
          // A closed store is being reopened; pending entries are stored then.
          if (this.#store === store) this.#keep('forgotten');
          this.#tell(batch, false);
        },
      );
    this.#writing = Promise.all([this.#writing, written]);
  }

  #tell(entries: readonly Entry[], written: boolean): void {
    if (entries.length > 0) this.#followers?.tell({ entries, written });
  }
}

/** Whether anything added after these entries can still be numbered. */
export const canBeGoneOnWith = (entries: readonly Entry[]): boolean =>
  entries.every(({ seq }) => seq <= BELIEVED_SEQ);

const readOnly = (store: Store): Store => ({
  ...store,
  write: async () => undefined,
  remove: async () => undefined,
});

/** A new id for an entry, a sortie or a run: 128 random bits. */
export function newId(): Id {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
