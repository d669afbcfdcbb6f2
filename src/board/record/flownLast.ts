/** The fields in the order they are offered. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import { fieldsFlown, type Hash } from '../../core';
import { sorties } from '../board';
import { newer } from '../documents/documents';

/** How many of the fields flown last come before the others. */
const OFFERED_FIRST = 5;

/** The fields flown last, newest first, as of the call: a list must not move under the finger. */
export const flownLast = (): readonly Hash[] => fieldsFlown(sorties.peek());

/**
 * At most five of the fields flown last, newest first and in their newest version, then the others
 * as listed.
 */
export function offeredFields(
  listed: readonly ListedField[],
  flown: readonly Hash[],
): readonly ListedField[] {
  const first = flown
    .map((hash) => newer.value.get(hash) ?? hash)
    .filter((hash, place, all) => all.indexOf(hash) === place)
    .flatMap((hash) => listed.find((field) => field.hash === hash) ?? [])
    .slice(0, OFFERED_FIRST);
  return [...first, ...listed.filter((field) => !first.includes(field))];
}
