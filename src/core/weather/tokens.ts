/** Text split at its spaces into pieces, each with its place. */

/** A piece of the text between spaces. */
export interface Token {
  /** In capitals and plain digits, without punctuation at its ends; may be empty. */
  readonly text: string;
  readonly textFrom: number;
  /** Where the piece begins, punctuation included. */
  readonly from: number;
  /** Where the piece ends, punctuation included. */
  readonly to: number;
}

/**
 * The most characters read: about two hundred reports. A book pasted by mistake must not block the
 * screen.
 */
export const MOST_CHARACTERS = 20_000;

/** Punctuation that clings to a word in a sentence and is part of no group. */
const PUNCTUATION = ',.;:!?()[]<>"\'*“”';

/**
 * An `=`, or what stands between blanks. The invisible counts as blank: no-break and zero-width
 * spaces and direction marks come along with copied text. Beyond the basic plane nothing does.
 */
const PIECE = /=|(?:[^=\s\p{Cc}\p{Cf}]|[\u{10000}-\u{10FFFF}])+/gu;

/** The offset of a full-width form from its ASCII character. */
const FULL_WIDTH_OFFSET = 0xfee0;

/**
 * Small letters, and full-width forms as typed with an East Asian keyboard, as capitals and plain
 * digits, each in its place: unlike with `toUpperCase`, the length never changes.
 */
const plain = (text: string): string =>
  text.replace(/[a-z]+|[\uFF01-\uFF5E]/g, (part) => {
    const code = part.charCodeAt(0) - FULL_WIDTH_OFFSET;
    return (code > 0 ? String.fromCharCode(code) : part).toUpperCase();
  });

/**
 * The pieces of a text in order. `=` is its own piece, since it may end a report without a space
 * before it. Takes time proportional to the length.
 */
export const tokensOf = (text: string): Token[] =>
  Array.from(plain(text).matchAll(PIECE), ({ 0: piece, index }) => tokenOf(piece, index));

function tokenOf(piece: string, from: number): Token {
  let begin = 0;
  let end = piece.length;
  while (begin < end && isPunctuation(piece, begin)) begin++;
  while (end > begin && isPunctuation(piece, end - 1)) end--;
  return { text: piece.slice(begin, end), textFrom: from + begin, from, to: from + piece.length };
}

const isPunctuation = (piece: string, at: number): boolean =>
  PUNCTUATION.includes(piece.charAt(at));

/** The text of a token; empty past the end. */
export const textAt = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

/** Several tokens as one line, separated by single spaces. */
export function phraseOf(tokens: readonly Token[], start: number, end: number): string {
  let phrase = textAt(tokens, start);
  for (let i = start + 1; i < end; i++) phrase += ` ${textAt(tokens, i)}`;
  return phrase;
}
