/**
 * Runway designators: the number painted at an end, and the letter that tells parallels apart.
 * ICAO Annex 14 Vol. I, 5.2.2.4 and 5.2.2.5; FAA AC 150/5340-1; FAA AIM 4-3-6.
 */

import { degreesOf, type MagneticDeg, type TrueDeg } from '../angle';
import type { Designator } from './field';

/** How many numbers there are on the circle: north is 36, never 00. */
const NUMBERS = 36;

/** A number on the circle of 01 to 36. */
const numberOnCircle = (tenths: number): number => ((tenths + NUMBERS - 1) % NUMBERS) + 1;

/**
 * The numbers a runway with this azimuth may carry, 1 to 36: the nearest tenth of the azimuth, or
 * both neighbours if it ends in exactly 5. The azimuth is magnetic; true if the field numbers its
 * runways so, as in Canada's northern airspace.
 */
export function runwayNumbers(azimuth: MagneticDeg | TrueDeg): readonly number[] {
  const tenths = degreesOf(azimuth) / 10;
  const below = Math.floor(tenths);
  const rest = tenths - below;
  if (rest === 0.5) return [numberOnCircle(below), numberOnCircle(below + 1)];
  return [numberOnCircle(rest < 0.5 ? below : below + 1)];
}

/** The number in a designator, 1 to 36. */
export const numberOf = (designator: Designator): number => Number.parseInt(designator, 10);

/** What tells parallels apart: `L`, `C`, `R`, or nothing. */
export const letterOf = (designator: Designator): string => designator.slice(2);

/**
 * A designator as written or said, in the form documents use: `9l` and `RWY 9L` become `09L`. Null
 * if the text is none.
 */
export function readDesignator(text: string): Designator | null {
  const parts = /^(?:RWY|R)?\s*(\d{1,2})\s*([LCR]?)$/.exec(text.trim().toUpperCase());
  const number = Number(parts?.[1]);
  if (!(number >= 1 && number <= NUMBERS)) return null;
  return String(number).padStart(2, '0') + (parts?.[2] ?? '');
}

const OPPOSITE_LETTER: Readonly<Record<string, string>> = { L: 'R', R: 'L' };

/** The designator of the other end: 18 further round, left and right swapped. */
export function oppositeOf(designator: Designator): Designator {
  const letter = letterOf(designator);
  const number = numberOnCircle(numberOf(designator) + NUMBERS / 2);
  return String(number).padStart(2, '0') + (OPPOSITE_LETTER[letter] ?? letter);
}
