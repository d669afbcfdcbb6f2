/** Bringing a document from a file: read by its schema, kept, and listed. */

import { type DocumentProblem, loadDocumentReader } from '../core';
import { documentHash } from '../exchange/hash';
import { addOwnDocument } from './ownDocuments';

/** What came of a file. */
export type Brought =
  | { readonly name: string; readonly problems: null }
  | { readonly name: null; readonly problems: readonly DocumentProblem[] };

/** A larger file is no document of ours, bytes. It is refused before it is read. */
const LARGEST_FILE = 1_000_000;

/** Reads a file and keeps what it holds. Never rejects; a file that cannot be used changes nothing. */
export async function bringDocument(file: File): Promise<Brought> {
  if (file.size > LARGEST_FILE) return { name: null, problems: [{ at: '', what: 'too-long' }] };
  try {
    const readDocument = await loadDocumentReader();
    const { document, problems } = readDocument(await file.text());
    if (document === null) return { name: null, problems };
    const { kind, content } = document;
    await addOwnDocument({ hash: await documentHash(content), kind, content, own: true });
    return { name: content.name, problems: null };
  } catch {
    return { name: null, problems: [{ at: '', what: 'not-read' }] };
  }
}
