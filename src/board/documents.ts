/** The documents in use: those that come with the app, and those kept with the record. */

import {
  catalogue,
  type ListedAircraft,
  type ListedField,
  type ListedProcedure,
} from 'virtual:lapstrip-catalogue';
import { signal } from '@preact/signals';
import type { Hash } from '../core';
import type { Record } from '../record/record';

type Listed = ListedField | ListedAircraft | ListedProcedure;

/** The fields to choose from. */
export const fields = catalogue.filter((listed) => listed.kind === 'field');
/** The aircraft to choose from. */
export const aircraft = catalogue.filter((listed) => listed.kind === 'aircraft');
/** The procedures to choose from. */
export const procedures = catalogue.filter((listed) => listed.kind === 'procedure');

/** The procedure an aircraft is flown with: the first that is for it. */
export const procedureFor = (aircraftCode: string): ListedProcedure | undefined =>
  procedures.find((procedure) => procedure.aircraft === aircraftCode);

/** Documents in hand, by hash. They never change, so they are loaded once. */
const inHand = signal<ReadonlyMap<Hash, unknown>>(new Map());
const asked = new Set<Hash>();

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
  const listed = catalogue.find((candidate: Listed) => candidate.hash === hash);
  try {
    const content =
      listed === undefined
        ? (await record.documents()).find((kept) => kept.hash === hash)?.content
        : await listed.load();
    if (content === undefined) return;
    inHand.value = new Map(inHand.value).set(hash, content);
    if (listed !== undefined) await record.keepDocument({ hash, kind: listed.kind, content });
  } catch {
    // Not to be had just now, as without a network before all is stored: the next question asks again.
    asked.delete(hash);
  }
}
