/**
 * The record as the app holds it: the list in memory, written as it happens, merged with what other
 * windows add. An entry counts at once; whether it is also kept is said by `keeping`.
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
import { type KeptDocument, NewerStore, openStore, type Part, type Store } from './store';

/** Whether what is entered outlives this window. */
export type Keeping =
  /** Not known yet: the store is being opened. */
  | 'opening'
  /** The store has not answered for a while: what is entered waits, and is written when it does. */
  | 'late'
  | 'kept'
  /** The device refuses storage, or it is full: all is forgotten when the window closes. */
  | 'forgotten'
  /** All is there, kept by a newer version of the app in a way that this one cannot read. */
  | 'newer';

/** After so long without an answer the pilot is told, and can work meanwhile, ms. */
const STORE_PATIENCE_MS = 2000;

/** A number above this was never counted up to: none of ours is numbered after it, so that there is always room. */
const BELIEVED_SEQ = HIGHEST_SEQ / 2;

/** What of the record this version does not use. */
export interface Unread {
  /** Set aside since the window was opened, because it is not of the shape of its version. */
  readonly damaged: number;
  /** Of a newer version: it stays where it is. */
  readonly newer: number;
}

/** Adds to the record, and says what it holds. */
export class Record {
  readonly #changed: () => void;
  readonly #by: Id;
  readonly #readOnly: boolean;
  #entries: readonly Entry[] = [];
  #keeping: Keeping = 'opening';
  #unread: Unread = { damaged: 0, newer: 0 };
  readonly #newer = new Set<unknown>();
  readonly #newerSorties = new Set<Id>();
  readonly #known = new Set<Id>();
  /** Added before the store has answered: not numbered for good, and not in the list yet. */
  #pending: readonly Entry[] = [];
  #pendingDocuments: readonly KeptDocument[] = [];
  /** The sortie that was begun for what is pending, and the one it belongs to since. */
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
   * `changed` is called whenever the record says something new; `by` names the device. One that is
   * `readOnly` follows what is kept and what other windows add, and never adds to it, whatever it is
   * asked.
   */
  constructor(changed: () => void, by: Id = newId(), readOnly = false) {
    this.#changed = () => {
      // What is drawn from it may fail: that is reported, and takes no entry with it.
      try {
        changed();
      } catch (error) {
        reportError(error);
      }
    };
    this.#by = by;
    this.#readOnly = readOnly;
  }

  /** The entries of the sorties flown last, in the order of the list; a new array with every change. */
  get entries(): readonly Entry[] {
    return this.#entries;
  }

  get keeping(): Keeping {
    return this.#keeping;
  }

  get unread(): Unread {
    return this.#unread;
  }

  /** The sorties of which a newer version wrote a part: what they say is not all that happened. */
  get newerSorties(): ReadonlySet<Id> {
    return this.#newerSorties;
  }

  /** Whether something was added before the store had answered. */
  get workedMeanwhile(): boolean {
    return this.#workedMeanwhile;
  }

  /** The wind that was typed and not set, which version 1 kept in the sortie; null where there is none. */
  get draftOfVersion1(): string | null {
    return this.#draftOfVersion1;
  }

  /** Where all is kept, also the older sorties; null while it is opened and where storage is refused. */
  get store(): Store | null {
    return this.#store;
  }

  /**
   * Reads what was kept, and begins to follow other windows. Resolves also where nothing is kept, and
   * where the store does not answer for a while.
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

  /** Resolves when the store has answered or refused; never where it does neither. */
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

  /** What another window could not write is written here, if it can be. */
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

  /** Takes in hand what stands in the store, and gives what of it cannot be read. */
  async #read(store: Store): Promise<readonly unknown[]> {
    const written = await store.recent();
    const sorted = this.#sort(written);
    const flown = sortieFlown(sortiesOf(sorted.entries), this.#newerSorties).id;
    this.#draftOfVersion1 = draftInVersion1(written, flown);
    // A sortie that came from elsewhere can be taken up, too.
    const brought = flown === null ? [] : await store.read('brought', flown);
    // Only now: into a store that cannot be read nothing is written, out of its order.
    this.#store = this.#readOnly ? readOnly(store) : store;
    this.#merge([...sorted.entries, ...this.#sort(brought).entries]);
    this.#addPending();
    return sorted.damaged;
  }

  /** The store was shut under this window: another has made a newer one of it, or the device did it. */
  async #openAgain(): Promise<void> {
    this.#store = null;
    this.#answered = this.#openStore();
    const late = setTimeout(() => {
      if (this.#store === null) this.#keep('forgotten');
    }, STORE_PATIENCE_MS);
    await this.#answered;
    clearTimeout(late);
  }

  /** Sorts what was read by whether this version can use it, and notes what is newer. */
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

  /** Sets aside what cannot be read, and puts back what was and now can. */
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

  /** Takes out of a part of the store what cannot be read, and keeps it aside. */
  async setAside(part: Part, damaged: readonly unknown[]): Promise<void> {
    if (this.#store === null || this.#readOnly || damaged.length === 0) return;
    const moved = await setAside(this.#store, part, damaged);
    if (moved === 0) return;
    this.#unread = { ...this.#unread, damaged: this.#unread.damaged + moved };
    this.#changed();
  }

  /** What is of a newer version stays, and is said to be there. */
  noteNewer(key: unknown): void {
    if (this.#newer.has(key)) return;
    this.#newer.add(key);
    this.#unread = { ...this.#unread, newer: this.#newer.size };
    this.#changed();
  }

  /** What is added from now on comes after these entries, which may have been numbered elsewhere. */
  numberAfter(entries: readonly Entry[]): void {
    for (const { seq } of entries) this.#numberAfter(seq);
  }

  #numberAfter(seq: number): void {
    if (seq <= BELIEVED_SEQ) this.#seq = Math.max(this.#seq, seq);
  }

  /**
   * Adds what happened, in one go: all of it is kept, or none. Before the store has answered it waits
   * to be written into the sortie that turns out to be flown.
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

  /** What waited for the store is numbered after what stands there, and goes on in the sortie flown there. */
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

  /** Reads again what was kept, for a window that slept while another wrote. */
  async refresh(): Promise<void> {
    if (this.#store === null) return;
    try {
      this.#merge(this.#sort(await this.#store.recent()).entries);
    } catch {
      this.#keep('forgotten');
    }
  }

  /** Takes entries in hand that stand in the store and were not read at the start. */
  recall(entries: readonly Entry[]): void {
    this.#merge(entries);
  }

  /** The documents that are kept, as far as this version can read them. */
  async documents(): Promise<readonly KeptDocument[]> {
    const { documentsIn } = await import('./documents');
    return documentsIn(this).catch(() => []);
  }

  /** Keeps a document; whether that succeeded shows in `keeping`. */
  async keepDocument(document: KeptDocument): Promise<void> {
    if (this.#readOnly) return;
    if (this.#store === null) {
      this.#pendingDocuments = [...this.#pendingDocuments, document];
      return;
    }
    try {
      await this.#store.write({ documents: [document] });
    } catch {
      this.#keep('forgotten');
    }
  }

  /** Resolves when all that was added so far is written, or was refused. */
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
   * Writes at once: the store keeps the order, and what waited for an earlier batch to be on the disk
   * would be lost with the page. What was refused is tried again with the next. Other windows are told
   * of what is written; of what is refused they are told so, because they may be able to.
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
          // A store that was shut is being opened again, and what waits is written then.
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

/** Whether what is added to these entries can be numbered after them. */
export const canBeGoneOnWith = (entries: readonly Entry[]): boolean =>
  entries.every(({ seq }) => seq <= BELIEVED_SEQ);

/** A store that is only looked at. */
const readOnly = (store: Store): Store => ({
  ...store,
  write: async () => undefined,
  remove: async () => undefined,
});

/** A new name for an entry, a sortie or a run: 128 random bits. */
export function newId(): Id {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
