/** Keeping what a map gave: as a field of its own, or as the taxi plan of one that is here. */

import {
  type Field,
  type Hash,
  loadDocumentCheck,
  mayBeOne,
  type PlanMisfit,
  withPlan,
} from '../../core';
import { listedFields } from './documents';
import { type KeptField, keepFieldAs, NOT_KEPT, NOT_READ } from './keptField';
import { worldFieldsLike } from './worldFields';

/** A field that may be the one on the map, and what becomes of it with the map's plan. */
export interface PlanTarget {
  readonly hash: Hash;
  readonly code: string;
  readonly name: string;
  /** The field with the plan; null if it can't have it. */
  readonly field: Field | null;
  readonly misfit: PlanMisfit | null;
}

/**
 * The fields here that may be the one on the map, the pilot's own first and the world's last. Never
 * rejects.
 */
export async function planTargets(planned: Field): Promise<readonly PlanTarget[]> {
  const own = listedFields.value.filter((listed) => mayBeOne(listed, planned)).reverse();
  const world = (await worldFieldsLike(planned)).filter(
    ({ code }) => !own.some((listed) => listed.code === code),
  );
  const alike = [...own, ...world];
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

/** Keeps a field as one of the pilot's own; all of it or nothing. Never rejects. */
export async function keepMapField(field: Field): Promise<KeptField> {
  try {
    const checkDocument = await loadDocumentCheck();
    const { document, problems } = checkDocument(field);
    if (document?.kind !== 'field') return { listed: null, problems: problems ?? NOT_READ };
    return await keepFieldAs(document.content, { from: 'map' });
  } catch {
    return NOT_KEPT;
  }
}
