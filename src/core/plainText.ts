/**
 * Which texts of a document are refused when it is received or saved: those that are drawn otherwise
 * than they are written, or are not drawn at all, so that a pilot reads what is not there. What is
 * stored already is not judged by it.
 *
 * Unicode UAX #31, section 2.3 (layout and format control characters); UTR #36, section 2.5
 * (bidirectional text); UTS #39, section 5.4 (sequences of nonspacing marks).
 */

import type { Fault, Key } from './fault';

/** What is wrong with a text. */
export type TextFault =
  /** A line break or another control character, or half of one. */
  | 'text-control'
  /** A character that turns the order of others about. */
  | 'text-direction'
  /** A character that is not seen, or nothing that is. */
  | 'text-invisible'
  /** Marks stacked on one letter, or on none. */
  | 'text-marks';

/** Control characters, line and paragraph separators, halves of characters, and those that have no meaning but a private one. */
const CONTROL = /[\p{Cc}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/u;

/** Embeddings, overrides, isolates and marks of direction. UAX #9, table 4. */
const DIRECTION = /\p{Bidi_Control}/u;

/** What is not drawn: what a reader may ignore, annotations of another text, a Braille cell without dots. */
const INVISIBLE = /[\p{Default_Ignorable_Code_Point}\ufff9-\ufffb\u2800]/u;

/** Scripts that cannot be written without joiners, between whose letters they are no disguise. UAX #31, section 2.3.1. */
const JOINED = 'Arab Syrc Mong Nkoo Deva Beng Guru Gujr Orya Taml Telu Knda Mlym Sinh Khmr Mymr'
  .split(' ')
  .map((script) => `\\p{Script=${script}}`)
  .join('');
const JOINER = new RegExp(`([${JOINED}])[\\u200c\\u200d](?=[${JOINED}])`, 'gu');

/** Says how the sign before it is drawn. */
const VARIANT = /(\p{Extended_Pictographic})[\ufe0e\ufe0f]/gu;

/** On nothing, the same twice, or more than four in a row; the four are from memory. UTS #39, section 5.4. */
const STACKED = /(^|\s)\p{M}|([\p{Mn}\p{Me}])\2|[\p{Mn}\p{Me}]{5}/u;

/** Latin letters and common signs alone, which nothing can be wrong with: most texts, told at once. */
const PLAIN = /^[ -~\u00a1-\u00ac\u00ae-\u02ff\u2010-\u2027\u2030-\u205e]*$/;

/** Whether anything of a text is seen. */
const SEEN = /[^\s\p{M}]/u;

/** What is wrong with a text; null where nothing is, as with an empty one. What stands around it is cut off. */
export function textFault(text: string): TextFault | null {
  const bare = text.trim();
  if (PLAIN.test(bare)) return null;
  if (CONTROL.test(bare)) return 'text-control';
  if (DIRECTION.test(bare)) return 'text-direction';
  const drawn = bare.replace(JOINER, '$1').replace(VARIANT, '$1');
  if (INVISIBLE.test(drawn) || !SEEN.test(drawn)) return 'text-invisible';
  return STACKED.test(drawn.normalize('NFD')) ? 'text-marks' : null;
}

/** What is wrong with the texts of a document, and with the names in it, wherever they stand. */
export function textFaults(document: object): readonly Fault<TextFault>[] {
  return Object.entries(document).flatMap(([name, value]) => faultsAt([name], value));
}

function faultsAt(path: readonly [Key, ...Key[]], value: unknown): readonly Fault<TextFault>[] {
  if (typeof value === 'string') {
    const code = textFault(value);
    return code === null ? [] : [{ path, code }];
  }
  if (Array.isArray(value)) return value.flatMap((part, index) => faultsAt([...path, index], part));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, part]) => {
    // Its place is told by where it stands: its name cannot be read.
    const code = textFault(name);
    return code === null ? faultsAt([...path, name], part) : [{ path, code }];
  });
}

const [JOINERS, VARIANTS] = ['[\\u200c\\u200d]', '[\\ufe0e\\ufe0f]'];

/** What {@link textFault} refuses one by one; the first two branches are what it lets pass. */
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
 * A text that came from elsewhere, as it may be kept and shown: each character that {@link textFault}
 * refuses stands as a replacement character, and marks that are stacked are fewer. A text with which
 * nothing is wrong stays as it is. A note keeps its lines; so does a report, in which what is not seen
 * stands as a blank, as which it is read.
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

/** A foreign text within a sentence of the app: what is not seen stands as a replacement character, and its end is cut off. */
export function shownPlainly(text: string, most: number): string {
  const seen = text
    .slice(0, 2 * most)
    .replace(UNSEEN, '\ufffd')
    .replace(/(\p{M}{4})\p{M}+/gu, '$1');
  return seen.length > most ? `${seen.slice(0, most)}…` : seen;
}
