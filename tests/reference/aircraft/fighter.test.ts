/**
 * A reheated delta of the 1970s class, made from textbook ranges: wing loading about 300 kg/m², thrust
 * over weight about 0.75 with reheat, aspect ratio 2.2. Common practice, no published source: such an
 * aircraft is rotated near 120 kt to about 12° and flies near 150 kt.
 */

import { describe, expect, test } from 'vitest';
import { speedAtLiftKt } from '../../../src/core/aircraft/aerodynamics';
import type { Performance } from '../../../src/core/aircraft/performance';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { BARE, flown, inventedAircraft, takeoffQuestion } from '../../core/aircraft/invented';

const MASS_KG = 8000;
const AREA_M2 = 26;

/**
 * Lift of a delta by E. C. Polhamus, NASA TN D-3767 (1966): K_p sin α cos² α + K_v cos α sin² α, with
 * K_p 2.4 and K_v 3.1 for the aspect ratio (read from its figures, values from memory); a sixth more
 * near the ground, and 0.12 from flaps.
 */
function deltaCl(alphaDeg: number): number {
  const alpha = (alphaDeg * Math.PI) / 180;
  const [sin, cos] = [Math.sin(alpha), Math.cos(alpha)];
  return (2.4 * sin * cos * cos + 3.1 * cos * sin * sin) * (7 / 6) + 0.12;
}

const delta: Performance = {
  ...BARE,
  thrust: {
    kind: 'jet',
    dryN: [
      [0, 40_000],
      [450, 39_000],
    ],
    reheatN: [
      [0, 59_000],
      [150, 58_000],
      [450, 64_000],
    ],
    lightUpS: 0,
    idleN: 1500,
  },
  wing: {
    areaM2: AREA_M2,
    clMax: { takeoff: 1.05, landing: 1.1 },
    ground: { alphaDeg: 0, cl: 0.12, cd: 0.045 },
    rotated: { alphaDeg: 12, cd: 0.18 },
    rollout: { cl: 0.1, cd: 0.09 },
    cleanCd: 0.017,
    gearCd: 0.02,
    flapsCd: 0.012,
    flapsCl: 0.12,
    induced: 0.2,
  },
  rolling: { dry: 0.03, wet: 0.03, contaminated: 0.06 },
  climbShare: 0.25,
};

const aircraft = inventedAircraft(delta, {
  engine: 'jet with reheat',
  masses: {
    emptyKg: 5500,
    usualTakeoffKg: MASS_KG,
    maxTakeoffKg: 9500,
    usualLandingKg: 6200,
    maxLandingKg: 7000,
  },
  limits: { ...inventedAircraft().limits, gearKt: 270, flapsKt: 300 },
  takeoff: { rotateKt: 120, rotateTo: '12°', liftOffKt: 150, runM: 600 },
  climb: {
    gearUpByKt: 250,
    flapsUpByKt: 280,
    reheatOffKt: 350,
    speedKt: [400, 450],
    pitchDeg: [10, 20],
  },
});

const answer = flown(takeoff(takeoffQuestion(aircraft, { gatesKt: [100] })));

describe('a delta of that class', () => {
  test('carries its weight at 12° near 150 kt', () => {
    expect(Math.abs(speedAtLiftKt(MASS_KG, AREA_M2, deltaCl(12)) - 150)).toBeLessThan(8);
  });

  test('leaves the ground in 10 to 18 s after 400 to 800 m', () => {
    expect(answer.run.runS).toBeGreaterThan(10);
    expect(answer.run.runS).toBeLessThan(18);
    expect(answer.run.runM).toBeGreaterThan(400);
    expect(answer.run.runM).toBeLessThan(800);
  });

  test('takes 2 to 4 s from rotation to lift-off: 12° at 3 to 6° a second', () => {
    const between = answer.liftOff.s - answer.rotation.s;
    expect(between).toBeGreaterThan(2);
    expect(between).toBeLessThan(4);
  });

  test('is past 300 kt within 25 to 45 s of brake release, so gear and flaps have little time', () => {
    const flapsS = answer.limits.flaps.fromLiftOffS ?? 0;
    expect(answer.run.runS + flapsS).toBeGreaterThan(25);
    expect(answer.run.runS + flapsS).toBeLessThan(45);
    expect(answer.limits.gear?.fromLiftOffS).toBeLessThan(flapsS);
  });
});
