/** From lift-off to 50 ft: what is gained in height and in speed is paid for. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { demoAircraft } from '../documents/demo';
import { type FlightGiven, flight, spareN, trueSpeeds } from './flight';
import { BARE, flown, inventedAircraft, takeoffQuestion } from './invented';

const G = 9.80665;
const H = 50 * 0.3048;
const MPS = 1852 / 3600;

/** On a machine that others use as well. */
const SLOW_MS = 60_000;

const numbers = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** An aircraft like one of the demo's, with other thrust and another wing. */
const made = fc
  .record({
    like: fc.constantFrom(...demoAircraft),
    thrust: numbers(0.7, 1.6),
    induced: numbers(0.7, 1.4),
    drag: numbers(0.7, 1.5),
    clMax: numbers(0.98, 1.25),
  })
  .map(({ like, thrust, induced, drag, clMax }): Aircraft => {
    const { performance = BARE } = like;
    const times = (curve: readonly (readonly [number, number])[]) =>
      curve.map(([kt, n]): [number, number] => [kt, n * thrust]);
    const t = performance.thrust;
    const { wing } = performance;
    return {
      ...like,
      performance: {
        ...performance,
        thrust:
          t.kind === 'propeller'
            ? { ...t, fullN: times(t.fullN) }
            : {
                ...t,
                dryN: times(t.dryN),
                ...(t.reheatN ? { reheatN: times(t.reheatN) } : {}),
              },
        wing: {
          ...wing,
          clMax: { ...wing.clMax, takeoff: wing.clMax.takeoff * clMax },
          induced: wing.induced * induced,
          cleanCd: wing.cleanCd * drag,
          flapsCd: wing.flapsCd * drag,
        },
      },
    };
  });

const days = fc.record({
  aircraft: made,
  load: numbers(0, 1),
  pressureAltitudeFt: numbers(-1000, 9000),
  temperatureC: numbers(-30, 45),
  headwindKt: numbers(-10, 30),
  reheat: fc.boolean(),
});

/** ρ / ρ₀ by ICAO Doc 7488. */
const sigmaOf = (ft: number, celsius: number) =>
  ((1 - (0.0065 * ft * 0.3048) / 288.15) ** 5.25588 * 288.15) / (celsius + 273.15);

type Day = typeof days extends fc.Arbitrary<infer D> ? D : never;

function asked(day: Day) {
  const { aircraft, pressureAltitudeFt, temperatureC, headwindKt, reheat, load } = day;
  const { emptyKg, maxTakeoffKg } = aircraft.masses;
  const massKg = emptyKg + load * (maxTakeoffKg - emptyKg);
  const runway = { toraM: 9000, todaM: 9000, asdaM: 9000 };
  const air = { pressureAltitudeFt, temperatureC };
  const given: FlightGiven = {
    aircraft,
    performance: aircraft.performance ?? BARE,
    massKg,
    sigma: sigmaOf(pressureAltitudeFt, temperatureC),
    standardK: 288.15 - 0.0065 * 0.3048 * pressureAltitudeFt,
    hotterC: temperatureC - (15 - 0.0065 * 0.3048 * pressureAltitudeFt),
    headwindKt,
    reheat,
    share: 1,
    deadDragM2: 0,
  };
  const other = { massKg, air, headwindKt, reheat, runway };
  return { given, answer: takeoff(takeoffQuestion(aircraft, other)) };
}

test('the way to 50 ft is long enough for the energy gained, whatever the thrust and the wing', {
  timeout: SLOW_MS,
}, () => {
  fc.assert(
    fc.property(days, (day) => {
      const { given, answer } = asked({ ...day, headwindKt: 0 });
      if (answer.kind !== 'takeoff' || answer.to50ftM.value === null) return;
      // W h + ½ m (V₅₀² − V_LO²), V₅₀ at least the safety speed: Torenbeek; Raymer, ch. 17 (from memory).
      const { liftOff, safety } = trueSpeeds(given);
      const gainedJ = given.massKg * (G * H + 0.5 * (safety ** 2 - liftOff ** 2));
      const fast = Math.max(safety, 1.25 * liftOff);
      const spare = Array.from({ length: 21 }, (_, i) =>
        spareN(given, liftOff + (i / 20) * (fast - liftOff), 0.7),
      );
      const airM = answer.to50ftM.value - answer.run.runM;
      expect(airM).toBeGreaterThan((0.99 * gainedJ) / Math.max(...spare) - H);
    }),
    { numRuns: 2000 },
  );
});

test('it is what small steps of time come to, within 1 %, and work done is height and speed gained', {
  timeout: SLOW_MS,
}, () => {
  let compared = 0;
  fc.assert(
    fc.property(days, (day) => {
      const { given, answer } = asked(day);
      if (answer.kind !== 'takeoff') return;
      const own = flight(given, H);
      const airM = (answer.to50ftM.value ?? Number.NaN) - answer.run.runM;
      // What needs about 10 km, or only just does not climb, may fall to either side.
      if (own === null || own.groundM > 7000) return;
      compared++;
      const { liftOff } = trueSpeeds(given);
      const gainedJ = given.massKg * (G * H + 0.5 * (own.tasMps ** 2 - liftOff ** 2));
      expect(Math.abs(own.workJ / gainedJ - 1)).toBeLessThan(0.01);
      expect(Math.abs(airM / own.groundM - 1)).toBeLessThan(0.01);
      const tasMps = ((answer.at50ft?.speedKt ?? 0) * MPS) / Math.sqrt(given.sigma);
      expect(Math.abs(tasMps / own.tasMps - 1)).toBeLessThan(0.003);
    }),
    { numRuns: 500 },
  );
  expect(compared).toBeGreaterThan(400);
});

describe('a twin that loses an engine', () => {
  const twins = days.filter(({ aircraft }) => aircraft.performance?.oneEngineOut !== undefined);

  test('goes on only where its own run and way to 50 ft fit', { timeout: SLOW_MS }, () => {
    let compared = 0;
    fc.assert(
      fc.property(twins, numbers(0.8, 1.6), (day, length) => {
        const { given, answer } = asked(day);
        if (answer.kind !== 'takeoff') return;
        const dead = given.performance.oneEngineOut?.dragAreaM2 ?? 0;
        const own = flight({ ...given, share: 0.5, deadDragM2: dead }, H);
        if (own === null || own.groundM > 7000) return;
        // Lost at rotation: the run so far, on one engine to lift-off, and up.
        const lengthM = length * (answer.run.runM + own.groundM);
        const question = takeoffQuestion(day.aircraft, {
          massKg: given.massKg,
          air: { pressureAltitudeFt: day.pressureAltitudeFt, temperatureC: day.temperatureC },
          headwindKt: day.headwindKt,
          reheat: day.reheat,
          runway: { toraM: 9000, todaM: lengthM, asdaM: 9000 },
        });
        const { goOn, rotation } = flown(takeoff(question));
        compared++;
        // However late it is lost, no run on one engine is shorter than that on both.
        if (length < 0.99) expect(goOn?.lowest.value ?? null).toBeNull();
        const lowestKt = goOn?.lowest.value ?? null;
        if (lowestKt !== null) expect(lowestKt).toBeLessThanOrEqual(rotation.speedKt + 1e-6);
      }),
      { numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(80);
  });
});

test('with next to no drag and the thrust of half the weight, 50 ft come within the pull-up', () => {
  // x = √(R² − (R − h)²), R = V² / 0.19 g between lift-off and 50 ft: Anderson, 6.7.2.
  const aircraft = inventedAircraft({ ...BARE, wing: { ...BARE.wing, areaM2: 60 } });
  const { to50ftM, run, at50ft } = flown(takeoff(takeoffQuestion(aircraft)));
  const arcM = (kt: number) => {
    const radiusM = (kt * MPS) ** 2 / (0.19 * G);
    return Math.sqrt(radiusM ** 2 - (radiusM - H) ** 2);
  };
  const airM = (to50ftM.value ?? 0) - run.runM;
  expect(airM).toBeGreaterThan(arcM(140));
  expect(airM).toBeLessThan(arcM(at50ft?.speedKt ?? 0));
});

test('hot and high a twin that would climb with its gear up does not get to 50 ft with it down', () => {
  const twin = demoAircraft.find(({ code }) => code === 'turnstone');
  if (twin?.performance === undefined) throw new Error('no twin');
  // The high field of the demo, at 30 °C.
  const air = { pressureAltitudeFt: 6268, temperatureC: 30 };
  const { goOn } = flown(takeoff(takeoffQuestion(twin, { air })));
  const given: FlightGiven = {
    aircraft: twin,
    performance: twin.performance,
    massKg: twin.masses.usualTakeoffKg,
    sigma: sigmaOf(air.pressureAltitudeFt, air.temperatureC),
    standardK: 288.15 - 0.0065 * 0.3048 * air.pressureAltitudeFt,
    hotterC: air.temperatureC - (15 - 0.0065 * 0.3048 * air.pressureAltitudeFt),
    headwindKt: 0,
    reheat: false,
    share: 0.5,
    deadDragM2: twin.performance.oneEngineOut?.dragAreaM2 ?? 0,
  };
  // Thrust less drag over weight, gear down: the test's own forces.
  const { safety } = trueSpeeds(given);
  const sine = spareN(given, safety, 1) / (given.massKg * G);
  expect(goOn?.gearDownPercent).toBeCloseTo(100 * Math.tan(Math.asin(sine)), 1);
  expect(goOn?.gradientPercent).toBeGreaterThan(1);
  // 50 ft in 10 km are 0.15 %, without a knot gained.
  expect(goOn?.gearDownPercent).toBeLessThan(0.2);
  expect(flight(given, H)).toBeNull();
  expect(goOn?.lowest).toEqual({ value: null, because: 'cannot-climb' });
});
