/** Other ways to the same holding point. */

import { expect, test } from 'vitest';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { drawn, FREE, node, stretch } from './drawn';

/** From S to the holding point h by A, 1000 m, or by way of B, `longerM` more. */
function besideA(longerM: number) {
  // Out and back in two legs of half the length each, so far off the straight line between the ends.
  const offM = Math.sqrt(((1000 + longerM) / 2) ** 2 - 500 ** 2);
  const field = drawn(
    [
      node('S', 0, -60, 'stand', { name: 'Stand 1' }),
      node('b', 500, -60 - offM),
      node('h', 1000, -60, 'hold', { name: 'A1', ends: ['27'] }),
      node('r', 1000, 0, 'runway', { ends: ['27'] }),
    ],
    [
      stretch('A', 'S', 'h'),
      stretch('B', 'S', 'b'),
      stretch('B', 'b', 'h'),
      stretch('A', 'h', 'r'),
    ],
  );
  return findRouteOut({ field, from: 'S', end: '27', rules: FREE }).alternatives;
}

test('a way a tenth longer than the shortest is offered, and one longer than that is not', () => {
  // Common practice, no published source.
  expect(besideA(95).map(({ lengthM }) => Math.round(lengthM))).toEqual([1095]);
  expect(besideA(105)).toEqual([]);
});

test('no way is offered that rolls along more of a runway', () => {
  // Only the runway leads to h: on to it by C and 495 m along it, or by D, 30 m and 30 m more, which
  // is 755 m against 695 m and less than a tenth longer.
  const field = drawn(
    [
      node('S', 500, -200, 'stand', { name: 'Stand 1' }),
      node('d', 470, -200),
      node('rC', 500, 0, 'runway'),
      node('rD', 470, 0, 'runway'),
      node('r', 995, 0, 'runway', { ends: ['27'] }),
      node('h', 995, 60, 'hold', { name: 'E1', ends: ['27'] }),
    ],
    [
      stretch('C', 'S', 'rC'),
      stretch('D', 'S', 'd', { oneWay: true }),
      stretch('D', 'd', 'rD'),
      stretch('09/27', 'rD', 'rC', { on: 'runway' }),
      stretch('09/27', 'rC', 'r', { on: 'runway' }),
      stretch('E', 'r', 'h'),
    ],
  );
  const way = findRouteOut({ field, from: 'S', end: '27', rules: FREE });
  expect(way.route?.runwayM).toBeCloseTo(495, 9);
  expect(way.alternatives).toEqual([]);
});
