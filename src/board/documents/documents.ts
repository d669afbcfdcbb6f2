/** The documents in use: those that come with the app, and those stored with the record. */

import {
  catalogue,
  type ListedAircraft,
  type ListedField,
  type ListedProcedure,
} from 'virtual:lapstrip-catalogue';
import { computed, signal } from '@preact/signals';
import type { Hash } from '../../core';
import type { SortieRecord } from '../../record/record';

/** A document as listed, with the function that loads it. */
export type Listed = ListedField | ListedAircraft | ListedProcedure;

/**
 * The newest version of each document the pilot added, listed beside those that come with the app.
 */
export const own = signal<readonly Listed[]>([]);

/** The fields of the world that were chosen here, as they stood then; the set has the others. */
export const visited = signal<readonly ListedField[]>([]);

/** Older versions of what the pilot added, and what was deleted. */
export const earlier = signal<readonly Listed[]>([]);

/** Those of them that came from elsewhere and were never chosen: offered, but not used unasked. */
export const received = signal<ReadonlySet<Hash>>(new Set());

/**
 * What is no longer offered to be chosen, each with what is offered in its place: older versions,
 * and fields and aircraft of the app that the pilot has made their own.
 */
export const newer = signal<ReadonlyMap<Hash, Hash>>(new Map());

/** What comes with the app, the world's fields chosen here, then the newest of what the pilot added. */
export const all = computed((): readonly Listed[] => [
  ...catalogue,
  ...visited.value,
  ...own.value,
]);

/** Everything there is to choose from. */
const offered = computed(() => all.value.filter(({ hash }) => !newer.value.has(hash)));

/** The fields to choose from. */
export const listedFields = computed(() =>
  offered.value.filter((listed) => listed.kind === 'field'),
);

/** The aircraft to choose from. */
export const listedAircraft = computed(() =>
  offered.value.filter((listed) => listed.kind === 'aircraft'),
);

/** A document of the app or of the pilot's, old and deleted ones too; undefined if there is none. */
export const listedBy = (hash: Hash): Listed | undefined =>
  all.value.find((listed) => listed.hash === hash) ??
  earlier.value.find((listed) => listed.hash === hash);

/** Loaded documents, by hash. They never change, so each is loaded once. */
const inHand = signal<ReadonlyMap<Hash, unknown>>(new Map());
const asked = new Set<Hash>();

/** What failed to load is retried after this, ms. */
const ASK_AGAIN_MS = 2000;

/** What was requested and not found, for instance before the store answered. */
const missing = new Set<Hash>();

/** What was missing may be there now: whoever asked for it asks again. */
export function askAgain(): void {
  if (missing.size === 0) return;
  for (const hash of missing) asked.delete(hash);
  missing.clear();
  inHand.value = new Map(inHand.peek());
}

/** Adds a loaded document. */
export function hold(hash: Hash, content: unknown): void {
  inHand.value = new Map(inHand.value).set(hash, content);
}

/**
 * A document by its hash, or null while it loads, which the first call starts. Documents in the
 * catalogue and the record have already passed their schema.
 */
export function documentOf<T>(record: SortieRecord, hash: Hash | null): T | null {
  if (hash === null) return null;
  const content = inHand.value.get(hash);
  if (content === undefined && !asked.has(hash)) {
    asked.add(hash);
    void load(record, hash);
  }
  return (content as T | undefined) ?? null;
}

async function load(record: SortieRecord, hash: Hash): Promise<void> {
  const listed = catalogue.find((candidate) => candidate.hash === hash);
  if (listed === undefined) {
    const kept = (await record.documents()).find((candidate) => candidate.hash === hash);
    if (kept === undefined) missing.add(hash);
    else hold(hash, kept.content);
    return;
  }
  let content: unknown;
  try {
    content = await listed.load();
  } catch {
    // Not available right now, for instance offline before everything is stored.
    setTimeout(() => void load(record, hash), ASK_AGAIN_MS);
    return;
  }
  hold(hash, content);
  await record.keepDocument({ hash, kind: listed.kind, content, own: false });
}
