/** Whether a value parsed from outside is safe to walk through at all. */

import { isReservedName } from '../core';

/** Nothing of ours nests deeper; levels. */
const DEEPEST = 16;

/** No text of ours is longer, characters. */
const LONGEST_TEXT = 20_000;

/**
 * No number of ours is larger in magnitude: beyond it, neighbours can't be told apart. ECMA-262,
 * 21.1.2.6.
 */
const LARGEST_NUMBER = Number.MAX_SAFE_INTEGER;

/** Whether a parsed value is bounded in depth, texts and numbers, and has no reserved names. */
export function isSound(value: unknown, depth = 0): boolean {
  if (typeof value === 'string') return value.length <= LONGEST_TEXT;
  if (typeof value === 'number') return Math.abs(value) <= LARGEST_NUMBER;
  if (typeof value !== 'object' || value === null) return true;
  if (depth >= DEEPEST) return false;
  return Object.entries(value).every(
    ([name, part]) => !isReservedName(name) && isSound(part, depth + 1),
  );
}
