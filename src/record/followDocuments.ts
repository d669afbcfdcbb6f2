/** Lets windows of the same browser hear that one of them kept a document, which the others then read. */

import { storeName } from './storeName';

const CHANNEL = `${storeName}-documents`;

/** The other windows. */
export interface DocumentFollowers {
  /** Says that what was kept is to be read again; only once it is written. */
  tell(): void;
  close(): void;
}

/** Starts following; where the browser has no channels, each window stands alone until it looks itself. */
export function followDocuments(hear: () => void): DocumentFollowers {
  if (typeof BroadcastChannel === 'undefined') {
    return { tell: () => undefined, close: () => undefined };
  }
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = () => hear();
  return { tell: () => channel.postMessage(null), close: () => channel.close() };
}
