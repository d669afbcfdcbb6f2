/** Windows of one browser follow each other: entries added in one are merged by the others. */

import { type Entry, readEntry } from '../core';
import { storeName } from './storeName';

const CHANNEL = `${storeName}-record`;

/** What one window sends the others. */
export interface Heard {
  readonly entries: readonly Entry[];
  /** Whether the sending window has stored them; if not, whichever window can should store them. */
  readonly written: boolean;
}

/** The other windows. */
export interface Followers {
  tell(heard: Heard): void;
  close(): void;
}

/** Starts following. Without BroadcastChannel, each window stands alone until it is reopened. */
export function followOthers(hear: (heard: Heard) => void): Followers {
  if (typeof BroadcastChannel === 'undefined') {
    return { tell: () => undefined, close: () => undefined };
  }
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    const isUnwritten = typeof data === 'object' && data !== null && 'unwritten' in data;
    const values = isUnwritten ? data.unwritten : data;
    if (!Array.isArray(values)) return;
    const entries = values.flatMap((value) => readEntry(value).entry ?? []);
    if (entries.length > 0) hear({ entries, written: !isUnwritten });
  };
  return {
    tell: ({ entries, written }) => {
      try {
        // Windows of the first version understand only a bare list.
        channel.postMessage(written ? entries : { unwritten: entries });
      } catch {
        // The window and its channel are closing: the others will read what was stored.
      }
    },
    close: () => channel.close(),
  };
}
