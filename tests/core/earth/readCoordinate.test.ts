/** Coordinates as they are written. The minutes and seconds are worked out by hand: 57′ is 0.95°, 33′ is 0.55°. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCoordinate } from '../../../src/core/earth/readCoordinate';

test.each([
  ['62.95', 62.95],
  ['62,95', 62.95],
  ['-62.95', -62.95],
  ['−62.95', -62.95],
  ['62.95 S', -62.95],
  ['62 57 N', 62.95],
  ['N62 57.0', 62.95],
  ['62°57\'00"N', 62.95],
  ['62:57:36 s', -62.96],
  ['-62 57 36', -62.96],
  // The closed form, as ICAO Annex 4 and AIPs print it: degrees, minutes and seconds without spaces.
  ['625700N', 62.95],
  ['6257N', 62.95],
])('latitude %s', (text, deg) => {
  expect(readCoordinate(text, 'lat')).toBeCloseTo(deg, 9);
});

test.each([
  ['-10.55', -10.55],
  ['010 33 W', -10.55],
  ['0103300W', -10.55],
  ['E 179 59 59.9', 179 + 59 / 60 + 59.9 / 3600],
])('longitude %s', (text, deg) => {
  expect(readCoordinate(text, 'lon')).toBeCloseTo(deg, 9);
});

describe('refused', () => {
  test.each([
    '',
    'abc',
    '91',
    '62 60 N',
    '62 57 60',
    '62.5 30',
    '62 5.5 30',
    '62 E',
    '-62 N',
    'NN62',
    '1 2 3 4',
  ])('latitude %s', (text) => {
    expect(readCoordinate(text, 'lat')).toBeNull();
  });
  test('longitude beyond 180', () => {
    expect(readCoordinate('180.1', 'lon')).toBeNull();
    expect(readCoordinate('180', 'lon')).toBe(180);
  });
});

test('any text is read or refused, and what is read is a coordinate', () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom('lat' as const, 'lon' as const), (text, axis) => {
      const deg = readCoordinate(text, axis);
      expect(deg === null || Math.abs(deg) <= (axis === 'lat' ? 90 : 180)).toBe(true);
    }),
  );
});

test('a number of degrees written out is read back', () => {
  fc.assert(
    fc.property(fc.double({ min: -90, max: 90, noNaN: true }), (deg) => {
      expect(readCoordinate(deg.toFixed(7), 'lat')).toBeCloseTo(deg, 6);
    }),
  );
});
