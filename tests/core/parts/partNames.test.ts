/** Differences of documents are told by the names of their parts: every part of every kind has one. */

import { beforeAll, expect, test } from 'vitest';
import aircraft from '../../../public/schemas/aircraft.schema.json';
import field from '../../../public/schemas/field.schema.json';
import procedure from '../../../public/schemas/procedure.schema.json';
import { speak } from '../../../src/parts/catalogues';
import { words as german } from '../../../src/views/library/incomingWords.de';
import { words as english } from '../../../src/views/library/incomingWords.en';

beforeAll(() => speak('en'));

/** What is the same in any two documents that are compared. */
const SAME = new Set(['$schema', 'lapstrip', 'version', 'code']);

test.each([
  ['field', field],
  ['aircraft', aircraft],
  ['procedure', procedure],
])('every part of a %s has a name in both languages', (_, { properties }) => {
  const parts = Object.keys(properties).filter((name) => !SAME.has(name));
  expect(parts.length).toBeGreaterThan(5);
  expect(parts.filter((part) => english.partNames[part] === undefined)).toEqual([]);
  expect(parts.filter((part) => german.partNames[part] === undefined)).toEqual([]);
});
