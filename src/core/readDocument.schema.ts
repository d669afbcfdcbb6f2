/** Reading a document that comes from outside: its shape, and whether it holds together. */

import * as v from 'valibot';
import type { Aircraft } from './aircraft/aircraft';
import { aircraftSchema } from './aircraft/aircraft.schema';
import type { Field } from './airfield/field';
import { fieldSchema } from './airfield/field.schema';
import { shownPlainly } from './plainText';
import type { Procedure } from './procedure/procedure';
import { procedureSchema } from './procedure/procedure.schema';

/** A document that passed its schema. */
export type CheckedDocument =
  | { readonly kind: 'field'; readonly content: Field }
  | { readonly kind: 'aircraft'; readonly content: Aircraft }
  | { readonly kind: 'procedure'; readonly content: Procedure };

/** What is wrong, and where: `at` is a path such as `runways.0.ends`; `what` is a fault's code or the schema's own words. */
export interface DocumentProblem {
  readonly at: string;
  readonly what: string;
}

/** A document as read. */
export type ReadDocument =
  | { readonly document: CheckedDocument; readonly problems: null }
  | { readonly document: null; readonly problems: readonly DocumentProblem[] };

/** Longer texts are no document of ours; characters. */
const LONGEST = 1_000_000;

/** So many problems are told at once. */
const MOST_PROBLEMS = 8;

/** A place or a problem may quote the document, characters. */
const LONGEST_PLACE = 100;
const LONGEST_PROBLEM = 200;

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

/** Checks a document that was parsed elsewhere. Never throws where its depth is bounded. */
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
  return refused(
    ...result.issues.slice(0, MOST_PROBLEMS).map((issue) => ({
      at: shownPlainly(v.getDotPath(issue) ?? '', LONGEST_PLACE),
      what: shownPlainly(issue.message, LONGEST_PROBLEM),
    })),
  );
}
