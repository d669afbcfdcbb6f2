/** Keeping a field that passed its schema as one of the pilot's own. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import type { DocumentProblem, Field } from '../../core';
import type { KeptDocument } from '../../record/store';
import { listedFields } from './documents';
import { keepOwn } from './ownDocuments';

/** What came of keeping a field. */
export type KeptField =
  | { readonly listed: ListedField; readonly problems: null }
  | { readonly listed: null; readonly problems: readonly DocumentProblem[] };

export const NOT_READ: readonly DocumentProblem[] = [{ at: '', what: 'not-read' }];

/** The field was not kept, for a reason it has no part in. */
export const NOT_KEPT: KeptField = { listed: null, problems: NOT_READ };

/** Keeps it, and lists it. Rejects if it can't be stored. */
export async function keepFieldAs(
  content: Field,
  more: Pick<KeptDocument, 'from' | 'line'>,
): Promise<KeptField> {
  const hash = await keepOwn({ kind: 'field', content, ...more });
  const listed = listedFields.value.find((one) => one.hash === hash);
  return listed === undefined ? NOT_KEPT : { listed, problems: null };
}
