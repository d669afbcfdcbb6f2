/** The set of the world's fields on this device: fetched when the pilot says so, and stored. */

import { worldFile } from 'virtual:lapstrip-world';
import { signal } from '@preact/signals';
import { loadWorldReader, type World, type WorldSearch } from '../../core';
import { unpackedBytes } from '../../exchange/packed';
import { dropWorldFile, keepWorldFile, readWorldFile } from '../../record/worldFile';

/** The set, ready to be searched. */
export interface WorldSet {
  readonly world: World;
  readonly find: WorldSearch;
  /** What reads and searches it. */
  readonly reader: Awaited<ReturnType<typeof loadWorldReader>>;
  /** It is on disk, and will be there without a network. */
  readonly isKept: boolean;
  /** The app knows of a newer one. */
  readonly isOld: boolean;
}

/** How the set stands. */
export type WorldState =
  /** Whether it is stored is not known yet. */
  | { readonly kind: 'looking' }
  | { readonly kind: 'absent' }
  /** The share that has come, 0 to 1. */
  | { readonly kind: 'fetching'; readonly share: number }
  /** `unavailable`: the host doesn't answer. `damaged`: what came is not what the app asked for. */
  | { readonly kind: 'failed'; readonly why: 'unavailable' | 'damaged' }
  | { readonly kind: 'ready'; readonly set: WorldSet };

export const worldState = signal<WorldState>({ kind: 'looking' });

/** No set unpacks to more, bytes. */
const LARGEST = 8_000_000;

async function unpacked(
  packed: Uint8Array<ArrayBuffer>,
): Promise<Omit<WorldSet, 'isKept' | 'isOld'> | null> {
  const bytes = await unpackedBytes(packed, 'gzip', LARGEST);
  if (bytes === null) return null;
  const reader = await loadWorldReader();
  const decoder = new TextDecoder();
  const world = reader.readWorld(bytes, (text) => decoder.decode(text));
  return world && { world, find: await inTurns(reader.worldSearch(world)), reader };
}

/** Does work step by step, with what else the page has to do between, such as a key. */
async function inTurns<T>(steps: Generator<void, T>): Promise<T> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    await new Promise((resolve) => setTimeout(resolve));
  }
}

let looked: Promise<void> | null = null;

/** Reads the set if it is stored. Resolves when that is known; never rejects. */
export function lookForWorld(): Promise<void> {
  looked ??= look().catch(() => {
    worldState.value = { kind: 'absent' };
    looked = null;
  });
  return looked;
}

async function look(): Promise<void> {
  const stored = await readWorldFile();
  const read = stored && (await unpacked(stored.packed));
  // What can't be read is fetched again.
  if (stored !== null && read === null) await dropWorldFile();
  if (worldState.peek().kind !== 'looking') return;
  worldState.value =
    read === null || stored === null
      ? { kind: 'absent' }
      : { kind: 'ready', set: { ...read, isKept: true, isOld: stored.path !== worldFile.path } };
}

/** Fetches the set, stores it, and makes it ready. Never rejects. */
export async function fetchWorld(): Promise<void> {
  const before = worldState.peek();
  if (before.kind === 'fetching') return;
  const failed = (why: 'unavailable' | 'damaged') => {
    // An older set is better than none.
    worldState.value = before.kind === 'ready' ? before : { kind: 'failed', why };
  };
  worldState.value = { kind: 'fetching', share: 0 };
  const packed = await arrived((share) => {
    worldState.value = { kind: 'fetching', share };
  }).catch(() => null);
  if (packed === null) return failed('unavailable');
  const read = await unpacked(packed).catch(() => null);
  if (read === null) return failed('damaged');
  const isKept = await keepWorldFile({ path: worldFile.path, packed });
  worldState.value = { kind: 'ready', set: { ...read, isKept, isOld: false } };
}

/** The bytes of the file as they come; more than there should be are cut off, and then damaged. */
async function arrived(tell: (share: number) => void): Promise<Uint8Array<ArrayBuffer>> {
  const response = await fetch(new URL(worldFile.path, document.baseURI));
  if (!response.ok || response.body === null) throw new Error(`answered ${response.status}`);
  const bytes = new Uint8Array(worldFile.bytes);
  const reader = response.body.getReader();
  let length = 0;
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    bytes.set(read.value.subarray(0, bytes.length - length), length);
    length = Math.min(length + read.value.length, bytes.length);
    tell(length / bytes.length);
  }
  return bytes.slice(0, length);
}
