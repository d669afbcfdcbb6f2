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

/** What the present version leaves, or the release before it. */
export function newestStore(): LeftStore {
  const newest = LEFT_STORES.at(-1);
  if (newest === undefined) throw new Error('there is no store');
  return newest;
}

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

/** A version of a document that no release has reached. */
export const LATER_VERSION = 99;

/** The names of what a later release added to {@link laterThan}. */
export const LATER = { entries: ['later-1', 'later-2', 'later-3'], document: 'later-field' };

/**
 * What a later release may leave on a device that is then gone back from: a part, an index and
 * properties that were added, entries and a document of versions that are not known here, drafts and
 * settings of other shapes. The entries are of a sortie of their own, begun last.
 */
export function laterThan(left: LeftStore): LeftStore {
  const entries = valuesIn(left, 'entries');
  const seq = Math.max(...entries.map((entry) => Number(entry.seq)));
  const later = (more: object, index: number) => ({
    id: LATER.entries[index] ?? '',
    v: 3,
    by: 'a-later-device',
    seq: seq + 1 + index,
    sortie: 'later-sortie',
    at: { wallMs: 544_649_000_000 + index, sortieMs: 544_649_000_000 + index, zone: '+01:00' },
    ...more,
  });
  const added = [
    later({ kind: 'set', inputs: { field: { world: 'XLTR' }, surface: ['wet', 'patches'] } }, 0),
    later({ kind: 'wind', text: { upper: [27012, 28030] }, north: 'grid' }, 1),
    later({ kind: 'inked', attachment: 'ink-1' }, 2),
  ];
  const [field] = valuesIn(left, 'documents').filter(({ kind }) => kind === 'field');
  const document = {
    ...field,
    hash: LATER.document,
    content: {
      ...Object(field?.content),
      version: LATER_VERSION,
      runways: { '10/28': { lengthM: 1400 } },
    },
  };
  const ink = { hash: 'ink-1', sortie: 'later-sortie', bytes: [1, 2, 3] };
  const values: Readonly<Record<string, (values: Values) => Values>> = {
    entries: (made) => [...made.map((entry) => ({ ...entry, seat: 'left' })), ...added],
    documents: (kept) => [...kept.map((one) => ({ ...one, keptAt: 1 })), document],
    edits: (drafts) => [
      ...drafts,
      { code: ' field/later', strokes: [] },
      { code: ' wind', text: 7 },
    ],
  };
  const databases = left.databases.map(({ name, version, parts }) => ({
    name,
    version: version + 1,
    parts: [
      ...parts.map((part) => ({
        ...part,
        indexes: [...part.indexes, ...(part.name === 'entries' ? [BY] : [])],
        values: values[part.name]?.(part.values) ?? part.values,
      })),
      ...(name === 'lapstrip'
        ? [{ name: 'attachments', keyPath: 'hash', indexes: [], values: [ink] }]
        : []),
    ],
  }));
  return {
    version: 'later',
    databases,
    local: { ...left.local, 'lapstrip.theme': 'dawn', 'lapstrip.later': '{"on":true}' },
  };
}

type Values = LeftStore['databases'][number]['parts'][number]['values'];
const BY: [string, string] = ['by', 'by'];

/** All that stands in the databases of a device, part by part. */
export async function standing({ databases }: LeftStore): Promise<ReadonlyMap<string, Values>> {
  const answer = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const parts = new Map<string, Values>();
  for (const { name } of databases) {
    const db = await answer(indexedDB.open(name));
    for (const part of db.objectStoreNames)
      parts.set(part, await answer(db.transaction(part).objectStore(part).getAll()));
    db.close();
  }
  return parts;
}

/** The first document of a kind that the first release kept. */
export function firstDocument(kind: string): KeptDocument {
  const [first] = LEFT_STORES;
  const found = first && valuesIn(first, 'documents').find((document) => document.kind === kind);
  if (found === undefined) throw new Error(`no ${kind} in the first store`);
  return found as unknown as KeptDocument;
}
