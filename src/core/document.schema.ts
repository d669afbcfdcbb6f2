/** What the document schemas share: bounds on text and numbers, and the header. */

import * as v from 'valibot';
import type { Fault, FaultKey } from './fault';

/** A schema with the sentence its JSON Schema shows. */
export const described = <S extends v.GenericSchema>(schema: S, description: string) =>
  v.pipe(schema, v.description(description));

/** A name or a few words: one line. */
export const shortText = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(80));

/** A sentence or two. */
export const text = v.pipe(v.string(), v.trim(), v.maxLength(600));

/** A length along the ground, metres. */
export const metres = v.pipe(v.number(), v.minValue(0), v.maxValue(10000));

/** A speed, knots. */
export const knots = v.pipe(v.number(), v.minValue(0), v.maxValue(1500));

/** A mass, kilograms. */
export const kilograms = v.pipe(v.number(), v.minValue(1), v.maxValue(700000));

/** A runway designator: `01` to `36`, with L, C or R for parallels. ICAO Annex 14, 5.2.2. */
export const designator = described(
  v.pipe(v.string(), v.regex(/^(0[1-9]|[12]\d|3[0-6])[LCR]?$/, 'form-designator')),
  'Runway designator, 01 to 36, with L, C or R for parallels.',
);

/**
 * A language, with a region if that matters: the part of BCP 47 (RFC 5646, 2.1) that texts for a
 * cockpit need.
 */
const languageTag = v.pipe(
  v.string(),
  v.regex(/^[a-z]{2,3}(-([A-Z]{2}|\d{3}))?$/, 'form-language'),
);

const anyText = v.pipe(v.string(), v.minLength(1), v.maxLength(600));

/** The languages of a document for pilots of every language; a procedure has a twin instead. */
export const languages = {
  language: described(
    v.optional(languageTag),
    'The language of its texts, as a BCP 47 tag: de, pt-BR. English where left out. What is said on the radio is English in every language.',
  ),
  translations: described(
    v.optional(
      v.pipe(
        v.record(languageTag, v.pipe(v.record(anyText, anyText), v.maxEntries(2000))),
        v.maxEntries(20),
      ),
    ),
    'Its texts in other languages: by the language, each text as it stands in the document, and the same in that language. What is left out is shown as it stands.',
  ),
};

/** The header of every document: what it is, and which version of the schema it follows. */
export const document = <K extends string>(kind: K) => ({
  $schema: v.optional(v.pipe(v.string(), v.maxLength(200))),
  lapstrip: described(v.literal(kind), 'What kind of document this is.'),
  version: described(v.literal(1), 'The version of the schema it follows.'),
});

/** Figures of a fault are told to a tenth. */
const toTenths = (value: number) => Math.round(10 * value) / 10;

/** Each step of the path into `document`, as valibot's issues want it. */
function issuePath(
  document: unknown,
  [first, ...rest]: Fault['path'],
): [v.IssuePathItem, ...v.IssuePathItem[]] {
  const step = (input: unknown, key: FaultKey): v.IssuePathItem => ({
    type: 'unknown',
    origin: 'value',
    input,
    key,
    value: new Map(Object.entries(Object(input))).get(String(key)),
  });
  const path: [v.IssuePathItem, ...v.IssuePathItem[]] = [step(document, first)];
  let { value } = path[0];
  for (const key of rest) {
    const item = step(value, key);
    path.push(item);
    value = item.value;
  }
  return path;
}

/**
 * Checks that a document holds together: every fault becomes an issue at its path, with the fault's
 * code as its message. It runs once nothing else is wrong. An editor, which parses with
 * `abortPipeEarly: false`, hears of every fault as long as the shape is right, except those of
 * checks that compute with figures which must be within bounds first (`onceRight`).
 */
export const holdsTogether = <Document extends object>(
  faultsOf: (document: Document) => readonly Fault[],
  { onceRight = false } = {},
) =>
  v.rawCheck<Document>(({ dataset, config, addIssue }) => {
    const isForAll = config.abortPipeEarly === false && !onceRight;
    if (!dataset.typed || !(isForAll || dataset.issues === undefined)) return;
    for (const { path, code, values = [] } of faultsOf(dataset.value)) {
      const message = [code, ...values.map(toTenths)].join(' ');
      addIssue({ message, path: issuePath(dataset.value, path) });
    }
  });
