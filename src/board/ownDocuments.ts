/** The documents that the pilot brought. */

import type { ListedField, ListedProcedure } from 'virtual:lapstrip-catalogue';
import type { KeptDocument } from '../record/store';
import { record } from './board';
import { all, hold, type Listed, own } from './documents';

/** Lists the documents that the pilot brought before. */
export async function listOwnDocuments(): Promise<void> {
  for (const kept of await record.documents()) if (kept.own) list(kept);
}

/** Takes a document that has passed its schema, keeps it, and lists it. */
export async function addOwnDocument(kept: KeptDocument): Promise<void> {
  hold(kept.hash, kept.content);
  list(kept);
  await record.keepDocument(kept);
}

function list({ hash, kind, content }: KeptDocument): void {
  if (all.value.some((listed) => listed.hash === hash)) return;
  // What it is listed with stands in it under the same names.
  const { code, name, about, aircraft } = content as ListedField & ListedProcedure;
  const load = async () => content;
  own.value = [...own.value, { kind, hash, code, name, about, aircraft, load } as Listed];
}
