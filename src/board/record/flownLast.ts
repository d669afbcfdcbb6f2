/** The fields in the order they are offered in. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import { fieldsFlown, type Hash } from '../../core';
import { sorties } from '../board';

/** How many of the fields flown last stand before the others. */
const OFFERED_FIRST = 5;

/** The fields flown last, newest first, as it was when asked: a list must not move under the finger. */
export const flownLast = (): readonly Hash[] => fieldsFlown(sorties.peek());

/** Five at most of the fields flown last, newest first, then the others as they are listed. */
export function offeredFields(
  listed: readonly ListedField[],
  flown: readonly Hash[],
): readonly ListedField[] {
  const first = flown
    .flatMap((hash) => listed.find((field) => field.hash === hash) ?? [])
    .slice(0, OFFERED_FIRST);
  return [...first, ...listed.filter((field) => !first.includes(field))];
}
