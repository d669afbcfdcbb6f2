/** Text cut into the pieces between its blanks, each with its place. */

/** A piece of the text between blanks. */
export interface Token {
  /** In capitals and plain digits, without punctuation at its ends; may be empty. */
  readonly text: string;
  /** Where `text` begins. */
  readonly textFrom: number;
  /** Where the piece begins, punctuation included. */
  readonly from: number;
  /** Where the piece ends, punctuation included. */
  readonly to: number;
}

/**
 * The most characters that are read. A page of bulletins, some two hundred reports, fits; a book
 * pasted by mistake does not hold up the screen.
 */
export const MOST_CHARACTERS = 20_000;

/** Marks that hang on a word in a sentence and are part of no group. */
const PUNCTUATION = ',.;:!?()[]<>"\'*“”';

/**
 * Beyond ASCII, what cannot be seen counts as a blank: no-break and zero-width spaces and marks of
 * direction come along with copied text.
 */
const UNSEEN = /[\s\p{Cc}\p{Cf}]/u;

/** How far a full-width form stands from its ASCII character. */
const FULL_WIDTH_OFFSET = 0xfee0;

/** Small letters, and full-width forms as typed with an East Asian keyboard. */
const TO_MAKE_PLAIN = /[a-z\uFF01-\uFF5E]/;

/** Capitals and plain digits, each in its place: unlike `toUpperCase`, the length never changes. */
const plain = (text: string): string =>
  text.replace(/[a-z]+|[\uFF01-\uFF5E]/g, (part) => {
    const code = part.charCodeAt(0) - FULL_WIDTH_OFFSET;
    return (code > 0 ? String.fromCharCode(code) : part).toUpperCase();
  });

const SPACE = 0x20;
const SLASH = 0x2f;
const DIGIT_NINE = 0x39;
const EQUALS = 0x3d;
const SMALL_A = 0x61;
const DELETE = 0x7f;

/**
 * The pieces of a text in order, `=` always one of its own, since it may end a report without a
 * blank before it. Takes time in proportion to the length.
 */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let from = 0;
  for (let at = 0; at <= text.length; at++) {
    let code = codeAt(text, at);
    while (code > SPACE && code < SMALL_A && code !== EQUALS) code = codeAt(text, ++at);
    if (code >= SMALL_A) {
      // Nearly all is in capitals, of which not one need be looked at twice.
      if (TO_MAKE_PLAIN.test(text.charAt(at))) return tokensOf(plain(text));
      if (code < DELETE || !UNSEEN.test(text.charAt(at))) continue;
    }
    if (at > from) tokens.push(tokenOf(text, from, at));
    from = at + 1;
    if (code === EQUALS) tokens.push({ text: '=', textFrom: at, from: at, to: from });
  }
  return tokens;
}

/** The code of a character; a blank past the end. */
const codeAt = (text: string, at: number): number =>
  at < text.length ? text.charCodeAt(at) : SPACE;

function tokenOf(characters: string, from: number, to: number): Token {
  let textFrom = from;
  let textTo = to;
  while (textFrom < textTo && isPunctuation(characters, textFrom)) textFrom++;
  while (textTo > textFrom && isPunctuation(characters, textTo - 1)) textTo--;
  return { text: characters.slice(textFrom, textTo), textFrom, from, to };
}

function isPunctuation(characters: string, at: number): boolean {
  const code = characters.charCodeAt(at);
  // Nearly every piece begins and ends with a digit or a slash, or with a capital.
  const isCommon = (code >= SLASH && code <= DIGIT_NINE) || (code > 0x40 && code < 0x5b);
  return !isCommon && PUNCTUATION.includes(characters.charAt(at));
}

/** The text of a token; empty past the end. */
export const textAt = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

/** Some of the tokens as one line, with one blank between two. */
export function phraseOf(tokens: readonly Token[], start: number, end: number): string {
  let phrase = textAt(tokens, start);
  for (let i = start + 1; i < end; i++) phrase += ` ${textAt(tokens, i)}`;
  return phrase;
}

const ZERO = 0x30;

/**
 * The number that the figures from one place of a text up to another make; -1 where one is no figure.
 * Most groups are a letter or two and figures: asked first, this spares nearly all searches by shape.
 */
export function figuresAt(text: string, from: number, to: number): number {
  let number = 0;
  for (let at = from; at < to; at++) {
    const figure = text.charCodeAt(at) - ZERO;
    if (!(figure >= 0 && figure <= 9)) return -1;
    number = number * 10 + figure;
  }
  return number;
}
