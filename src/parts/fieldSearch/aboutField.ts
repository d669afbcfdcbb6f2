/** What a list says of a field, in a line. */

import type { Whereabouts } from '../../core';
import { wholeNumber } from '../format';
import { length } from '../units';
import { words } from './words';

/** How far it is, if that is asked; how long its longest runway is, how high it lies, and whose it is. */
export const aboutField = (
  { longestM, place }: Whereabouts,
  mark: keyof typeof words.marks,
  awayNm: number | null = null,
): string =>
  [
    ...(awayNm === null ? [] : [words.away(wholeNumber(awayNm))]),
    words.details(length(longestM), words.feet(wholeNumber(place.elevationFt))),
    words.marks[mark],
  ].join(' · ');
