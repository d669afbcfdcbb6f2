/** Opens the editor of whatever kind of document. */

import { type OpenSheet, openSheet, sheet } from '../places';
import type { Listed } from './documents';

type Opened = Pick<Listed, 'kind' | 'hash'>;

/** Opens it over what is open. */
export const editListed = (of: Opened): void => openSheet(editorOf(of));

function editorOf({ kind, hash }: Opened): OpenSheet {
  const over = sheet.value;
  switch (kind) {
    case 'field':
      return { kind: 'drawing', of: hash, over };
    case 'aircraft':
      return { kind: 'making', of: hash, over };
    case 'procedure':
      return { kind: 'editor', hash, over };
  }
}
