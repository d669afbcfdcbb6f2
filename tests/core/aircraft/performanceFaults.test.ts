/** Physics that contradicts itself is refused, with the place. */

import { describe, expect, test } from 'vitest';
import type { Performance } from '../../../src/core/aircraft/performance';
import { performanceFaults } from '../../../src/core/aircraft/performanceFaults';
import { BARE, inventedAircraft } from './invented';

type Changes = { readonly [K in keyof Performance]?: Partial<Performance[K]> };

/** The invented aircraft, whose figures hold together, with some of its physics changed. */
function changed(changes: Changes = {}) {
  const merged = Object.fromEntries(
    Object.entries(BARE).map(([key, value]) => {
      const change = changes[key as keyof Performance];
      return [key, typeof value === 'object' ? { ...value, ...Object(change) } : value];
    }),
  ) as Performance;
  // 1.3 of the stall at 8 t; V² / 2 a.
  return inventedAircraft(merged, {
    landing: { approachKt: 141.3, runM: 600 },
    takeoff: { rotateKt: 120, rotateTo: '10°', liftOffKt: 140, runM: 648 },
  });
}

const faults = (changes: Changes) =>
  performanceFaults(changed(changes)).map(({ path, code }) => `${path.join('.')}: ${code}`);

const curve = (...points: readonly (readonly [number, number])[]) => ({
  dryN: points.map(([kt, n]): [number, number] => [kt, n]),
});

test('figures that hold together are taken', () => {
  expect(faults({})).toEqual([]);
});

test('an aircraft without physics has no faults in it', () => {
  const { performance: _, ...plain } = inventedAircraft();
  expect(performanceFaults(plain)).toEqual([]);
});

describe('refused is', () => {
  test.each<readonly [string, Changes, string]>([
    [
      'a propeller on a jet',
      {
        thrust: {
          kind: 'propeller',
          fullN: [
            [0, 40_000],
            [600, 40_000],
          ],
        },
      },
      'performance.thrust: thrust-not-of-engine',
    ],
    [
      'thrust from a speed above 0',
      { thrust: curve([10, 40_000], [600, 40_000]) },
      'performance.thrust.dryN.0: thrust-out-of-order',
    ],
    [
      'thrust at the same speed twice',
      { thrust: curve([0, 40_000], [200, 40_000], [200, 39_000], [600, 38_000]) },
      'performance.thrust.dryN.2: thrust-out-of-order',
    ],
    [
      'thrust that ends before the climb',
      { thrust: curve([0, 40_000], [290, 40_000]) },
      'performance.thrust.dryN.1: thrust-too-short',
    ],
    [
      'a wing that stalls at lift-off',
      { wing: { clMax: { takeoff: 1, landing: 1.6 } } },
      'performance.wing.clMax.takeoff: stall-above-lift-off',
    ],
    [
      'a wing too good for the approach speed',
      { wing: { clMax: { takeoff: 1.5, landing: 1.9 } } },
      'performance.wing.clMax.landing: approach-not-of-wing',
    ],
    [
      'a nose that goes down to lift off',
      { wing: { rotated: { alphaDeg: 0, cd: 0.1 } } },
      'performance.wing.rotated.alphaDeg: rotates-downwards',
    ],
    [
      'brakes that like water',
      { brakes: { friction: { dry: 0.3, wet: 0.35, contaminated: 0.1 } } },
      'performance.brakes.friction.wet: braking-grows',
    ],
    [
      'drag of a gear that stays down',
      { wing: { gearCd: 0.02 } },
      'performance.wing.gearCd: gear-without-limit',
    ],
    [
      'a centre of gravity ahead of the nose wheel',
      { gear: { cgToMainM: 5 } },
      'performance.gear.cgToMainM: gear-tips',
    ],
    [
      'a run that the thrust does not give',
      { thrust: curve([0, 36_000], [600, 36_000]) },
      'takeoff.runM: run-not-of-book',
    ],
    [
      'an aircraft that never lifts off',
      { thrust: curve([0, 100], [600, 100]) },
      'takeoff.runM: run-not-of-book',
    ],
  ])('%s', (_, changes, fault) => {
    expect(faults(changes)).toEqual([fault]);
  });
});
