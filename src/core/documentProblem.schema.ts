/** What a schema finds wrong with a document from outside, as a code that the views put into words. */

import * as v from 'valibot';
import { shownPlainly } from './plainText';

/** What is wrong with a document, and where. */
export interface DocumentProblem {
  /** Path such as `runways.0.ends`; empty for the whole. */
  readonly at: string;
  /** A {@link ShapeProblem}, a {@link FormProblem}, or the code of a fault with its figures behind it. */
  readonly what: string;
  /** What stands there, as it would be written in a file, cut short; absent if nothing does. */
  readonly given?: string;
  /** What may stand there: values as written in a file, or a bound. */
  readonly allowed?: readonly string[];
  /** Line in its file and character within it, from 1; absent if they aren't known. */
  readonly line?: number | undefined;
  readonly column?: number | undefined;
}

/** What can be wrong with the shape of a document. */
export type ShapeProblem =
  | 'shape-missing'
  /** No document of its kind has this name there. */
  | 'shape-unknown-name'
  | 'shape-not-number'
  | 'shape-not-text'
  | 'shape-not-list'
  | 'shape-not-group'
  /** Neither true nor false. */
  | 'shape-not-yes-no'
  | 'shape-not-one-of'
  | 'shape-too-low'
  | 'shape-too-high'
  | 'shape-not-whole'
  | 'shape-empty'
  | 'shape-too-long'
  /** A list of too few or too many. */
  | 'shape-too-few'
  | 'shape-too-many'
  /** A text in no form of its kind, where its schema has no code of its own. */
  | 'shape-not-of-form';

/** Texts that are not of the form their schema names. */
export type FormProblem =
  | 'form-point'
  | 'form-frequency'
  | 'form-field-code'
  | 'form-name'
  | 'form-hash'
  | 'form-designator'
  | 'form-language'
  | 'form-time'
  /** A list's end that leads to no place and no phase. */
  | 'leads-nowhere';

/** Paths and what was given are cut to these lengths, characters. */
const LONGEST_PLACE = 100;
const LONGEST_GIVEN = 40;
const LONGEST_CODE = 200;

/** More is a vocabulary of its own; its first few show the form. */
const MOST_ALLOWED = 12;

/** The types of JSON as valibot names them, and what their absence is called here. */
const TYPES: Readonly<Record<string, ShapeProblem>> = {
  number: 'shape-not-number',
  string: 'shape-not-text',
  boolean: 'shape-not-yes-no',
  Array: 'shape-not-list',
  Object: 'shape-not-group',
};

/** Codes that a schema states itself: lower case, with hyphens, and figures behind. */
const CODE = /^[a-z]+(-[a-z]+)+( |$)/;

/** An issue of a document's schema as a problem. */
export function problemOf(issue: v.BaseIssue<unknown>): DocumentProblem {
  const at = shownPlainly(v.getDotPath(issue) ?? '', LONGEST_PLACE);
  if (CODE.test(issue.message)) {
    return { at, what: shownPlainly(issue.message, LONGEST_CODE), ...givenIn(issue) };
  }
  return { at, ...shapeProblem(issue) };
}

type Told = Omit<DocumentProblem, 'at'>;

function shapeProblem(issue: v.BaseIssue<unknown>): Told {
  const given = givenIn(issue);
  if (issue.kind === 'validation') return { what: boundBroken(issue), ...given, ...boundIn(issue) };
  if (issue.input === undefined) return { what: 'shape-missing' };
  const { expected } = issue;
  if (expected === 'never' || expected === null) return { what: 'shape-unknown-name' };
  const type = TYPES[expected];
  if (type !== undefined) return { what: type, ...given };
  // A name that is missing: the key is expected, and its group is not what was given.
  if (issue.received === 'undefined') return { what: 'shape-missing' };
  const allowed = expected.replace(/^\(|\)$/g, '').split(' | ');
  return { what: 'shape-not-one-of', ...given, allowed: allowed.slice(0, MOST_ALLOWED) };
}

/** Which bound of its schema a value breaks. */
export function boundBroken({ type, input }: v.BaseIssue<unknown>): ShapeProblem {
  const isText = typeof input === 'string';
  switch (type) {
    case 'min_value':
      return 'shape-too-low';
    case 'max_value':
      return 'shape-too-high';
    case 'integer':
      return 'shape-not-whole';
    case 'min_length':
      return isText ? 'shape-empty' : 'shape-too-few';
    case 'max_length':
    case 'max_entries':
      return isText ? 'shape-too-long' : 'shape-too-many';
    default:
      return 'shape-not-of-form';
  }
}

const boundIn = ({ requirement }: v.BaseIssue<unknown>) =>
  typeof requirement === 'number' ? { allowed: [String(requirement)] } : {};

/** What stands there; nothing for a group or a list, which would be quoted for lines. */
function givenIn({ input }: v.BaseIssue<unknown>): { readonly given?: string } {
  if (typeof input === 'object' && input !== null) return {};
  const written = JSON.stringify(input);
  return written === undefined ? {} : { given: shownPlainly(written, LONGEST_GIVEN) };
}
