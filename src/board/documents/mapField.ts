/** Keeping what a map gave: as a field of its own, or as the taxi plan of one that is here. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import {
  type DocumentProblem,
  type Field,
  type Hash,
  loadDocumentCheck,
  mayBeOne,
  type PlanMisfit,
  withPlan,
} from '../../core';
import { documentHash } from '../../exchange/hash';
import { listedFields } from './documents';
import { addOwnDocument, tellOfDocuments } from './ownDocuments';

/** A field that may be the one on the map, and what becomes of it with the map's plan. */
export interface PlanTarget {
  readonly hash: Hash;
  readonly code: string;
  readonly name: string;
  /** The field with the plan; null if it can't have it. */
  readonly field: Field | null;
  readonly misfit: PlanMisfit | null;
}

/** The fields here that may be the one on the map, the pilot's own first. Never rejects. */
export async function planTargets(planned: Field): Promise<readonly PlanTarget[]> {
  const alike = listedFields.value.filter((listed) => mayBeOne(listed, planned)).reverse();
  const laid = await Promise.all(
    alike.map(async ({ hash, code, name, load }): Promise<readonly PlanTarget[]> => {
      const field = await load().catch(() => null);
      if (field === null) return [];
      const laid = withPlan(field, planned);
      const whole = laid.field && { ...laid.field, about: withNotice(laid.field.about) };
      return [{ hash, code, name, field: whole, misfit: laid.misfit }];
    }),
  );
  return laid.flat();
}

/** Whose the plan is, by the licence of the map (ODbL 1.0, 4.3): it goes wherever the field goes. */
const NOTICE = 'Taxi plan: © OpenStreetMap contributors, ODbL 1.0.';

/** As long as a document's text may be, characters. */
const LONGEST_ABOUT = 600;

function withNotice(about: string): string {
  if (about.includes('OpenStreetMap')) return about;
  return `${about.slice(0, LONGEST_ABOUT - NOTICE.length - 1)} ${NOTICE}`.trim();
}

/** What came of keeping a field. */
export type KeptMapField =
  | { readonly listed: ListedField; readonly problems: null }
  | { readonly listed: null; readonly problems: readonly DocumentProblem[] };

const NOT_READ: readonly DocumentProblem[] = [{ at: '', what: 'not-read' }];
const NOT_KEPT: KeptMapField = { listed: null, problems: NOT_READ };

/** Keeps a field as one of the pilot's own; all of it or nothing. Never rejects. */
export async function keepMapField(field: Field): Promise<KeptMapField> {
  try {
    const checkDocument = await loadDocumentCheck();
    const { document, problems } = checkDocument(field);
    if (document?.kind !== 'field') return { listed: null, problems: problems ?? NOT_READ };
    const { content } = document;
    const hash = documentHash(content);
    await addOwnDocument({ hash, kind: 'field', content, own: true, from: 'map' });
    tellOfDocuments();
    const listed = listedFields.value.find((one) => one.hash === hash);
    return listed === undefined ? NOT_KEPT : { listed, problems: null };
  } catch {
    return NOT_KEPT;
  }
}
