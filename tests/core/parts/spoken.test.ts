/**
 * Numbers as they are said on the radio: digit by digit, whole hundreds and thousands as such.
 * ICAO Annex 10, vol. II, 5.2.1.4.1 and its examples; letters from its figure 5-1. Examples from memory.
 */

import { expect, test } from 'vitest';
import {
  saidCallsign,
  saidDigits,
  saidDirection,
  saidEach,
  saidHundreds,
  saidRunway,
} from '../../../src/parts/spoken.en';

test.each([
  [saidRunway('27'), 'two seven'],
  [saidRunway('09L'), 'zero nine left'],
  [saidDirection(100), 'one zero zero'],
  [saidDirection(5), 'zero zero five'],
  // North is said as three six zero: FAA AIM 4-2-10.
  [saidDirection(0), 'three six zero'],
  [saidDirection(359.7), 'three six zero'],
  [saidDigits(70), 'seven zero'],
  [saidDigits(1010), 'one zero one zero'],
  [saidEach('118.1'), 'one one eight decimal one'],
  [saidHundreds(1000), 'one thousand'],
  [saidHundreds(700), 'seven hundred'],
  [saidHundreds(25_000), 'two five thousand'],
  [saidCallsign('X-AB'), 'X-ray Alfa Bravo'],
])('%s', (said, expected) => {
  expect(said).toBe(expected);
});
