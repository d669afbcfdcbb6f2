/** What a pasted text holds of ours: links, what follows `#` in one, or the digits of a code. */

import { ADD } from './link';

/** More than a message with every code of the largest document, characters. */
export const LONGEST_PASTED = 1_000_000;

/** More links than the largest document has codes. */
const MOST_LINKS = 60;

const LINK = /#\/add\?(?:s=[0-9a-f]{8}\.\d{1,2}\.\d{1,2}&)?[dn]=[\w-]+/g;

/** Fewer digits are just a number. */
const FEWEST_DIGITS = 40;

/**
 * What follows `#` in each of our links in a text, in order; bare digits, as codes hold them, count
 * as a link. Empty if the text is longer than any we send.
 */
export function linksIn(text: string): readonly string[] {
  if (text.length > LONGEST_PASTED) return [];
  const digits = text.replace(/\s+/g, '');
  if (/^\d+$/.test(digits)) return digits.length < FEWEST_DIGITS ? [] : [`${ADD}n=${digits}`];
  return unfolded(text.trim()).match(LINK)?.slice(0, MOST_LINKS) ?? [];
}

/** A lone link that was broken into lines, as some mail programs do, joined up again. */
function unfolded(text: string): string {
  const isAlone = !/[^\S\r\n]/.test(text) && text.indexOf(ADD) === text.lastIndexOf(ADD);
  return isAlone ? text.replace(/\s+/g, '') : text;
}
