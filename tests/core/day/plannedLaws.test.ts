/** Planning never promises more than is expected, for any figure that Numbers shows as a pair. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadSheet } from '../../../src/core/aircraft/loadSheet';
import { endsOf } from '../../../src/core/airfield/ends';
import { airOf } from '../../../src/core/day/air';
import type { LandingFigures } from '../../../src/core/day/landingFigures';
import type { TakeoffFigures } from '../../../src/core/day/takeoffFigures';
import { todayStage } from '../../../src/core/day/today';
import { FRESH_INPUTS } from '../../../src/core/sortie/entry';
import { demoAircraft, demoFields } from '../documents/demo';

const numbers = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Any end of the demo's fields, with any aircraft, load, air, surface and wind along it. */
const days = fc
  .record({
    field: fc.constantFrom(...demoFields),
    end: fc.nat(),
    aircraft: fc.constantFrom(...demoAircraft),
    fuelKg: fc.integer({ min: 50, max: 3000 }),
    celsius: numbers(-30, 40),
    qnhHpa: numbers(960, 1040),
    headwindKt: numbers(-12, 35),
    gustSpreadKt: numbers(0, 15),
    surface: fc.constantFrom('dry' as const, 'wet' as const, 'contaminated' as const),
    noParachute: fc.boolean(),
    rollsFromM: fc.constantFrom(0, 60, 300),
    checkMarkM: fc.constantFrom(150, 300, 500),
  })
  .map((day) => {
    const inputs = {
      ...FRESH_INPUTS,
      surface: day.surface,
      noParachute: day.noParachute,
      rollsFromM: day.rollsFromM,
      checkMarkM: day.checkMarkM,
      ownTemperatureC: day.celsius,
      ownQnhHpa: day.qnhHpa,
      load: { fuelKg: day.fuelKg, stations: {} },
    };
    const { field, aircraft, headwindKt, gustSpreadKt } = day;
    const ends = endsOf(field);
    const end = ends[day.end % ends.length]?.designator ?? null;
    const air = airOf(field.place.elevationFt, inputs, null);
    const load = loadSheet(aircraft, inputs.load);
    const given = { field, aircraft, load, air, inputs };
    return { given, end, headwindKt, gustSpreadKt };
  });

type Day = typeof days extends fc.Arbitrary<infer D> ? D : never;

const todayOf = ({ given, end, headwindKt, gustSpreadKt }: Day) =>
  todayStage(given, end, headwindKt, gustSpreadKt);

/** Lengths and speeds to reach: planned, they are no less. */
const NO_LESS = [
  'runM',
  'to50ftM',
  'stopM',
  'lowestGoOnKt',
] as const satisfies readonly (keyof TakeoffFigures)[];

/** What is left over, and speeds not to exceed or to count on: planned, they are no more. */
const NO_MORE = [
  'toraLeftM',
  'todaLeftM',
  'asdaLeftM',
  'lastStopKt',
  'lastStopBareKt',
] as const satisfies readonly (keyof TakeoffFigures)[];

const LANDING_NO_LESS = [
  'referenceKt',
  'approachKt',
  'airM',
  'runM',
  'neededM',
  'plannedM',
  'plannedBareM',
] as const satisfies readonly (keyof LandingFigures)[];

const LANDING_NO_MORE = [
  'ldaLeftM',
  'plannedLeftM',
] as const satisfies readonly (keyof LandingFigures)[];

type Pair = readonly [planned: number | null, expected: number | null];

/** Where planning has no number there is nothing to promise; where it has one, so has what is expected. */
const keeps = ([planned, expected]: Pair, sign: 1 | -1, slack: number) =>
  planned === null || (expected !== null && sign * (planned - expected) >= -slack);

/** The last speed to stop from is looked for to 0.005 m/s: so far, kt and m, two of them may miss. */
const NEAR = 0.05;

test('a take-off as planned is never shorter, slower to stop for or less demanding than expected', () => {
  fc.assert(
    fc.property(days, (day) => {
      const { planned, expected } = todayOf(day).takeoff;
      if (planned.because !== null || expected.because !== null) return;
      const [plan, hope] = [planned.figures, expected.figures];
      const pair = (name: keyof TakeoffFigures): Pair => [plan[name].value, hope[name].value];
      for (const name of NO_LESS)
        expect([name, pair(name), keeps(pair(name), 1, NEAR)]).toEqual([name, pair(name), true]);
      for (const name of NO_MORE)
        expect([name, pair(name), keeps(pair(name), -1, NEAR)]).toEqual([name, pair(name), true]);
    }),
    { numRuns: 400 },
  );
});

test('at the mark, as planned, no more is expected and no less asked for, but for what can be stopped from', () => {
  fc.assert(
    fc.property(days, (day) => {
      const { planned, expected } = todayOf(day).takeoff;
      if (planned.because !== null || expected.because !== null) return;
      const [plan, hope] = [planned.figures, expected.figures];
      const [leastKt, leastInWindKt] = [plan.atMarkLeastKt.value, hope.atMarkLeastKt.value];
      const [markKt, markInWindKt] = [plan.atMarkKt.value, hope.atMarkKt.value];
      // One wind may leave the mark with nothing to ask for: see NoCheck.
      if (leastKt === null || leastInWindKt === null) return;
      const lastKt = plan.lastStopKt.value ?? 0;
      expect(leastKt).toBeGreaterThanOrEqual(Math.min(leastInWindKt, lastKt) - NEAR);
      expect(markKt).toBeLessThanOrEqual((markInWindKt ?? 0) + NEAR);
    }),
    { numRuns: 400 },
  );
});

test('a stop that needs the parachute as planned has it as expected, and is from one speed', () => {
  let differed = 0;
  fc.assert(
    fc.property(days, (day) => {
      const { planned, expected } = todayOf(day).takeoff;
      if (planned.because !== null || expected.because !== null) return;
      const [plan, hope] = [planned.raw.stop, expected.raw.stop];
      expect(hope.withParachute).toBe(plan.withParachute);
      expect(hope.fromKt).toBeCloseTo(plan.lastKt, 9);
      if (hope.lastKt > plan.lastKt + 1) differed++;
    }),
    { numRuns: 400 },
  );
  // Or it would have said nothing: some stops could be begun later in the wind as it is.
  expect(differed).toBeGreaterThan(3);
});

test('a landing as planned is never shorter than expected', () => {
  fc.assert(
    fc.property(days, (day) => {
      const { planned, expected } = todayOf(day).landing;
      if (planned.because !== null || expected.because !== null) return;
      const [plan, hope] = [planned.figures, expected.figures];
      const pair = (name: keyof LandingFigures): Pair => [plan[name].value, hope[name].value];
      for (const name of LANDING_NO_LESS)
        expect([name, pair(name), keeps(pair(name), 1, 1e-6)]).toEqual([name, pair(name), true]);
      for (const name of LANDING_NO_MORE)
        expect([name, pair(name), keeps(pair(name), -1, 1e-6)]).toEqual([name, pair(name), true]);
    }),
    { numRuns: 400 },
  );
});
