/** What a take-off asks of the lengths declared for an end. */

import { expect, test } from 'vitest';
import { takeoffNeeds } from '../../../src/core/aircraft/needs';
import { needsNothing } from '../../../src/core/runway/needs';
import { inventedAircraft, takeoffQuestion } from './invented';

const MPS = 1852 / 3600;

const lengths = (rollsFromM: number, factor: number) => {
  const needs = takeoffNeeds(takeoffQuestion(inventedAircraft(), { rollsFromM }), factor);
  if (needsNothing(needs)) throw new Error(needs.cannot);
  return needs.lengthsM;
};

test('a roll that begins 200 m further on needs 200 m more of TORA and of TODA, and the factor leaves those alone', () => {
  const whole = lengths(0, 1.15);
  const from = lengths(200, 1.15);
  expect(from.tora).toBeCloseTo((whole.tora ?? 0) + 200, 6);
  expect(from.toda).toBeCloseTo((whole.toda ?? 0) + 200, 6);
  // Without drag and friction the run is V² / 2 a: 140 kt at 4 m/s².
  expect(from.tora).toBeCloseTo(200 + (1.15 * (140 * MPS) ** 2) / 8, 3);
});
