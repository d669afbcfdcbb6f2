/** Stores as releases left them on a device: made by the built app of each, see tools/store.mjs. */

import { readdirSync, readFileSync } from 'node:fs';
import * as v from 'valibot';
import type { KeptDocument } from '../../../src/record/store';

const FOLDER = new URL('../../fixtures/stores/', import.meta.url);

const stored = v.object({
  version: v.string(),
  databases: v.array(
    v.object({
      name: v.string(),
      version: v.number(),
      parts: v.array(
        v.object({
          name: v.string(),
          keyPath: v.string(),
          indexes: v.array(v.tuple([v.string(), v.string()])),
          values: v.array(v.record(v.string(), v.unknown())),
        }),
      ),
    }),
  ),
  local: v.record(v.string(), v.string()),
});

/** What a release left on a device. */
export type LeftStore = v.InferOutput<typeof stored>;

/** The stores of all releases so far, oldest first. */
export const LEFT_STORES: readonly LeftStore[] = readdirSync(FOLDER)
  .sort((a, b) => a.localeCompare(b, 'en', { numeric: true }))
  .map((name) => v.parse(stored, JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8'))));

/** What stands in a part of a store. */
export const valuesIn = ({ databases }: LeftStore, part: string) =>
  databases.flatMap(({ parts }) => parts).find(({ name }) => name === part)?.values ?? [];

/** Puts a store onto the device as the release left it. */
export async function putStore({ databases }: LeftStore): Promise<void> {
  for (const { name, version, parts } of databases) {
    await new Promise<void>((done, failed) => {
      const opening = indexedDB.open(name, version);
      opening.onerror = () => failed(opening.error);
      opening.onupgradeneeded = () => {
        for (const { name: part, keyPath, indexes, values } of parts) {
          const store = opening.result.createObjectStore(part, { keyPath });
          for (const [index, by] of indexes) store.createIndex(index, by);
          for (const value of values) store.put(value);
        }
      };
      opening.onsuccess = () => {
        opening.result.close();
        done();
      };
    });
  }
}

/** The first document of a kind that the first release kept. */
export function firstDocument(kind: string): KeptDocument {
  const [first] = LEFT_STORES;
  const found = first && valuesIn(first, 'documents').find((document) => document.kind === kind);
  if (found === undefined) throw new Error(`no ${kind} in the first store`);
  return found as unknown as KeptDocument;
}
