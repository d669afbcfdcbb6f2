/** The largest letters that fit are found, whatever the room. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { largestThatFits } from '../../../src/parts/fit/largestThatFits';

test('what is found fits, and a pixel more does not', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 12, max: 600, noNaN: true }),
      fc.double({ min: 12, max: 600, noNaN: true }),
      (room, most) => {
        const fits = (px: number) => px <= room;
        const found = largestThatFits(fits, 12, most);
        expect(fits(found)).toBe(true);
        expect(found).toBeLessThanOrEqual(most);
        expect(found === most || !fits(found + 1)).toBe(true);
      },
    ),
  );
});

test('where nothing fits, it is the least', () => {
  expect(largestThatFits(() => false, 12, 100)).toBe(12);
});
