/** Sticks and throttles are never still, and their contacts chatter: none of that is a press. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { outBy, readPart, UNSEEN } from '../../../src/device/padParts';

const FRAME_MS = 1000 / 60;

/** How often a part went down, read once a frame. */
function pressesIn(values: readonly number[]): number {
  let part = UNSEEN;
  let presses = 0;
  values.forEach((value, frame) => {
    const now = readPart(part, value, frame * FRAME_MS);
    if (now.down && !part.down) presses += 1;
    part = now;
  });
  return presses;
}

const rest = [0, 0, 0];
const frames = (value: number, count: number) => Array.from({ length: count }, () => value);

describe('a part of a pad', () => {
  test('is pressed once by each deflection that lasts', () => {
    const stroke = [...frames(1, 12), ...frames(0, 12)];
    expect(pressesIn([...rest, ...stroke, ...stroke, ...stroke])).toBe(3);
  });

  test('is not pressed by noise that stays within the dead band', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 0.59, noNaN: true })), (noise) => {
        expect(pressesIn([...rest, ...noise])).toBe(0);
      }),
    );
  });

  test('is pressed once by a deflection that chatters between the thresholds', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0.41, max: 1, noNaN: true })), (chatter) => {
        expect(pressesIn([...rest, ...frames(1, 4), ...chatter, ...frames(0, 6)])).toBe(1);
      }),
    );
  });

  test('is not pressed by spikes of a single frame', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom([1, 0], [1, 0, 0])), (spikes) => {
        expect(pressesIn([...rest, ...spikes.flat(), 0])).toBe(0);
      }),
    );
  });

  test('at its stop when it is plugged in counts only after it was moved', () => {
    expect(pressesIn(frames(1, 30))).toBe(0);
    expect(pressesIn([...frames(1, 30), ...frames(0, 3), ...frames(1, 6)])).toBe(1);
  });
});

describe('an axis', () => {
  test('is out one way at a time', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (value) => {
        const [up, down] = [outBy(value, '+'), outBy(value, '-')];
        expect(Math.min(up, down)).toBe(0);
        expect(up - down).toBeCloseTo(value, 12);
      }),
    );
  });

  test('beyond its ends is a hat at rest, and says nothing', () => {
    // Hats that come as an axis rest at 9/7: W3C Gamepad mappings differ; common practice, no published source.
    expect([outBy(9 / 7, '+'), outBy(Number.NaN, '+')]).toEqual([0, 0]);
  });
});
