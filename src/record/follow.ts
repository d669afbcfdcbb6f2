/** Lets windows of the same browser follow each other: what one adds, the others merge. */

import type { Entry } from '../core';
import { storeName } from './storeName';

const CHANNEL = `${storeName}-record`;

/** The other windows. */
export interface Followers {
  tell(entries: readonly Entry[]): void;
  close(): void;
}

/** Starts following; where the browser has no channels, each window stands alone until reopened. */
export function followOthers(merge: (entries: readonly Entry[]) => void): Followers {
  if (typeof BroadcastChannel === 'undefined') {
    return { tell: () => undefined, close: () => undefined };
  }
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = (message: MessageEvent<unknown>) => {
    if (Array.isArray(message.data)) merge(message.data as Entry[]);
  };
  return { tell: (entries) => channel.postMessage(entries), close: () => channel.close() };
}
