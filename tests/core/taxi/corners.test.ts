import { expect, test } from 'vitest';
import { turnRadiusM } from '../../../src/core/taxi/pace';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { drawn, FREE, node, stretch } from './drawn';

test('an arc takes no more than half of the shorter of the two stretches it joins, whichever comes first', () => {
  // From the stand 600 m east, 40 m north, 600 m west, 40 m north: every corner has one short side.
  const field = drawn(
    [
      node('S', 0, -200, 'stand', { name: 'Stand 1' }),
      node('a', 600, -200),
      node('b', 600, -160),
      node('c', 0, -160),
      node('h', 0, -120, 'hold', { name: 'A1', ends: ['09'] }),
      node('r', 0, 0, 'runway'),
    ],
    [
      stretch('A', 'S', 'a', { widthM: 100 }),
      stretch('A', 'a', 'b', { widthM: 100 }),
      stretch('A', 'b', 'c', { widthM: 100 }),
      stretch('A', 'c', 'h', { widthM: 100 }),
      stretch('A', 'h', 'r'),
    ],
  );
  const { route } = findRouteOut({ field, from: 'S', end: '09', rules: FREE });
  const turns = route?.corners ?? [];
  expect(turns.map(({ turnDeg }) => Math.round(turnDeg))).toEqual([-90, -90, 90]);
  for (const corner of turns) {
    // At a right angle an arc that begins 20 m before the corner has a radius of 20 m.
    expect(turnRadiusM(corner, 3)).toBeCloseTo(20, 6);
  }
});

test('round a corner the narrower taxiway counts, and where one has no width none is known', () => {
  const widthAt = (before: number | undefined, after: number | undefined) => {
    const wide = (widthM: number | undefined) => (widthM === undefined ? {} : { widthM });
    const field = drawn(
      [
        node('S', 0, -200, 'stand', { name: 'Stand 1' }),
        node('a', 300, -200),
        node('h', 300, -60, 'hold', { name: 'A1', ends: ['09'] }),
        node('r', 300, 0, 'runway'),
      ],
      [
        stretch('A', 'S', 'a', wide(before)),
        stretch('B', 'a', 'h', wide(after)),
        stretch('B', 'h', 'r'),
      ],
    );
    return findRouteOut({ field, from: 'S', end: '09', rules: FREE }).route?.corners[0]?.widthM;
  };
  expect(widthAt(15, 23)).toBe(15);
  expect(widthAt(23, 15)).toBe(15);
  expect(widthAt(23, undefined)).toBeNull();
  expect(widthAt(undefined, 23)).toBeNull();
});
