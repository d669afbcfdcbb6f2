/** Whose a report is and how old is said where it is not as one would think. */

import { expect, test } from 'vitest';
import { reportNotes } from '../../../src/core/weather/reportNotes';

test('a report of the field in use, of half an hour ago, is as one would think', () => {
  expect(reportNotes('XHAR', 'XHAR', 30)).toEqual([]);
});

test('a report of another field is named with the field in use', () => {
  expect(reportNotes('XTSL', 'XHAR', 5)).toEqual([
    { code: 'other-field', station: 'XTSL', field: 'XHAR' },
  ]);
});

test('without a field or a station there is nothing to compare', () => {
  expect(reportNotes('XTSL', null, 5)).toEqual([]);
  expect(reportNotes(null, 'XHAR', 5)).toEqual([]);
});

// Routine reports are made each hour or half hour, WMO-No. 306 FM 15; the bound of 90 minutes is
// common practice, no published source.
test('an hour and a half is not yet old, and a minute more is', () => {
  expect(reportNotes(null, null, 90)).toEqual([]);
  expect(reportNotes(null, null, 91)).toEqual([{ code: 'old', minutes: 91 }]);
});

test('a report of later than the clock is told as ahead of it', () => {
  expect(reportNotes(null, null, -90)).toEqual([]);
  expect(reportNotes(null, null, -91)).toEqual([{ code: 'ahead', minutes: 91 }]);
});

test('another field and its age are both told; a report without a time has none', () => {
  expect(reportNotes('XTSL', 'XHAR', 600).map(({ code }) => code)).toEqual(['other-field', 'old']);
  expect(reportNotes('XHAR', 'XHAR', null)).toEqual([]);
});
