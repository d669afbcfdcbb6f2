import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { loadSheet } from '../../../src/core/aircraft/loadSheet';
import { airOf } from '../../../src/core/day/air';
import { ladderOf } from '../../../src/core/day/ladder';
import { type DayGiven, lengthsNeeded, todayStage } from '../../../src/core/day/today';
import { weatherStage } from '../../../src/core/day/weather';
import { FRESH_INPUTS, type Inputs } from '../../../src/core/sortie/entry';
import { readReport } from '../../../src/core/weather/readReport';
import { demoAircraft, demoField, demoFields } from '../documents/demo';
import { brief, documentsAt, moment, TABLES } from './moments';

const aircraftNamed = (code: string): Aircraft => {
  const found = demoAircraft.find((one) => one.code === code);
  if (found === undefined) throw new Error(`no aircraft ${code}`);
  return found;
};

const flown = demoAircraft.filter(({ performance }) => performance !== undefined);

function givenFor(aircraft: Aircraft, code: string, own: Partial<Inputs> = {}): DayGiven {
  const field = demoField(code);
  const inputs = { ...FRESH_INPUTS, ...own };
  const air = airOf(field.place.elevationFt, inputs, null);
  return { field, aircraft, air, inputs, load: loadSheet(aircraft, inputs.load) };
}

/** An end of a demo field with any wind along it. */
const anyDay = fc
  .record({
    aircraft: fc.constantFrom(...flown),
    field: fc.constantFrom(...demoFields),
    headwindKt: fc.integer({ min: -10, max: 40 }),
    temperatureC: fc.integer({ min: -20, max: 40 }),
    rollsFromM: fc.constantFrom(0, 100),
  })
  .chain((day) =>
    fc
      .constantFrom(...day.field.runways.flatMap(({ ends }) => ends.map((end) => end.designator)))
      .map((end) => ({ ...day, end })),
  );

describe('the air', () => {
  const elevationFt = 1000;
  const report = readReport('METAR XHAR 051830Z 28010KT 9999 21/08 Q0990');
  const { settled } = brief(moment(null), documentsAt('XHAR'), TABLES);
  const weather = weatherStage(report, settled);

  test('is the report’s, unless the pilot gives it', () => {
    const air = airOf(elevationFt, FRESH_INPUTS, weather);
    expect(air.temperature.value).toBe(21);
    expect(air.standard).toEqual([]);
    // 27 ft a hectopascal near the sea: 23 hPa low is some 630 ft. FAA-H-8083-25, ch. 11 gives 1 000 ft an inch of mercury.
    expect(air.pressureAltitude.value).toBeGreaterThan(1600);
    expect(air.pressureAltitude.value).toBeLessThan(1690);
    const own = airOf(elevationFt, { ownQnhHpa: 1013.25, ownTemperatureC: -5 }, weather);
    expect(own.temperature.value).toBe(-5);
    expect(own.pressureAltitude.value).toBeCloseTo(1000, 6);
  });

  test('is the standard one where no one gives it, and says so', () => {
    const air = airOf(elevationFt, FRESH_INPUTS, null);
    expect(air.standard).toEqual(['qnh', 'temperature']);
    expect(air.pressureAltitude.value).toBeCloseTo(1000, 6);
    // ICAO Doc 7488: 1.98 °C colder each 1 000 ft.
    expect(air.temperature.value).toBeCloseTo(13.02, 2);
  });
});

describe('today’s numbers', () => {
  test('planning never makes a length shorter', () => {
    fc.assert(
      fc.property(anyDay, ({ aircraft, field, headwindKt, temperatureC, end, rollsFromM }) => {
        const given = givenFor(aircraft, field.code, { ownTemperatureC: temperatureC, rollsFromM });
        const { takeoff, landing } = todayStage(given, end, headwindKt, 0);
        if (takeoff.planned.because === null && takeoff.expected.because === null) {
          const [plan, hope] = [takeoff.planned.figures, takeoff.expected.figures];
          expect(plan.runM.value).toBeGreaterThanOrEqual((hope.runM.value ?? 0) - 1e-6);
          expect(plan.lastStopKt.value).toBeLessThanOrEqual((hope.lastStopKt.value ?? 0) + 1e-6);
        }
        if (landing.planned.because === null && landing.expected.because === null) {
          const [plan, hope] = [landing.planned.figures, landing.expected.figures];
          expect(plan.runM.value).toBeGreaterThanOrEqual((hope.runM.value ?? 0) - 1e-6);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('what is left and what is needed are what the end offers', () => {
    const given = givenFor(aircraftNamed('sleet'), 'XHAR', { rollsFromM: 60 });
    const { planned } = todayStage(given, '28', 10, 0).takeoff;
    if (planned.because !== null) throw new Error(planned.because);
    const { runM, toraLeftM } = planned.figures;
    const tora = given.field.runways.flatMap(({ ends }) => ends).find((e) => e.designator === '28');
    expect(60 + (runM.value ?? 0) + (toraLeftM.value ?? 0)).toBeCloseTo(tora?.toraM ?? 0, 6);
  });

  test('without an end there are speeds and a run, but nothing to hold the lengths against', () => {
    const { takeoff } = todayStage(givenFor(aircraftNamed('tussock'), 'XHAR'), null, null, 0);
    if (takeoff.planned.because !== null) throw new Error(takeoff.planned.because);
    expect(takeoff.planned.figures.rotateKt.value).not.toBeNull();
    expect(takeoff.planned.figures.toraLeftM).toEqual({ value: null, because: 'no-end' });
    expect(takeoff.planned.figures.lastStopKt).toEqual({ value: null, because: 'no-end' });
  });

  test('without its parachute the aircraft must stop from less, and lands longer', () => {
    const aircraft = flown.find(({ performance }) => performance?.parachute !== undefined);
    if (aircraft === undefined) throw new Error('no aircraft with a parachute');
    const [open, packed] = [false, true].map((noParachute) =>
      todayStage(givenFor(aircraft, 'XHAR', { noParachute }), '28', 0, 0),
    );
    const lastKt = (day: typeof open) => {
      const planned = day?.takeoff.planned;
      return planned?.because === null ? (planned.figures.lastStopKt.value ?? 0) : 0;
    };
    const runM = (day: typeof open) => {
      const planned = day?.landing.planned;
      return planned?.because === null ? (planned.figures.runM.value ?? 0) : 0;
    };
    expect(lastKt(packed)).toBeGreaterThan(0);
    expect(lastKt(packed)).toBeLessThan(lastKt(open));
    expect(runM(packed)).toBeGreaterThan(runM(open));
    expect(runM(open)).toBeGreaterThan(0);
  });

  test('over its greatest mass there is no number, but the cause', () => {
    const aircraft = aircraftNamed('sleet');
    const load = { fuelKg: 3200, stations: { belly: 400, 'wing-left': 300, 'wing-right': 300 } };
    const { takeoff } = todayStage(givenFor(aircraft, 'XHAR', { load }), '28', 0, 0);
    expect(takeoff.expected).toEqual({ because: 'over-mass' });
  });

  test('without fuel there is no number, but the cause', () => {
    const load = { fuelKg: 0, stations: {} };
    const { takeoff, landing } = todayStage(
      givenFor(aircraftNamed('tussock'), 'XHAR', { load }),
      '28',
      0,
      0,
    );
    expect(takeoff.expected).toEqual({ because: 'no-fuel' });
    expect(landing.expected).toEqual({ because: 'no-fuel' });
  });
});

describe('the length needed', () => {
  test('is what today’s planned run takes, to within a metre or two, on any end in any wind along it', () => {
    fc.assert(
      fc.property(anyDay, ({ aircraft, field, headwindKt, temperatureC, end }) => {
        const given = givenFor(aircraft, field.code, { ownTemperatureC: temperatureC });
        const needed = lengthsNeeded(given)['take-off'](end, headwindKt);
        const { planned } = todayStage(given, end, headwindKt, 0).takeoff;
        if (planned.because !== null || needed === null || typeof needed === 'number') return;
        if ('cannot' in needed) throw new Error(needed.cannot);
        const { tora = Number.NaN, toda = Number.NaN } = needed.lengthsM;
        expect(Math.abs(tora - (planned.figures.runM.value ?? 0))).toBeLessThan(3);
        expect(Math.abs(toda - (planned.figures.to50ftM.value ?? 0))).toBeLessThan(6);
      }),
      { numRuns: 40 },
    );
  });

  test('too long for an end, it puts the end outside the limits, with the shortfall', () => {
    const hot = moment('01005KT', { ownTemperatureC: 40 });
    const { wind } = brief(hot, documentsAt('XHAR'), TABLES);
    const short = wind.ranked?.ends.flatMap(({ designator, shortfalls }) =>
      shortfalls.some(({ code }) => code === 'length') ? [designator] : [],
    );
    // 01/19 at Harrow Sound is 1 340 m: enough on a cool day, not on a hot one.
    expect(short).toContain('01');
    expect(short).toContain('19');
  });
});

test('the ladder is climbed in the order of speed, time and distance, and no stop is named beyond rotation', () => {
  fc.assert(
    fc.property(anyDay, ({ aircraft, field, headwindKt, temperatureC, end }) => {
      const given = givenFor(aircraft, field.code, { ownTemperatureC: temperatureC });
      const ladder = ladderOf(todayStage(given, end, headwindKt, 0));
      if (ladder === null) return;
      const rising = (values: readonly number[]) =>
        values.every((value, i) => value >= (values[i - 1] ?? Number.NEGATIVE_INFINITY) - 1e-6);
      expect(rising(ladder.rungs.map(({ s }) => s))).toBe(true);
      expect(rising(ladder.rungs.map(({ distanceM }) => distanceM))).toBe(true);
      expect(ladder.rungs.map(({ what }) => what).slice(-2)).toEqual(['rotate', 'lift-off']);
      expect(rising(ladder.climb.map(({ fromLiftOffS }) => fromLiftOffS))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('the mark keeps a stop from no more than the last speed to stop from as planned, and within 5 kt of it', () => {
  fc.assert(
    fc.property(anyDay, ({ aircraft, field, end, headwindKt, temperatureC, rollsFromM }) => {
      const own = { checkMarkM: 300, ownTemperatureC: temperatureC, rollsFromM };
      const { takeoff } = todayStage(givenFor(aircraft, field.code, own), end, headwindKt, 0);
      const { planned, expected } = takeoff;
      fc.pre(planned.because === null && expected.because === null);
      const lastKt = planned.figures.lastStopKt.value;
      fc.pre(lastKt !== null);
      for (const { asked } of [planned, expected]) {
        const stopFromKt = asked.checkMark?.stopFromKt ?? Number.NaN;
        expect(stopFromKt).toBeLessThanOrEqual(lastKt);
        expect(stopFromKt).toBeGreaterThan(lastKt - 5);
      }
    }),
    { numRuns: 60 },
  );
});
