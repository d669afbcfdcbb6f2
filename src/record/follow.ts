/** Lets windows of the same browser follow each other: what one adds, the others merge. */

import { type Entry, readEntry } from '../core';
import { storeName } from './storeName';

const CHANNEL = `${storeName}-record`;

/** What a window hears of. */
export interface Heard {
  readonly entries: readonly Entry[];
  /** Whether the window that made them has written them; else whoever can is to write them. */
  readonly written: boolean;
}

/** The other windows. */
export interface Followers {
  tell(heard: Heard): void;
  close(): void;
}

/** Starts following; where the browser has no channels, each window stands alone until reopened. */
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
        // A list alone is what windows of the first version understand.
        channel.postMessage(written ? entries : { unwritten: entries });
      } catch {
        // The window is being closed, and the channel with it: the others read what is written.
      }
    },
    close: () => channel.close(),
  };
}
