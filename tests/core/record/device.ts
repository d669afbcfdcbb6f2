/** A device to keep a record on: its storage, the channel between its windows, and how both can fail. */

import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, vi } from 'vitest';
import type { Entry, SortieEvent } from '../../../src/core/sortie/entry';
import { SortieRecord } from '../../../src/record/record';

/** The channel that windows follow each other on. */
export const CHANNEL = 'lapstrip-record';

/** When it happened, by both clocks. */
export const AT: Entry['at'] = { wallMs: 1_795_000_000_000, sortieMs: 544_647_000_000 };

const channels: BroadcastChannel[] = [];

/** Closes the windows that were opened: they no longer hear of each other, or of the next ones. */
export function closeWindows(): void {
  for (const channel of channels.splice(0)) channel.close();
}

/** Gives every test an empty device, and closes its windows afterwards. */
export function useFreshDevice(): void {
  const Channel = globalThis.BroadcastChannel;
  beforeEach(() => {
    vi.stubGlobal('indexedDB', new IDBFactory());
    vi.stubGlobal(
      'BroadcastChannel',
      class extends Channel {
        constructor(name: string) {
          super(name);
          channels.push(this);
        }
      },
    );
  });
  afterEach(() => {
    closeWindows();
    vi.restoreAllMocks();
    vi.unstubAllGlobals();
  });
}

/** A window of the app: its record, opened, and how often it said that something changed. */
export async function openWindow() {
  const changed = vi.fn();
  const record = new SortieRecord(changed);
  await record.open();
  await record.settled();
  return { record, changed };
}

/** A wind, so that one entry can be told from another. */
export const wind = (text: string): SortieEvent => ({ kind: 'wind', text, north: 'true' });

/** The winds of a record, in its order. */
export const windsOf = ({ entries }: SortieRecord): string[] =>
  entries.flatMap((entry) => (entry.kind === 'wind' ? [entry.text] : []));

/** Puts something into the store behind the app's back, as a damaged or a later version may have. */
export function putRaw(...values: readonly object[]): Promise<void> {
  return new Promise((done, failed) => {
    const opening = indexedDB.open('lapstrip');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const write = opening.result.transaction('entries', 'readwrite');
      for (const value of values) write.objectStore('entries').put(value);
      write.oncomplete = () => {
        opening.result.close();
        done();
      };
      write.onabort = () => failed(write.error);
    };
  });
}

/** From now on the device is full. The returned function makes room. */
export function fillDevice(): () => void {
  const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('The device is full.', 'QuotaExceededError');
  });
  return () => full.mockRestore();
}
