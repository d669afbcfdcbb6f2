/** A caution's figure and its limit, as the words of every language write them. */

import type { CautionCode } from '../../core';
import { againstLimit, wholeNumber } from '../format';
import { length, mass, neededLength } from '../units';

/** A caution's figure and its limit, as told: a number, a word of the document, or nothing. */
export interface Told {
  readonly code: CautionCode;
  readonly value: number | string | null;
  readonly limit: number | string | null;
}

/** As a number; 0 where there is none. */
export const number = (told: Told['value']) => Number(told ?? 0);
/** A length needed of one that there is, rounded up. */
export const needed = ({ value, limit }: Told) => neededLength(number(value), number(limit));
/** The length that there is, rounded down. */
export const available = ({ limit }: Told) => length(number(limit), 'down');
/** A mass beyond a limit, rounded up. */
export const kg = (told: Told['value']) => mass(number(told), 'up');
/** A visibility: metres in every unit, as reports give it. */
export const seen = (told: Told['value']) => `${wholeNumber(number(told))} m`;
/** Whole feet of height. */
export const feet = (told: Told['value']) => `${wholeNumber(number(told))} ft`;
/** Whole knots. */
export const kt = (told: Told['value']) => wholeNumber(number(told));
/** A figure never rounded to the other side of its limit. */
export const beyond = ({ value, limit }: Told) => againstLimit(number(value), number(limit));
