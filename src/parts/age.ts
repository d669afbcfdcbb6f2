/** How old something is, in words. */

import { words as oldWords } from './ageWords';

const MINUTE_MS = 60_000;

/** Clocks differ by up to this, minutes: a moment further ahead means that a clock was set back. */
const CLOCKS_DIFFER_MIN = 5;

/**
 * `just now`, `6 min old`, `2 h old`, `3 days old`, or the same with other words. Unknown for a
 * moment in the future, as after a clock was set back.
 */
export function ageText(ms: number, words: typeof oldWords = oldWords): string {
  const minutes = Math.floor(ms / MINUTE_MS);
  if (minutes < -CLOCKS_DIFFER_MIN) return words.unknown;
  if (minutes < 1) return words.now;
  if (minutes < 120) return words.minutes(minutes);
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? words.hours(hours) : words.days(Math.floor(hours / 24));
}
