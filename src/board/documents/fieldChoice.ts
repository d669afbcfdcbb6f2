/** What there is to choose a field from: one's own, those flown lately, the demo's. */

import { catalogue, type ListedField } from 'virtual:lapstrip-catalogue';
import { found, type Hash, lineBetween } from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { offeredFields } from '../record/flownLast';
import { listedFields, received } from './documents';

/** Whose a field is. */
export type FieldMark = 'own' | 'received' | 'demo';

export const markOf = ({ hash }: ListedField): FieldMark => {
  if (received.value.has(hash)) return 'received';
  return catalogue.some((listed) => listed.hash === hash) ? 'demo' : 'own';
};

const MARKS: readonly FieldMark[] = ['own', 'received', 'demo'];

/**
 * The fields that match what was typed, one's own first; all of them while nothing is typed, with
 * those flown lately before the others.
 */
export function fieldsFor(typed: string, flown: readonly Hash[]): readonly ListedField[] {
  const ordered = MARKS.flatMap((mark) =>
    listedFields.value.filter((field) => markOf(field) === mark),
  );
  if (typed.trim() === '') return offeredFields(ordered, flown);
  const hits = found(typed, ordered, (field) => ({ code: field.code, texts: textsOf(field) }));
  return MARKS.flatMap((mark) => hits.filter((field) => markOf(field) === mark));
}

/** What a field is found by, apart from its code: its name and what is said of it. */
const textsOf = ({ name, about, translations }: ListedField): readonly string[] => [
  name,
  translations?.[pageLanguage()]?.[about] ?? about,
];

/** Metres in a nautical mile. ICAO Annex 5, table 3-3. */
const M_PER_NM = 1852;

/** A field, and how far away it is. */
export interface Nearby {
  readonly field: ListedField;
  readonly awayNm: number;
}

/** The fields nearest to another, which is left out, nearest first. */
export function nearbyFields(to: ListedField, most: number): readonly Nearby[] {
  return listedFields.value
    .filter(({ hash, code }) => hash !== to.hash && code !== to.code)
    .map((field) => ({
      field,
      awayNm:
        (lineBetween(to.place, field.place)?.distanceM ?? Number.POSITIVE_INFINITY) / M_PER_NM,
    }))
    .sort((a, b) => a.awayNm - b.awayNm)
    .slice(0, most);
}
