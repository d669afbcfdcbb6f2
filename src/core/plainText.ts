/**
 * Which texts of a document are refused when it is received or saved: those drawn differently from
 * how they are written, or not drawn at all, so that a pilot would read what isn't there. What is
 * already stored is not judged by these rules.
 *
 * Unicode UAX #31, section 2.3 (layout and format control characters); UTR #36, section 2.5
 * (bidirectional text); UTS #39, section 5.4 (sequences of nonspacing marks).
 */

import type { Fault, FaultKey } from './fault';

/** What is wrong with a text. */
export type TextFault =
  /** A line break or another control character, or half a surrogate pair. */
  | 'text-control'
  /** A character that reverses the order of others. */
  | 'text-direction'
  /** An invisible character, or nothing visible at all. */
  | 'text-invisible'
  /** Marks stacked on one letter, or on none. */
  | 'text-marks';

/**
 * Control characters, line and paragraph separators, lone surrogates, and private-use characters.
 */
const CONTROL = /[\p{Cc}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u;

/** Embeddings, overrides, isolates and marks of direction. UAX #9, table 4. */
const DIRECTION = /\p{Bidi_Control}/u;

/**
 * What isn't drawn: default-ignorable characters, interlinear annotations, an empty Braille cell.
 */
const INVISIBLE = /[\p{Default_Ignorable_Code_Point}\ufff9-\ufffb\u2800]/u;

/**
 * Scripts that can't be written without joiners; between their letters a joiner is no disguise. UAX
 * #31, section 2.3.1.
 */
const JOINED = 'Arab Syrc Mong Nkoo Deva Beng Guru Gujr Orya Taml Telu Knda Mlym Sinh Khmr Mymr'
  .split(' ')
  .map((script) => `\\p{Script=${script}}`)
  .join('');
const JOINER = new RegExp(`([${JOINED}])[\\u200c\\u200d](?=[${JOINED}])`, 'gu');

/** Selects how the preceding character is drawn. */
const VARIANT = /(\p{Extended_Pictographic})[\ufe0e\ufe0f]/gu;

/**
 * Marks on nothing, the same mark twice, or more than four in a row; the four are from memory. UTS
 * #39, section 5.4.
 */
const STACKED = /(^|\s)\p{M}|([\p{Mn}\p{Me}])\2|[\p{Mn}\p{Me}]{5}/u;

/** Latin letters and common signs alone, which can't be wrong: a shortcut for most texts. */
const PLAIN = /^[ -~\u00a1-\u00ac\u00ae-\u02ff\u2010-\u2027\u2030-\u205e]*$/;

/** Whether any of a text is visible. */
const SEEN = /[^\s\p{M}]/u;

/**
 * What is wrong with a text; null if nothing, as with an empty one. Surrounding whitespace doesn't
 * count.
 */
export function textFault(text: string): TextFault | null {
  const bare = text.trim();
  if (PLAIN.test(bare)) return null;
  if (CONTROL.test(bare)) return 'text-control';
  if (DIRECTION.test(bare)) return 'text-direction';
  const drawn = bare.replace(JOINER, '$1').replace(VARIANT, '$1');
  if (INVISIBLE.test(drawn) || !SEEN.test(drawn)) return 'text-invisible';
  return STACKED.test(drawn.normalize('NFD')) ? 'text-marks' : null;
}

/** What is wrong with a document's texts and property names, wherever they stand. */
export function textFaults(document: object): readonly Fault<TextFault>[] {
  return Object.entries(document).flatMap(([name, value]) => faultsAt([name], value));
}

function faultsAt(
  path: readonly [FaultKey, ...FaultKey[]],
  value: unknown,
): readonly Fault<TextFault>[] {
  if (typeof value === 'string') {
    const code = textFault(value);
    return code === null ? [] : [{ path, code }];
  }
  if (Array.isArray(value)) return value.flatMap((part, index) => faultsAt([...path, index], part));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => {
    // Report its parent's place: the name itself can't be read.
    const code = textFault(name);
    return code === null ? faultsAt([...path, name], part) : [{ path, code }];
  });
}

const [JOINERS, VARIANTS] = ['[\\u200c\\u200d]', '[\\ufe0e\\ufe0f]'];

/**
 * Everything {@link textFault} refuses, character by character; the first two branches match what
 * it allows.
 */
const MISLEADING = new RegExp(
  [
    `(?<=[${JOINED}])${JOINERS}(?=[${JOINED}])`,
    `(?<=\\p{Extended_Pictographic})${VARIANTS}`,
    `(${[CONTROL, DIRECTION, INVISIBLE].map(({ source }) => source).join('|')})`,
  ].join('|'),
  'gu',
);

const LINE_BREAKS = /\r\n?|[\n\u2028\u2029]/;

/**
 * A text from elsewhere, made fit to store and show: each character {@link textFault} refuses
 * becomes a replacement character, and stacked marks are thinned out. A text without faults is
 * returned unchanged. Notes keep their line breaks; so do reports, in which invisible characters
 * become spaces, which is how they are read.
 */
export function plainly(text: string, as: 'words' | 'note' | 'report' = 'words'): string {
  if (PLAIN.test(text)) return text;
  const sign = as === 'report' ? ' ' : '\ufffd';
  const lines = text.split(LINE_BREAKS).map((line) => plainLine(line, sign));
  return lines.join(as === 'words' ? ' ' : '\n');
}

function plainLine(text: string, sign: string): string {
  const line = text.replace(/[\t\v\f]/g, ' ');
  if (textFault(line) === null) return line;
  const seen = line.replace(MISLEADING, (found, refused?: string) =>
    refused === undefined ? found : sign,
  );
  if (textFault(seen) === null) return seen;
  return seen
    .normalize('NFD')
    .replace(/(^|\s)\p{M}+/gu, '$1\ufffd')
    .replace(/([\p{Mn}\p{Me}])\1+/gu, '$1')
    .replace(/([\p{Mn}\p{Me}]{4})[\p{Mn}\p{Me}]+/gu, '$1')
    .normalize('NFC');
}

const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}\p{Default_Ignorable_Code_Point}\u2800]/gu;

/**
 * A foreign text within a sentence of the app: invisible characters become replacement characters,
 * and its end is trimmed.
 */
export function shownPlainly(text: string, most: number): string {
  const seen = text
    .slice(0, 2 * most)
    .replace(UNSEEN, '\ufffd')
    .replace(/(\p{M}{4})\p{M}+/gu, '$1');
  return seen.length > most ? `${seen.slice(0, most)}…` : seen;
}
