/** The last speed to stop from and what binds it, and the mark beside the runway. */

import { describe, expect, test } from 'vitest';
import type { Performance, TakeoffQuestion } from '../../../src/core/aircraft/performance';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { BARE, flown, inventedAircraft, takeoffQuestion } from './invented';

const MPS = 1852 / 3600;
const G = 9.80665;

const on = (lengthM: number, other: Partial<TakeoffQuestion> = {}, aircraft = inventedAircraft()) =>
  flown(
    takeoff(
      takeoffQuestion(aircraft, {
        runway: { toraM: lengthM, todaM: lengthM, asdaM: lengthM },
        ...other,
      }),
    ),
  );

describe('the last speed to stop from', () => {
  test('is where V² / 2 a, two seconds and V² / 2 b fill the field', () => {
    const { stop } = on(900);
    const v = stop.lastKt * MPS;
    expect(stop.boundBy).toBe('field');
    expect(v ** 2 / 8 + 2 * v + v ** 2 / (2 * 0.3 * G)).toBeCloseTo(900, 0);
    expect(stop.distanceM).toBeCloseTo(900, 0);
  });

  test('is found over the ground, into wind and before it: the two seconds as well', () => {
    // 20 kt of it move with the air: over the ground u² / 2 a + 2 u + u² / 2 b fill the field.
    for (const headwindKt of [20, -10]) {
      const { stop } = on(700, { headwindKt });
      const u = (stop.lastKt - headwindKt) * MPS;
      expect(stop.boundBy).toBe('field');
      expect(u ** 2 / 8 + 2 * u + u ** 2 / (2 * 0.3 * G)).toBeCloseTo(700, 0);
    }
  });

  test('fits field and brakes, and never misses by what it was not looked for more closely', () => {
    const brakes: Performance['brakes'] = { ...BARE.brakes, maxMJ: 12 };
    const braked = inventedAircraft({ ...BARE, brakes });
    for (let lengthM = 500; lengthM <= 1300; lengthM += 37) {
      expect(on(lengthM).left.asdaM).toBeGreaterThanOrEqual(0);
      expect(on(3000, { massKg: 8000 + lengthM }, braked).stop.brakeMJ).toBeLessThanOrEqual(12);
    }
  });

  test('is rotation on a long runway', () => {
    const { stop } = on(3000);
    expect(stop).toMatchObject({ boundBy: 'rotation', heldS: 2 });
    expect(stop.lastKt).toBeCloseTo(120, 9);
    expect(stop.allowsKt.field).toBeNull();
  });

  test('is where the brakes take all they can: ½ m V² where nothing else slows it', () => {
    const brakes: Performance['brakes'] = { ...BARE.brakes, maxMJ: 12 };
    const { stop } = on(3000, {}, inventedAircraft({ ...BARE, brakes }));
    expect(stop.boundBy).toBe('brake-energy');
    expect(0.5 * 10_000 * (stop.lastKt * MPS) ** 2).toBeCloseTo(12e6, -4);
    expect(stop.brakeMJ).toBeCloseTo(12, 1);
  });

  test('is the speed of the tyres over the ground', () => {
    const limits = { ...inventedAircraft().limits, tyreKt: 100 };
    const { stop } = on(3000, { headwindKt: 10 }, inventedAircraft(BARE, { limits }));
    expect(stop.boundBy).toBe('tyres');
    expect(stop.lastKt).toBeCloseTo(110, 6);
  });

  test('is the speed of the tyres without the parachute as well', () => {
    const limits = { ...inventedAircraft().limits, tyreKt: 100 };
    const parachute = { dragAreaM2: 12, maxKt: 130 };
    const chuted = inventedAircraft({ ...BARE, parachute }, { limits });
    expect(on(3000, { headwindKt: 10 }, chuted).stop.bare?.lastKt).toBeCloseTo(110, 6);
  });

  test('is the speed of a parachute that is counted on', () => {
    const parachute = { dragAreaM2: 12, maxKt: 105 };
    const icy = { surface: 'contaminated' } as const;
    const without = on(1350, icy);
    const { stop } = on(1350, icy, inventedAircraft({ ...BARE, parachute }));
    expect(without.stop.lastKt).toBeLessThan(100);
    expect(stop.boundBy).toBe('parachute');
    expect(stop.lastKt).toBeCloseTo(105, 6);
  });

  test('leaves the parachute alone where brakes stop it from a higher speed', () => {
    const parachute = { dragAreaM2: 12, maxKt: 60 };
    const { stop } = on(900, {}, inventedAircraft({ ...BARE, parachute }));
    expect(stop.withParachute).toBe(false);
    expect(stop.lastKt).toBeCloseTo(on(900).stop.lastKt, 6);
  });

  test('is nothing where there is no runway left to roll on', () => {
    expect(on(500, { rollsFromM: 600 }).stop.lastKt).toBe(0);
  });
});

describe('the mark', () => {
  test('expects the speed of √(2 a s) there', () => {
    const { check } = on(1500, { checkMark: { atM: 300 } }).check;
    expect(check?.expectedKt).toBeCloseTo(Math.sqrt(2 * 4 * 300) / MPS, 2);
  });

  test('least allows √(s / TORA) of the lift-off speed, where nothing but TORA counts', () => {
    // With a constant force V² grows with the distance, whatever the force.
    const check = on(1500, { checkMark: { atM: 300 } }).check.check;
    expect(check?.leastForRunKt).toBeCloseTo(140 * Math.sqrt(300 / 1500), 1);
  });

  test('least allows a stop from the last speed, which fits ASDA with so little thrust', () => {
    const check = on(1500, { checkMark: { atM: 300 } }).check.check;
    const v = 120 * MPS;
    const reachedM = 1500 - 2 * v - v ** 2 / (2 * 0.3 * G);
    expect(check?.leastForStopKt).toBeCloseTo(120 * Math.sqrt(300 / reachedM), 1);
  });

  test('least allows 5 kt less than expected in the wind as it is, where what just fits is less', () => {
    // Common practice, no published source.
    const calm = on(3000, { checkMark: { atM: 300 } }).check.check;
    expect(calm?.leastKt).toBeCloseTo((calm?.expectedKt ?? 0) - 5, 6);
    expect(calm?.boundBy).toBe('expected');
    expect(calm?.leastForRunKt).toBeLessThan((calm?.expectedKt ?? 0) - 5);
    // Planned with half of the headwind, it still asks for what the whole of it lets expect.
    const windy = on(3000, { checkMark: { atM: 300, expectedKt: 112 } }).check.check;
    expect(windy?.leastKt).toBe(107);
    expect(windy?.boundBy).toBe('expected');
  });

  test('asks for nothing where the aircraft is faster than it can be stopped from', () => {
    const short = on(900, { checkMark: { atM: 500 } });
    expect(short.check).toEqual({ check: null, because: 'mark-beyond-stop' });
  });

  test('allows nothing less than expected where the field binds the last speed', () => {
    const check = on(900, { checkMark: { atM: 300 } }).check.check;
    expect(check?.leastForStopKt).toBeCloseTo(check?.expectedKt ?? 0, 1);
  });

  test('allows less where the stop is to be begun earlier', () => {
    const check = on(900, { checkMark: { atM: 300, stopFromKt: 85 } }).check.check;
    expect(check?.leastForStopKt).toBeLessThan((check?.expectedKt ?? 0) - 3);
  });

  test('asks for no more than can be stopped from, whatever the wind lets expect', () => {
    // 5 kt less than 130 kt would be 125 kt, and the last speed to stop from is rotation, 120 kt.
    const check = on(3000, { checkMark: { atM: 300, expectedKt: 130 } }).check.check;
    expect(check?.leastKt).toBeCloseTo(120, 6);
  });

  test('keeps a stop from the last speed there is, where more is asked for', () => {
    // On 900 m it stops from some 92 kt at most: (92 kt)² / 8 + 2 s × 92 kt + (92 kt)² / 5.9 m.
    const last = on(900, { checkMark: { atM: 300 } }).check.check;
    const beyond = on(900, { checkMark: { atM: 300, stopFromKt: 110 } }).check.check;
    expect(last).not.toBeNull();
    expect(beyond).toEqual(last);
  });

  test('lies so much nearer where the roll begins further on', () => {
    const check = on(1500, { checkMark: { atM: 300 }, rollsFromM: 100 }).check.check;
    expect(check?.distanceM).toBe(200);
    expect(check?.expectedKt).toBeCloseTo(Math.sqrt(2 * 4 * 200) / MPS, 2);
  });

  test.each([
    [1500, { checkMark: { atM: 50 }, rollsFromM: 60 }, 'mark-behind'],
    [1500, { checkMark: { atM: 1400 } }, 'mark-beyond-run'],
    [500, { checkMark: { atM: 300 } }, 'runway-too-short'],
    [1500, {}, 'no-mark'],
  ] as const)('of %i m asked for with %j has no speed: %s', (lengthM, other, because) => {
    expect(on(lengthM, other).check).toEqual({ check: null, because });
  });
});

describe('a twin that loses an engine', () => {
  const twin = inventedAircraft({
    ...BARE,
    oneEngineOut: { dragAreaM2: 0, minimumControlKt: 90 },
  });

  test('goes on from where V² / 2 a and the rest at half the thrust fill TORA', () => {
    const { goOn } = on(3000, { runway: { toraM: 1000, todaM: 3000, asdaM: 3000 } }, twin);
    const [v, u] = [(goOn?.lowest.value ?? 0) * MPS, 140 * MPS];
    expect(v ** 2 / 8 + (u ** 2 - v ** 2) / 4).toBeCloseTo(1000, 0);
  });

  test('goes on from no less than it can be held straight at', () => {
    expect(on(3000, {}, twin).goOn).toMatchObject({
      lowest: { value: expect.closeTo(90, 6) },
      aboveStop: false,
    });
  });

  test('goes on from standing still where the wind alone holds it straight', () => {
    // Its airspeed before it rolls is the wind: 80 kt, and 60 kt are enough.
    const light = inventedAircraft({
      ...BARE,
      oneEngineOut: { dragAreaM2: 0, minimumControlKt: 60 },
    });
    expect(on(3000, { headwindKt: 80 }, light).goOn?.lowest.value).toBeCloseTo(80, 6);
  });

  test('can neither stop nor go on between the two speeds on a short runway', () => {
    const { goOn, stop } = on(850, { runway: { toraM: 850, todaM: 3000, asdaM: 850 } }, twin);
    expect(goOn?.aboveStop).toBe(true);
    expect(goOn?.lowest.value).toBeGreaterThan(stop.lastKt);
  });

  test('does not go on where half the thrust does not climb', () => {
    const dragging = inventedAircraft({
      ...BARE,
      oneEngineOut: { dragAreaM2: 8, minimumControlKt: 90 },
    });
    expect(on(3000, {}, dragging).goOn?.lowest).toEqual({ value: null, because: 'cannot-climb' });
  });

  test('is asked of a twin only', () => {
    expect(on(3000).goOn).toBeNull();
  });
});
