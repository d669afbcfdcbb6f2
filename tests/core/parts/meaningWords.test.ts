/** Dates and the like in the words for a report's groups. */

import { expect, test } from 'vitest';
import { speak } from '../../../src/parts/catalogues';
import { words as german } from '../../../src/views/wind/report/meaningWords.de';
import { words as english } from '../../../src/views/wind/report/meaningWords.en';

const issued = (day: number) => ({ code: 'issued', day, hour: 11, minute: 0 }) as const;

// English grammar: 11th to 13th are the exceptions.
test.each([
  [1, '1st'],
  [2, '2nd'],
  [3, '3rd'],
  [4, '4th'],
  [11, '11th'],
  [12, '12th'],
  [13, '13th'],
  [21, '21st'],
  [30, '30th'],
])('a report of day %i was observed on the %s', async (day, said) => {
  await speak('en');
  expect(english.meaning(issued(day))).toBe(`Observed on the ${said} at 1100Z`);
  expect(german.meaning(issued(day))).toBe(`Beobachtet am ${day}. um 1100Z`);
});

test('a forecast is valid from and to hours of days', async () => {
  await speak('en');
  const hour = (day: number, hour: number) => ({ day, hour, minute: 0 });
  expect(english.meaning({ code: 'validity', from: hour(30, 18), to: hour(1, 6) })).toBe(
    'Valid from 1800Z on the 30th to 0600Z on the 1st',
  );
});
