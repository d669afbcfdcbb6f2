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
    // V² / 2 a from 0.9 of the approach: 65.4 m/s at 0.3 g.
    landing: { approachKt: 141.3, runM: 727 },
    takeoff: { rotateKt: 135, rotateTo: '10°', liftOffKt: 140, runM: 648 },
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
      'a landing run that the brakes do not give',
      { brakes: { friction: { dry: 0.35, wet: 0.2, contaminated: 0.1 } } },
      'landing.runM: landing-run-not-of-book',
    ],
    [
      // Stall √(2 W / (ρ₀ S C_L)): 69.9 m/s, 136 kt; 1.05 of it is 142.7.
      'rotation below 1.05 of the stall',
      { wing: { clMax: { takeoff: 1.31, landing: 1.6 } } },
      'takeoff.rotateKt: rotates-below-stall',
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

test('a refusal has both figures', () => {
  // The stall at 10 t on 25 m² with 1.5: 65.3 m/s, 127 kt, and 1.05 of it 133.4.
  const slow = { ...changed(), takeoff: { ...changed().takeoff, rotateKt: 120 } };
  const [fault] = performanceFaults(slow);
  expect(fault?.code).toBe('rotates-below-stall');
  expect(fault?.values?.map((kt) => Math.round(kt))).toEqual([120, 133]);
});

test('a twin that rotates below 1.05 of its minimum control speed is refused', () => {
  // CS 25.107 (value from memory): 1.05 of 130 kt is 136.5.
  const one = changed();
  const oneEngineOut = { dragAreaM2: 0.3, minimumControlKt: 130 };
  const performance = { ...BARE, ...one.performance, oneEngineOut };
  const [fault] = performanceFaults({ ...one, performance });
  expect(fault).toMatchObject({ path: ['takeoff', 'rotateKt'], code: 'rotates-below-control' });
});
