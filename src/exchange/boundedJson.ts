/**
 * JSON from outside, parsed only if bounded: fifty million brackets, or an array as long, would
 * crash the tab before we could say anything about it.
 */

/** Nothing of ours nests deeper, levels. RFC 8259, section 9, lets a parser set limits. */
const DEEPEST = 64;

/** No record has more values and keys than this. */
const MOST_VALUES = 10_000_000;

/** Why a text wasn't parsed. */
export type JsonProblem = 'not-json' | 'too-deep' | 'too-many';

/** What a text holds, or why it wasn't parsed. */
export type ParsedJson =
  | { readonly value: unknown; readonly problem: null }
  | { readonly value: null; readonly problem: JsonProblem };

/** Parses a text of bounded depth and size. Never throws, whatever the text. */
export function boundedJson(text: string): ParsedJson {
  const problem = beyondBounds(text);
  if (problem !== null) return { value: null, problem };
  try {
    return { value: JSON.parse(text), problem: null };
  } catch {
    return { value: null, problem: 'not-json' };
  }
}

const [QUOTE, BACKSLASH, COMMA, COLON] = [0x22, 0x5c, 0x2c, 0x3a];
const [OPEN_ROW, CLOSE_ROW, OPEN_OBJECT, CLOSE_OBJECT] = [0x5b, 0x5d, 0x7b, 0x7d];

/** Counts brackets and separators outside strings, without building anything. */
function beyondBounds(text: string): JsonProblem | null {
  let depth = 0;
  let values = 0;
  let isText = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (isText) {
      if (sign === BACKSLASH) at += 1;
      else if (sign === QUOTE) isText = false;
      continue;
    }
    if (sign === QUOTE) isText = true;
    else if (sign === COMMA || sign === COLON) values += 1;
    else if (sign === OPEN_ROW || sign === OPEN_OBJECT) {
      depth += 1;
      values += 1;
    } else if (sign === CLOSE_ROW || sign === CLOSE_OBJECT) depth -= 1;
    if (depth > DEEPEST) return 'too-deep';
    if (values > MOST_VALUES) return 'too-many';
  }
  return null;
}
