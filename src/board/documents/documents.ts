/** The documents in use: those that come with the app, and those kept with the record. */

import {
  catalogue,
  type ListedAircraft,
  type ListedField,
  type ListedProcedure,
} from 'virtual:lapstrip-catalogue';
import { computed, signal } from '@preact/signals';
import type { Hash } from '../../core';
import type { Record } from '../../record/record';

/** A document as it is listed, with what loads it. */
export type Listed = ListedField | ListedAircraft | ListedProcedure;

/** Documents that the pilot brought, as they are listed beside those that come with the app. */
export const own = signal<readonly Listed[]>([]);

/** Those of them that came from elsewhere and were never chosen: they are offered, and not used unasked. */
export const received = signal<ReadonlySet<Hash>>(new Set());

/** All there are to choose from: what comes with the app, then what the pilot brought. */
export const all = computed((): readonly Listed[] => [...catalogue, ...own.value]);

/** The fields to choose from. */
export const fields = computed(() => all.value.filter((listed) => listed.kind === 'field'));

/** The aircraft to choose from. */
export const aircraft = computed(() => all.value.filter((listed) => listed.kind === 'aircraft'));

/** Documents in hand, by hash. They never change, so they are loaded once. */
const inHand = signal<ReadonlyMap<Hash, unknown>>(new Map());
const asked = new Set<Hash>();

/** What could not be loaded is asked for again after so long, ms. */
const ASK_AGAIN_MS = 2000;

/** What was asked for and is not there, as before the store has answered. */
const missing = new Set<Hash>();

/** What was not there may be now: whoever asked for it asks again. */
export function askAgain(): void {
  if (missing.size === 0) return;
  for (const hash of missing) asked.delete(hash);
  missing.clear();
  inHand.value = new Map(inHand.peek());
}

/** Takes a document in hand. */
export function hold(hash: Hash, content: unknown): void {
  inHand.value = new Map(inHand.value).set(hash, content);
}

/**
 * A document by its name, or null while it is loading, which the first question begins. What the
 * catalogue and the record hold has passed its schema where it entered.
 */
export function documentOf<T>(record: Record, hash: Hash | null): T | null {
  if (hash === null) return null;
  const content = inHand.value.get(hash);
  if (content === undefined && !asked.has(hash)) {
    asked.add(hash);
    void load(record, hash);
  }
  return (content as T | undefined) ?? null;
}

async function load(record: Record, hash: Hash): Promise<void> {
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
    // Not to be had just now, as without a network before all is stored.
    setTimeout(() => void load(record, hash), ASK_AGAIN_MS);
    return;
  }
  hold(hash, content);
  await record.keepDocument({ hash, kind: listed.kind, content, own: false });
}
