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

/** A full-width form, as typed with an East Asian keyboard, and how far it stands from ASCII. */
const FULL_WIDTH = /[\uFF01-\uFF5E]/g;
const FULL_WIDTH_OFFSET = 0xfee0;

/** Capitals and plain digits, each in its place: unlike `toUpperCase`, the length never changes. */
const plain = (text: string): string =>
  text
    .replace(FULL_WIDTH, (wide) => String.fromCharCode(wide.charCodeAt(0) - FULL_WIDTH_OFFSET))
    .replace(/[a-z]+/g, (small) => small.toUpperCase());

const SPACE = 0x20;
const DELETE = 0x7f;

const isBlank = (text: string, at: number): boolean => {
  const code = text.charCodeAt(at);
  return code <= SPACE || (code >= DELETE && UNSEEN.test(text.charAt(at)));
};

/**
 * The pieces of a text in order, `=` always one of its own, since it may end a report without a
 * blank before it. Takes time in proportion to the length.
 */
export function tokensOf(text: string): Token[] {
  const characters = plain(text);
  const tokens: Token[] = [];
  for (let at = 0; at < characters.length; at++) {
    if (isBlank(characters, at)) continue;
    const from = at;
    if (characters[at] !== '=') {
      while (
        at + 1 < characters.length &&
        characters[at + 1] !== '=' &&
        !isBlank(characters, at + 1)
      )
        at++;
    }
    tokens.push(tokenOf(characters, from, at + 1));
  }
  return tokens;
}

function tokenOf(characters: string, from: number, to: number): Token {
  let textFrom = from;
  let textTo = to;
  while (textFrom < textTo && PUNCTUATION.includes(characters.charAt(textFrom))) textFrom++;
  while (textTo > textFrom && PUNCTUATION.includes(characters.charAt(textTo - 1))) textTo--;
  return { text: characters.slice(textFrom, textTo), textFrom, from, to };
}

/** The text of a token; empty past the end. */
export const textAt = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

/** Some of the tokens as one line, with one blank between two. */
export function phraseOf(tokens: readonly Token[], start: number, end: number): string {
  let phrase = textAt(tokens, start);
  for (let i = start + 1; i < end; i++) phrase += ` ${textAt(tokens, i)}`;
  return phrase;
}
