/**
 * Numbers as they are said on the radio, digit by digit: ICAO Annex 10, vol. II, 5.2.1.4.1. Examples
 * from memory; north is said as three six zero: FAA AIM 4-2-10.
 */

import { expect, test } from 'vitest';
import { saidDigits, saidDirection } from '../../../src/parts/spoken.en';

test.each([
  [saidDirection(100), 'one zero zero'],
  [saidDirection(5), 'zero zero five'],
  [saidDirection(0), 'three six zero'],
  [saidDirection(359.7), 'three six zero'],
  [saidDigits(70), 'seven zero'],
  [saidDigits(1010), 'one zero one zero'],
])('%s', (said, expected) => {
  expect(said).toBe(expected);
});
