/** Reading a document from outside: its shape, and whether it holds together. */

import * as v from 'valibot';
import type { Aircraft } from './aircraft/aircraft';
import { aircraftSchema } from './aircraft/aircraft.schema';
import type { Field } from './airfield/field';
import { fieldSchema } from './airfield/field.schema';
import {
  boundBroken,
  type DocumentProblem,
  problemOf,
  type ShapeProblem,
} from './documentProblem.schema';
import type { DocumentFault, ValueFault } from './fault';
import type { Procedure } from './procedure/procedure';
import { procedureSchema } from './procedure/procedure.schema';

/** A document that passed its schema. */
export type CheckedDocument =
  | { readonly kind: 'field'; readonly content: Field }
  | { readonly kind: 'aircraft'; readonly content: Aircraft }
  | { readonly kind: 'procedure'; readonly content: Procedure };

export type ReadDocument =
  | { readonly document: CheckedDocument; readonly problems: null }
  | { readonly document: null; readonly problems: readonly DocumentProblem[] };

/** No document of ours is longer; characters. */
const LONGEST = 1_000_000;

/** How many problems are reported at once. */
const MOST_PROBLEMS = 8;

const refused = (...problems: readonly DocumentProblem[]): ReadDocument => ({
  document: null,
  problems,
});

/** Reads the text of a document. Never throws, whatever the text. */
export function readDocument(text: string): ReadDocument {
  if (text.length > LONGEST) return refused({ at: '', what: 'too-long' });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refused({ at: '', what: 'not-json' });
  }
  return checkDocument(value);
}

/** Checks a document parsed elsewhere. Never throws if its depth is bounded. */
export function checkDocument(value: unknown): ReadDocument {
  switch (v.is(v.object({ lapstrip: v.string() }), value) ? value.lapstrip : null) {
    case 'field':
      return checked(fieldSchema, value, (content) => ({ kind: 'field', content }));
    case 'aircraft':
      return checked(aircraftSchema, value, (content) => ({ kind: 'aircraft', content }));
    case 'procedure':
      return checked(procedureSchema, value, (content) => ({ kind: 'procedure', content }));
    default:
      return refused({ at: 'lapstrip', what: 'not-ours' });
  }
}

function checked<T extends { $schema?: string | undefined }>(
  schema: v.GenericSchema<unknown, T>,
  value: unknown,
  named: (content: T) => CheckedDocument,
): ReadDocument {
  const result = v.safeParse(schema, value);
  if (result.success) return { document: named(result.output), problems: null };
  return refused(...result.issues.slice(0, MOST_PROBLEMS).map(problemOf));
}

/** The schemas, by what a document says it is. */
const SCHEMAS: Readonly<Record<string, v.GenericSchema>> = {
  field: fieldSchema,
  aircraft: aircraftSchema,
  procedure: procedureSchema,
};

/** Everything that keeps a document from being saved; empty if nothing does. Never throws. */
export function documentFaults(document: { readonly lapstrip: string }): readonly DocumentFault[] {
  const schema = SCHEMAS[document.lapstrip] ?? v.never();
  const { issues } = v.safeParse(schema, document, { abortPipeEarly: false });
  return (issues ?? []).map((issue) => ({
    path: (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key))),
    ...(issue.type === 'raw_check' ? toldIn(issue.message) : { code: valueFault(issue) }),
  }));
}

/** A fault's code, and the figures behind it. */
function toldIn(message: string): Pick<DocumentFault, 'code' | 'figures'> {
  const [code = '', ...figures] = message.split(' ');
  return figures.length === 0 ? { code } : { code, figures };
}

/** What an editor says of a bound that is broken; of every other, by what kind of value it is. */
const BOUNDS: Readonly<Partial<Record<ShapeProblem, ValueFault>>> = {
  'shape-empty': 'text-missing',
  'shape-too-long': 'text-too-long',
  'shape-too-few': 'too-few',
  'shape-too-many': 'too-many',
};

function valueFault(issue: v.BaseIssue<unknown>): ValueFault {
  if (issue.kind === 'schema') return 'not-of-shape';
  const other = typeof issue.input === 'string' ? 'text-not-of-kind' : 'number-out-of-range';
  return BOUNDS[boundBroken(issue)] ?? other;
}
