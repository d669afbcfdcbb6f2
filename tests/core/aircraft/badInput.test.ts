/** What cannot be answered is answered with a code, at once. */

import { describe, expect, test } from 'vitest';
import { landing } from '../../../src/core/aircraft/landing';
import type {
  CannotCode,
  LandingQuestion,
  Performance,
  TakeoffQuestion,
} from '../../../src/core/aircraft/performance';
import { runNeededM, takeoff } from '../../../src/core/aircraft/takeoff';
import { BARE, inventedAircraft, landingQuestion, takeoffQuestion } from './invented';

const { performance: _, ...plain } = inventedAircraft();

const weak = (newtons: number): Performance => ({
  ...BARE,
  thrust: {
    kind: 'jet',
    dryN: [
      [0, newtons],
      [600, newtons],
    ],
    idleN: 0,
  },
});

describe('a take-off', () => {
  test.each<readonly [Partial<TakeoffQuestion>, CannotCode]>([
    [{ aircraft: plain }, 'no-performance'],
    [{ massKg: 12_001 }, 'over-mass'],
    [{ massKg: 5999 }, 'under-empty'],
    [{ fuelKg: 0 }, 'no-fuel'],
    [{ slopePercent: -11 }, 'slope-unreasonable'],
    [{ slopePercent: 45 }, 'slope-unreasonable'],
    [{ headwindKt: 90 }, 'wind-unreasonable'],
    [{ headwindKt: -81 }, 'wind-unreasonable'],
    [{ air: { pressureAltitudeFt: 30_000, temperatureC: 15 } }, 'air-unreasonable'],
    [{ air: { pressureAltitudeFt: 0, temperatureC: -100 } }, 'air-unreasonable'],
    [{ massKg: Number.NaN }, 'not-a-number'],
    [{ headwindKt: Number.POSITIVE_INFINITY }, 'not-a-number'],
    [{ rollsFromM: -1 }, 'not-a-number'],
    [{ gatesKt: [80, Number.NaN] }, 'not-a-number'],
    [{ runway: { toraM: 1000, todaM: Number.NaN, asdaM: 1000 } }, 'not-a-number'],
    [{ aircraft: inventedAircraft(weak(0)) }, 'never-lifts-off'],
    // Uphill steeper than its thrust: 1.5 kN against 2 % of 98 kN.
    [{ aircraft: inventedAircraft(weak(1500)), slopePercent: 2 }, 'never-lifts-off'],
    // 0.2 m/s²: it would fly after 13 km.
    [{ aircraft: inventedAircraft(weak(2000)) }, 'never-lifts-off'],
  ])('with %j cannot be worked out: %s', (other, because) => {
    const question = takeoffQuestion(undefined, other);
    const start = performance.now();
    expect(takeoff(question)).toEqual({ kind: 'cannot', because });
    expect(performance.now() - start).toBeLessThan(50);
    expect(runNeededM(question)).toBeNull();
  });

  test('of an aircraft whose drag stops it from getting fast enough cannot be worked out', () => {
    // 40 kN is the drag of 25 m² × 0.9 at 53 m/s, and it is to fly at 72.
    const draggy = { ...BARE, wing: { ...BARE.wing, ground: { alphaDeg: 0, cl: 0, cd: 0.9 } } };
    expect(takeoff(takeoffQuestion(inventedAircraft(draggy)))).toEqual({
      kind: 'cannot',
      because: 'never-lifts-off',
    });
  });

  test('of an aircraft that will not climb has a run, and no way to 50 ft', () => {
    const heavy = { ...BARE, wing: { ...BARE.wing, induced: 1 } };
    const answer = takeoff(takeoffQuestion(inventedAircraft(heavy)));
    expect(answer).toMatchObject({
      kind: 'takeoff',
      to50ftM: { value: null, because: 'cannot-climb' },
      left: { todaM: { value: null, because: 'cannot-climb' } },
    });
  });

  test('into more wind than it flies at takes no run', () => {
    const light = inventedAircraft(BARE, {
      takeoff: { rotateKt: 30, rotateTo: 'up', liftOffKt: 35, runM: 40 },
    });
    expect(takeoff(takeoffQuestion(light, { headwindKt: 50 }))).toMatchObject({
      kind: 'takeoff',
      run: { runM: 0, runS: 0 },
      stop: { distanceM: 0 },
    });
  });
});

describe('a landing', () => {
  test.each<readonly [Partial<LandingQuestion>, CannotCode]>([
    [{ aircraft: plain }, 'no-performance'],
    [{ massKg: 10_001 }, 'over-mass'],
    [{ gustSpreadKt: -1 }, 'not-a-number'],
    [{ slopePercent: 10.5 }, 'slope-unreasonable'],
    [
      {
        aircraft: inventedAircraft({
          ...BARE,
          brakes: { friction: { dry: 0.3, wet: 0.2, contaminated: 0.02 }, delayS: 0 },
        }),
        surface: 'contaminated',
        slopePercent: -3,
      },
      'never-stops',
    ],
  ])('with %j cannot be worked out: %s', (other, because) => {
    expect(landing(landingQuestion(undefined, other))).toEqual({ kind: 'cannot', because });
  });
});
