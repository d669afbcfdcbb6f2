/** A file the pilot opens, drops or shares: a document, a log, or an extract of a map. */

import { type FileKind, HEAD_BYTES, kindOfFile, kindOfText } from '../../exchange/fileKind';
import { type OpenSheet, openSheet, sheet } from '../places';

/** What a file or a text is. Never rejects: one that can't be read counts as a text. */
export async function kindOf(from: File | string): Promise<FileKind> {
  if (typeof from === 'string') return kindOfText(from);
  const head = await from
    .slice(0, HEAD_BYTES)
    .arrayBuffer()
    .catch(() => null);
  return head === null ? 'text' : kindOfFile(new Uint8Array(head));
}

/** Shows what a file holds, over the sheet that is open. Stores nothing; never rejects. */
export async function openFile(from: File, over: OpenSheet | null = sheet.value): Promise<void> {
  const kind = await kindOf(from);
  // Any other text is told of by the sheet for documents.
  openSheet({ kind: kind === 'text' ? 'incoming' : 'map', from, over });
}

/** Shows an extract of a map that was pasted; false if the text is none. */
export function openMapText(text: string): boolean {
  if (kindOfText(text) !== 'map') return false;
  openSheet({ kind: 'map', from: text, over: sheet.value });
  return true;
}
