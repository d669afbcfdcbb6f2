/** A lesson: the fields, aircraft and procedures of a training sortie in one file. */

import * as v from 'valibot';
import { described, document, holdsTogether, shortText, text } from '../document.schema';
import { type DocumentProblem, problemOf } from '../documentProblem.schema';
import { textFaults } from '../plainText';
import { type CheckedDocument, checkDocument } from '../readDocument.schema';

/** What a lesson says, apart from its documents. */
export interface LessonHeader {
  readonly name: string;
  /** What the instructor says of it, a line each. */
  readonly note: readonly string[];
}

/** A lesson whose every document passed its schema. */
export interface Lesson extends LessonHeader {
  readonly documents: readonly CheckedDocument[];
}

export type ReadLesson =
  | { readonly lesson: Lesson; readonly problems: null }
  | { readonly lesson: null; readonly problems: readonly DocumentProblem[] };

/** No lesson needs more documents, nor more lines. */
const MOST_DOCUMENTS = 40;
const MOST_LINES = 20;

/** How many problems are reported at once. */
const MOST_PROBLEMS = 8;

const KINDS = ['field', 'aircraft', 'procedure'] as const;

const shape = v.strictObject({
  ...document('lesson'),
  name: described(shortText, 'What the lesson is called.'),
  note: described(
    v.optional(v.pipe(v.array(text), v.maxLength(MOST_LINES)), []),
    'What the instructor says of it, a line each.',
  ),
  documents: described(
    v.pipe(
      v.array(v.looseObject({ lapstrip: v.picklist(KINDS) })),
      v.minLength(1),
      v.maxLength(MOST_DOCUMENTS),
    ),
    'Its fields, aircraft and procedures, each a whole document of its own kind.',
  ),
});

export const lessonSchema = v.pipe(
  shape,
  // Each document looks after its own texts.
  holdsTogether<v.InferOutput<typeof shape>>(({ name, note }) => textFaults({ name, note })),
);

/**
 * Checks a lesson and each of its documents: all of it or nothing. The place of a problem begins at
 * the lesson. Never throws if its depth is bounded.
 */
export function checkLesson(value: unknown): ReadLesson {
  const read = v.safeParse(lessonSchema, value);
  if (!read.success) return refused(read.issues.map(problemOf));
  const { name, note, documents } = read.output;
  const checked = documents.map(checkDocument);
  const problems = checked.flatMap(({ problems }, index) =>
    (problems ?? []).map((problem) => ({ ...problem, at: within(index, problem.at) })),
  );
  if (problems.length > 0) return refused(problems);
  return {
    lesson: { name, note, documents: checked.flatMap(({ document }) => document ?? []) },
    problems: null,
  };
}

const within = (index: number, at: string) =>
  ['documents', index, at].filter((part) => part !== '').join('.');

const refused = (problems: readonly DocumentProblem[]): ReadLesson => ({
  lesson: null,
  problems: problems.slice(0, MOST_PROBLEMS),
});
