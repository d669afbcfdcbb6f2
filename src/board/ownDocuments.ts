/** The documents that the pilot brought. */

import type { ListedProcedure } from 'virtual:lapstrip-catalogue';
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
  const { code, name, about, ...rest } = content as Omit<ListedProcedure, 'kind' | 'hash'>;
  const listed = { kind, hash, code, name, about, load: async () => content };
  own.value = [
    ...own.value,
    (kind === 'procedure' ? { ...listed, aircraft: rest.aircraft } : listed) as Listed,
  ];
}
