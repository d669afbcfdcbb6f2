/** How old something is, in words. */

import { words as oldWords } from './age.en';

const MINUTE_MS = 60_000;

/** `just now`, `6 min old`, `2 h old`, `3 days old`, or with other words. A clock that was set back counts as just now. */
export function old(ms: number, words: typeof oldWords = oldWords): string {
  const minutes = Math.floor(ms / MINUTE_MS);
  if (minutes < 1) return words.now;
  if (minutes < 120) return words.minutes(minutes);
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? words.hours(hours) : words.days(Math.floor(hours / 24));
}
