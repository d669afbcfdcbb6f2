/** Reading the documents that are kept, with what checks their shape. Loaded with what first asks for one. */

import { type Hash, loadKeptDocumentReader } from '../core';
import type { Record } from './record';
import type { KeptDocument } from './store';

/** Documents never change under their name: what was read once need not be looked at again. */
const readable = new Set<Hash>();

/** The documents that this version can read. The others are set aside, or stay where they are newer. */
export async function documentsIn(record: Record): Promise<readonly KeptDocument[]> {
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
