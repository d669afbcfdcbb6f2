import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  armsAt,
  isInEnvelope,
  isSimple,
  type LoadEnvelope,
} from '../../../src/core/aircraft/loadEnvelope';

/** As a tourer's often looks: a straight aft limit, a forward one that moves aft as it gets heavier. */
const SLOPED: LoadEnvelope = [
  [1.9, 700],
  [1.9, 900],
  [2, 1100],
  [2.15, 1100],
  [2.15, 700],
];

/** A corner cut into the aft side. */
const NOTCHED: LoadEnvelope = [
  [0, 0],
  [0, 10],
  [10, 10],
  [5, 5],
  [10, 0],
];

describe('a centre of gravity', () => {
  test.each([
    ['in the middle', SLOPED, 2, 900, true],
    ['on the forward limit', SLOPED, 1.9, 800, true],
    ['on the sloping limit, half way', SLOPED, 1.95, 1000, true],
    ['a millimetre ahead of it', SLOPED, 1.949, 1000, false],
    ['on the aft limit', SLOPED, 2.15, 1000, true],
    ['a millimetre behind it', SLOPED, 2.151, 1000, false],
    ['at the greatest mass', SLOPED, 2.1, 1100, true],
    ['a kilogram above it', SLOPED, 2.1, 1101, false],
    ['below the least mass', SLOPED, 2, 699, false],
    ['on a corner', SLOPED, 2, 1100, true],
    ['level with a corner, outside', SLOPED, 1.8, 900, false],
    ['in a notch', NOTCHED, 8, 5, false],
    ['ahead of a notch, level with its corner', NOTCHED, 4, 5, true],
    ['above a notch', NOTCHED, 8, 9, true],
  ])('%s', (_, envelope, armM, massKg, within) => {
    expect(isInEnvelope(envelope, [armM, massKg])).toBe(within);
  });

  test('lies in a triangle as often as its three weights say so, in either order of the corners', () => {
    const unit = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(unit, unit, unit, fc.integer({ min: 0, max: 2 }), (a, b, c, out) => {
        const corners: LoadEnvelope = [
          [1, 500],
          [3, 700],
          [2, 1500],
        ];
        // Any mix of the corners with positive shares lies within; with one share turned negative, outside.
        const mixed = (shares: readonly number[]) => {
          const all = shares.reduce((sum, share) => sum + share, 0);
          const of = (axis: 0 | 1) =>
            corners.reduce((sum, corner, i) => sum + corner[axis] * (shares[i] ?? 0), 0) / all;
          return [of(0), of(1)] as const;
        };
        const shares = [a, b, c];
        expect(isInEnvelope(corners, mixed(shares))).toBe(true);
        expect(isInEnvelope(corners.toReversed(), mixed(shares))).toBe(true);
        const outside = shares.map((share, i) => (i === out ? -share : share + 1));
        expect(isInEnvelope(corners, mixed(outside))).toBe(false);
      }),
    );
  });
});

describe('at a mass', () => {
  test.each([
    [800, [1.9, 2.15]],
    [1000, [1.95, 2.15]],
    [1100, [2, 2.15]],
    [1101, null],
    [699, null],
  ])('of %s kg the limits are %j m', (massKg, limits) => {
    const arms = armsAt(SLOPED, massKg);
    if (limits === null) expect(arms).toBeNull();
    else expect(arms).toEqual(limits.map((armM) => expect.closeTo(armM, 9)));
  });
});

describe('an envelope', () => {
  test.each<[string, LoadEnvelope, boolean]>([
    ['with a slope', SLOPED, true],
    ['with a notch', NOTCHED, true],
    [
      'with a corner on a straight side',
      [...SLOPED.slice(0, 1), [1.9, 800], ...SLOPED.slice(1)],
      true,
    ],
    [
      'like a bow tie',
      [
        [0, 0],
        [2, 2],
        [2, 0],
        [0, 2],
      ],
      false,
    ],
    [
      'that holds nothing',
      [
        [0, 0],
        [1, 1],
        [2, 2],
      ],
      false,
    ],
    [
      'that goes out and back',
      [
        [0, 0],
        [2, 0],
        [1, 0],
        [1, 2],
      ],
      false,
    ],
    [
      'with a corner twice',
      [
        [0, 0],
        [0, 0],
        [2, 0],
        [1, 2],
      ],
      false,
    ],
    [
      'that touches itself',
      [
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
      ],
      false,
    ],
  ])('%s is simple or not', (_, envelope, simple) => {
    expect(isSimple(envelope)).toBe(simple);
    expect(isSimple(envelope.toReversed())).toBe(simple);
  });
});
