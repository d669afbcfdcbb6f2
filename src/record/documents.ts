/** Reading the stored documents and checking their shape. Loaded the first time one is needed. */

import { type Hash, loadKeptDocumentReader } from '../core';
import type { SortieRecord } from './record';
import type { KeptDocument } from './store';

/** A document never changes under its hash, so what was checked once needn't be checked again. */
const readable = new Set<Hash>();

/**
 * The documents this version can read. Unreadable ones are set aside; newer ones stay where they
 * are.
 */
export async function documentsIn(record: SortieRecord): Promise<readonly KeptDocument[]> {
  const { store } = record;
  if (store === null) return [];
  const [written, stateOf] = await Promise.all([store.read('documents'), loadKeptDocumentReader()]);
  const documents: KeptDocument[] = [];
  const damaged: unknown[] = [];
  for (const value of written) {
    const document = value as KeptDocument;
    const state = readable.has(document.hash) ? 'readable' : stateOf(value);
    if (state === 'readable') {
      readable.add(document.hash);
      documents.push(document);
    } else if (state === 'newer') record.noteNewer(document.hash);
    else damaged.push(value);
  }
  await record.setAside('documents', damaged).catch(() => undefined);
  return documents;
}
