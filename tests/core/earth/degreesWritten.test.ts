/** Places written out in degrees, minutes and seconds, and read back. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degreesWritten } from '../../../src/core/earth/degreesWritten';
import { readPlaces } from '../../../src/core/earth/readPlaces';

// By hand: 0.95° is 57′, 0.55° is 33′, 0.00125° is 4.5″.
test.each([
  [62.95, -10.55, '62°57′00.00″N 010°33′00.00″W'],
  [-0.00125, 179.00125, '00°00′04.50″S 179°00′04.50″E'],
  // A hair below 60″ is the next minute.
  [9.99999999, 0, '10°00′00.00″N 000°00′00.00″E'],
  [-0.000000001, -0, '00°00′00.00″N 000°00′00.00″E'],
])('%s, %s', (latDeg, lonDeg, text) => {
  expect(degreesWritten({ latDeg, lonDeg })).toBe(text);
});

test('what is written is read back to half a hundredth of a second', () => {
  const deg = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  fc.assert(
    fc.property(deg(90), deg(180), (latDeg, lonDeg) => {
      const [place] = readPlaces(degreesWritten({ latDeg, lonDeg })).places ?? [];
      expect(Math.abs((place?.latDeg ?? 99) - latDeg) * 3600).toBeLessThan(0.0051);
      expect(Math.abs((place?.lonDeg ?? 999) - lonDeg) * 3600).toBeLessThan(0.0051);
    }),
  );
});
