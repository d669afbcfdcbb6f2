/**
 * Windows of one browser tell each other when one has stored a document, so that the others read
 * it.
 */

import { storeName } from './storeName';

const CHANNEL = `${storeName}-documents`;

/** The other windows. */
export interface DocumentFollowers {
  /** Announces that the stored documents changed; call it only once the change is on disk. */
  tell(): void;
  close(): void;
}

/**
 * Starts following. Without BroadcastChannel, each window stands alone until it looks for itself.
 */
export function followDocuments(hear: () => void): DocumentFollowers {
  if (typeof BroadcastChannel === 'undefined') {
    return { tell: () => undefined, close: () => undefined };
  }
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = () => hear();
  return { tell: () => channel.postMessage(null), close: () => channel.close() };
}
