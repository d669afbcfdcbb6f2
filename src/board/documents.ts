/** The documents in use: those that come with the app, and those kept with the record. */

import {
  catalogue,
  type ListedAircraft,
  type ListedField,
  type ListedProcedure,
} from 'virtual:lapstrip-catalogue';
import { computed, signal } from '@preact/signals';
import type { Hash } from '../core';
import type { Record } from '../record/record';

/** A document as it is listed, with what loads it. */
export type Listed = ListedField | ListedAircraft | ListedProcedure;

/** Documents that the pilot brought, as they are listed beside those that come with the app. */
export const own = signal<readonly Listed[]>([]);

/** Those of them that came from elsewhere and were never chosen: they are offered, and not used unasked. */
export const received = signal<ReadonlySet<Hash>>(new Set());

const first = computed((): readonly Listed[] => [...catalogue, ...own.value]);

/** The fields to choose from. */
export const fields = computed(() => first.value.filter((listed) => listed.kind === 'field'));

/** The aircraft to choose from. */
export const aircraft = computed(() => first.value.filter((listed) => listed.kind === 'aircraft'));

/** Documents in hand, by hash. They never change, so they are loaded once. */
const inHand = signal<ReadonlyMap<Hash, unknown>>(new Map());
const asked = new Set<Hash>();

/** Takes a document in hand. */
export function hold(hash: Hash, content: unknown): void {
  inHand.value = new Map(inHand.value).set(hash, content);
}

/**
 * A document by its name, or null while it is loading, which the first question begins. What the
 * catalogue and the record hold has passed its schema where it entered. `listed` is what comes with
 * the app of its kind.
 */
export function documentOf<T>(
  record: Record,
  hash: Hash | null,
  listed: readonly Listed[] = catalogue,
): T | null {
  if (hash === null) return null;
  const content = inHand.value.get(hash);
  if (content === undefined && !asked.has(hash)) {
    asked.add(hash);
    void load(record, hash, listed);
  }
  return (content as T | undefined) ?? null;
}

/** Whether documents are taken in hand whole from now on, and those of which only a part is. */
let whole = false;
const plainInHand = new Map<Hash, Record>();

/** Takes in hand whole what the first answer could do with a part of. */
export async function loadWholeDocuments(): Promise<void> {
  whole = true;
  for (const [hash, record] of plainInHand) await load(record, hash, catalogue);
}

async function load(record: Record, hash: Hash, among: readonly Listed[]): Promise<void> {
  const listed = among.find((candidate) => candidate.hash === hash);
  try {
    if (!whole && listed !== undefined && 'loadPlain' in listed) {
      plainInHand.set(hash, record);
      const plain = await listed.loadPlain();
      // The whole may have come first.
      if (!inHand.peek().has(hash)) hold(hash, plain);
      return;
    }
    const content =
      listed === undefined
        ? (await record.documents()).find((kept) => kept.hash === hash)?.content
        : await listed.load();
    if (content === undefined) return;
    hold(hash, content);
    if (listed !== undefined) {
      await record.keepDocument({ hash, kind: listed.kind, content, own: false });
    }
  } catch {
    // Not to be had just now, as without a network before all is stored: the next question asks again.
    asked.delete(hash);
  }
}
