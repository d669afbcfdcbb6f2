import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { speak } from '../../../src/parts/catalogues';
import {
  againstLimit,
  decimal,
  direction,
  lasting,
  NO_BREAK_SPACE,
  stopwatch,
  utcDate,
  wholeNumber,
  zulu,
} from '../../../src/parts/format';

beforeAll(() => speak('en'));

test.each([
  // North is written 360, never 000: WMO-No. 306 Vol. I.1, FM 15; value from memory.
  [0, '360°'],
  [360, '360°'],
  [359.6, '360°'],
  [0.4, '360°'],
  [0.5, '001°'],
  [5, '005°'],
  [45.4, '045°'],
  [280, '280°'],
])('a direction of %f is written %s', (deg, written) => {
  expect(direction(deg)).toBe(written);
});

test('every direction is written in three digits, 001 to 360', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 360, noNaN: true }), (deg) => {
      const written = direction(deg);
      expect(written).toMatch(/^\d{3}°$/);
      const number = Number.parseInt(written, 10);
      expect(number).toBeGreaterThanOrEqual(1);
      expect(number).toBeLessThanOrEqual(360);
      const off = Math.abs(number - deg);
      expect(Math.min(off, 360 - off)).toBeLessThanOrEqual(0.5);
    }),
  );
});

test('thousands stand apart by a space that does not break, and minus is a minus sign', () => {
  // SI Brochure, 9th edition, 5.4.4, value from memory: groups of three with a space between.
  expect(wholeNumber(1400)).toBe('1\u00a0400');
  expect(wholeNumber(999)).toBe('999');
  expect(wholeNumber(1_234_567)).toBe('1\u00a0234\u00a0567');
  expect(wholeNumber(-1400.4)).toBe('\u22121\u00a0400');
  expect(wholeNumber(-0.4)).toBe('0');
});

test('a whole number is read back as what it was rounded to', () => {
  fc.assert(
    fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), (value) => {
      const back = wholeNumber(value).replaceAll(NO_BREAK_SPACE, '').replace('−', '-');
      expect(Math.abs(Number(back) - value)).toBeLessThanOrEqual(0.5);
    }),
  );
});

test('a number is never written on the other side of its whole limit', () => {
  expect(againstLimit(24.2, 24)).toBe('25');
  expect(againstLimit(24, 24)).toBe('24');
  expect(againstLimit(23.6, 24)).toBe('24');
  expect(againstLimit(25.2, 24)).toBe('25');
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 60, noNaN: true }),
      fc.integer({ min: 0, max: 60 }),
      (value, limit) => {
        const written = Number(againstLimit(value, limit));
        // A value within a billionth of a knot of its limit reaches it, as in the judgement itself.
        expect(written > limit).toBe(value > limit + 1e-9);
        expect(Math.abs(written - value)).toBeLessThanOrEqual(1);
      },
    ),
  );
});

test('decimals are as many as asked for', () => {
  expect(decimal(13.649, 1)).toBe('13.6');
  expect(decimal(-2, 1)).toBe('\u22122.0');
});

test('times are UTC, with a Z', () => {
  expect(zulu(Date.UTC(1987, 3, 5, 18, 50, 59))).toBe('1850Z');
  expect(zulu(Date.UTC(1987, 3, 5, 0, 5))).toBe('0005Z');
  expect(zulu(Date.UTC(1953, 5, 1, 23, 59))).toBe('2359Z');
  expect(utcDate(Date.UTC(1987, 3, 5, 23, 59))).toBe('5\u00a0Apr\u00a01987');
  expect(utcDate(Date.UTC(2026, 11, 31))).toBe('31\u00a0Dec\u00a02026');
});

test.each([
  [0, '0:00'],
  [11_000, '0:11'],
  [59_999, '0:59'],
  [60_000, '1:00'],
  [3_600_000, '60:00'],
  [-5000, '0:00'],
])('%i ms on the stopwatch are %s', (ms, written) => {
  expect(stopwatch(ms)).toBe(written);
});

test.each([
  [40, '40 s'],
  [90, '90 s'],
  [120, '2 min'],
  [150, '2 min 30 s'],
  [900, '15 min'],
  [3600, '60 min'],
])('%i s last %s', (seconds, written) => {
  expect(lasting(seconds).replaceAll(NO_BREAK_SPACE, ' ')).toBe(written);
});
