/** What there is to choose a field from: one's own, those flown lately, the world's, the demo's. */

import { catalogue, type ListedField } from 'virtual:lapstrip-catalogue';
import { found, type Hash } from '../../core';
import { pageLanguage } from '../../device/pageLanguage';
import { offeredFields } from '../record/flownLast';
import { listedFields, received, visited } from './documents';

/** Whose a field is. */
export type FieldMark = 'own' | 'received' | 'world' | 'demo';

export const markOf = ({ hash }: Pick<ListedField, 'hash'>): FieldMark => {
  if (received.value.has(hash)) return 'received';
  if (visited.value.some((field) => field.hash === hash)) return 'world';
  return catalogue.some((listed) => listed.hash === hash) ? 'demo' : 'own';
};

const MARKS: readonly FieldMark[] = ['own', 'received', 'world', 'demo'];

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

/** Fields in two: the demo's that weren't flown lately come last, after the world's. */
export function demoLast(
  fields: readonly ListedField[],
  flown: readonly Hash[],
): { readonly mine: readonly ListedField[]; readonly demo: readonly ListedField[] } {
  const isDemo = (field: ListedField) => markOf(field) === 'demo' && !flown.includes(field.hash);
  return { mine: fields.filter((field) => !isDemo(field)), demo: fields.filter(isDemo) };
}

/** What a field is found by, apart from its code: its name and what is said of it. */
const textsOf = ({ name, about, translations }: ListedField): readonly string[] => [
  name,
  translations?.[pageLanguage()]?.[about] ?? about,
];
