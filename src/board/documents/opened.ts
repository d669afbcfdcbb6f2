/** A file the pilot opens, drops or shares: a document or a log. */

import { type OpenSheet, openSheet, sheet } from '../places';

/** Shows what a file holds, over the sheet that is open. Stores nothing. */
export function openFile(from: File, over: OpenSheet | null = sheet.value): void {
  openSheet({ kind: 'incoming', from, over });
}
