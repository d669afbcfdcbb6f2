/** A lesson from outside: all of it is sound, or none of it is used. */

import { expect, test } from 'vitest';
import { checkLesson } from '../../../src/core/lesson/lesson.schema';
import { demoTexts } from '../documents/demo';

type Json = Record<string, unknown>;

const demo = (folder: Parameters<typeof demoTexts>[0], file: string): Json =>
  JSON.parse(demoTexts(folder).get(file) ?? 'null');

const DOCUMENTS = [
  demo('fields', 'XLIN.json'),
  demo('aircraft', 'sleet.json'),
  demo('procedures', 'sleet-usual.json'),
];

const lessonWith = (change: Json = {}): Json => ({
  lapstrip: 'lesson',
  version: 1,
  name: 'First solo',
  note: ['Circuits to the north only.', 'Stop after three.'],
  documents: DOCUMENTS,
  ...change,
});

const refusal = (lesson: unknown) =>
  checkLesson(lesson).problems?.map(({ at, what }) => `${at}: ${what}`) ?? null;

test('a lesson holds its documents, its name and the lines of its note', () => {
  const { lesson } = checkLesson(lessonWith());
  expect(lesson?.documents.map(({ kind }) => kind)).toEqual(['field', 'aircraft', 'procedure']);
  expect(lesson).toMatchObject({ name: 'First solo', note: lessonWith().note });
  expect(checkLesson(lessonWith({ note: undefined })).lesson?.note).toEqual([]);
});

test('one faulty document refuses the whole, and says which and where', () => {
  const [field] = DOCUMENTS;
  const documents = [...DOCUMENTS, { ...field, name: 7 }];
  expect(refusal(lessonWith({ documents }))).toEqual(['documents.3.name: shape-not-text']);
});

test.each([
  ['another version', { version: 2 }, 'version: shape-not-one-of'],
  ['no documents', { documents: [] }, 'documents: shape-too-few'],
  ['too many documents', { documents: Array(41).fill(DOCUMENTS[0]) }, 'documents: shape-too-many'],
  [
    'a log as a document',
    { documents: [{ lapstrip: 'record' }] },
    'documents.0.lapstrip: shape-not-one-of',
  ],
  ['a lesson in a lesson', { documents: [lessonWith()] }, 'documents.0.lapstrip: shape-not-one-of'],
  ['an unknown property', { more: 1 }, 'more: shape-unknown-name'],
  ['no name', { name: ' ' }, 'name: shape-empty'],
  // UAX #9, table 4: a right-to-left override. UTR #36, 2.5 shows what it disguises.
  ['a name turned about', { name: 'First\u202eolos' }, 'name: text-direction'],
  // UAX #31, 2.3: a default-ignorable character.
  ['an invisible name', { name: '\u2060' }, 'name: text-invisible'],
  ['a note with a control character', { note: ['a\u0007b'] }, 'note.0: text-control'],
  // UTS #39, 5.4.
  [
    'a note with stacked marks',
    { note: ['ok', `a${'\u0301\u0302'.repeat(3)}`] },
    'note.1: text-marks',
  ],
  ['too many lines', { note: Array(21).fill('a') }, 'note: shape-too-many'],
])('a lesson with %s is refused', (_, change, problem) => {
  expect(refusal(lessonWith(change))).toContain(problem);
});

test.each([null, [], 7, 'lesson', { lapstrip: 'lesson' }])('%j is no lesson', (value) => {
  expect(checkLesson(value).lesson).toBeNull();
});
