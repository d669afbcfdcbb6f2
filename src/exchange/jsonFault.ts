/**
 * Where a text stops being JSON, and what stands there instead: for a pilot who wrote the file by
 * hand. Asked only about texts that `JSON.parse` refused.
 */

import {
  findNodeAtLocation,
  type Node,
  type ParseError,
  parse,
  parseTree,
  printParseErrorCode,
} from 'jsonc-parser';

/** What is wrong where a text stops being JSON. RFC 8259. */
export type JsonFaultCode =
  /** It doesn't begin as JSON of ours does. */
  | 'json-none'
  /** It ends before its brackets are closed. */
  | 'json-cut-short'
  | 'json-curly-quotes'
  | 'json-single-quotes'
  /** `1,5` where `1.5` is meant. */
  | 'json-decimal-comma'
  | 'json-comma-missing'
  /** A comma with nothing behind it. */
  | 'json-comma-too-many'
  | 'json-colon-missing'
  /** A text that isn't closed before its line ends. */
  | 'json-quote-missing'
  /** A name without quotation marks. */
  | 'json-name-bare'
  | 'json-value-missing'
  /** A bare word other than true, false and null. */
  | 'json-word'
  /** A number in a form that JSON doesn't have: `.5`, `05`, `+5`, `1.`. */
  | 'json-number'
  | 'json-comment'
  /** A bracket of the wrong kind, or one too many. */
  | 'json-bracket'
  /** A backslash that means nothing. */
  | 'json-backslash'
  /** A tab or another control character within a text. */
  | 'json-control'
  /** Something behind the end. */
  | 'json-after-end'
  /** Anything else. */
  | 'json-wrong';

/** Where a text stops being JSON. */
export interface JsonFault {
  readonly code: JsonFaultCode;
  /** Line and character within it, both from 1; a character is a UTF-16 code unit. */
  readonly line: number;
  readonly column: number;
}

/** No name in our documents is longer, characters. */
const LONGEST_NAME = 100;

const CURLY = /[“”„‟«»‘’‚‛]/;

/** The first fault of a text that is no JSON; null if none is found. Its depth must be bounded. */
export function jsonFault(text: string): JsonFault | null {
  const start = text.search(/\S/);
  if (start === -1 || !/[{[]/.test(text.charAt(start)))
    return { code: 'json-none', ...place(text, Math.max(start, 0)) };
  const errors: ParseError[] = [];
  parse(text, errors, { disallowComments: true, allowTrailingComma: false });
  const first = errors.toSorted((one, other) => one.offset - other.offset)[0];
  if (first === undefined) return null;
  const { code, offset } = faultAt(text, first);
  return { code, ...place(text, offset) };
}

interface Found {
  readonly code: JsonFaultCode;
  readonly offset: number;
}

function faultAt(text: string, { error: number, offset }: ParseError): Found {
  const error = printParseErrorCode(number);
  const sign = text.charAt(offset);
  const end = text.trimEnd().length;
  const before = text.slice(0, offset).trimEnd();
  if (CURLY.test(sign)) return { code: 'json-curly-quotes', offset };
  if (sign === "'") return { code: 'json-single-quotes', offset };
  // A text that lasts until the end is cut short, unless the brackets behind it are there.
  const isCutShort = !/[\r\n]|[}\]]$/.test(text.slice(offset, end));
  if (error === 'UnexpectedEndOfString' && !isCutShort) {
    return { code: 'json-quote-missing', offset };
  }
  if (error === 'UnexpectedEndOfString') return { code: 'json-cut-short', offset: end };
  if (offset >= end) return { code: 'json-cut-short', offset: end };
  if (/^[}\]]/.test(sign) && before.endsWith(','))
    return { code: 'json-comma-too-many', offset: before.length - 1 };
  switch (error) {
    case 'PropertyNameExpected':
      return nameExpected(text, offset, before);
    case 'CommaExpected':
    case 'CloseBraceExpected':
    case 'CloseBracketExpected':
      return separatorExpected(sign, offset, before);
    case 'ColonExpected':
      return { code: 'json-colon-missing', offset: before.length };
    case 'ValueExpected':
    case 'InvalidSymbol':
      return valueExpected(text, offset, before);
    case 'InvalidNumberFormat':
    case 'UnexpectedEndOfNumber':
      return { code: 'json-number', offset };
    case 'InvalidCommentToken':
    case 'UnexpectedEndOfComment':
      return { code: 'json-comment', offset };
    case 'InvalidEscapeCharacter':
    case 'InvalidUnicode':
      return { code: 'json-backslash', offset };
    case 'InvalidCharacter':
      return { code: 'json-control', offset };
    case 'EndOfFileExpected':
      return { code: /[}\]]/.test(sign) ? 'json-bracket' : 'json-after-end', offset };
    default:
      return { code: 'json-wrong', offset };
  }
}

function nameExpected(text: string, offset: number, before: string): Found {
  const sign = text.charAt(offset);
  // `"runM": 1,5` reads as 1, and then a name that is a 5.
  if (/\d/.test(sign) && /\d,$/.test(before)) {
    return { code: 'json-decimal-comma', offset: before.length - 1 };
  }
  if (sign === ',') return { code: 'json-comma-too-many', offset };
  if (sign === ']') return { code: 'json-bracket', offset };
  return { code: /[\p{L}_$]/u.test(sign) ? 'json-name-bare' : 'json-wrong', offset };
}

function separatorExpected(sign: string, offset: number, before: string): Found {
  if (/[}\]]/.test(sign)) return { code: 'json-bracket', offset };
  if (/["{[\d\p{L}-]/u.test(sign)) return { code: 'json-comma-missing', offset: before.length };
  return { code: 'json-wrong', offset };
}

function valueExpected(text: string, offset: number, before: string): Found {
  const sign = text.charAt(offset);
  if (sign === '=') return { code: 'json-colon-missing', offset: before.length };
  if (/^[\p{L}_$][\w$]*\s*:/u.test(text.slice(offset, offset + LONGEST_NAME))) {
    return { code: 'json-name-bare', offset };
  }
  if (/[+.\d-]/.test(sign)) return { code: 'json-number', offset };
  if (/[\p{L}_$]/u.test(sign)) return { code: 'json-word', offset };
  if (sign === ',' || sign === '}' || sign === ']') return { code: 'json-value-missing', offset };
  return { code: 'json-wrong', offset };
}

function place(text: string, offset: number): Pick<JsonFault, 'line' | 'column'> {
  const lines = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 };
}

/**
 * The line of each place of a JSON text, from 1: a path such as `runways.0.ends`. A place that isn't
 * there is looked for where it would stand; null if the text has no such group either.
 */
export function linesOf(text: string, paths: readonly string[]): readonly (number | null)[] {
  const root = parseTree(text);
  return paths.map((path) => {
    const node = root && nearest(root, path.split('.'));
    return node ? place(text, node.offset).line : null;
  });
}

/** The node at a path, or the group that lacks its last step. */
function nearest(root: Node, path: readonly string[]): Node | undefined {
  const keys = path.map((key) => (/^\d+$/.test(key) ? Number(key) : key));
  return findNodeAtLocation(root, keys) ?? findNodeAtLocation(root, keys.slice(0, -1));
}
