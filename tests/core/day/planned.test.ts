/** What planned numbers assume: factors, moisture, heat, and a parachute that may fail. */

import { describe, expect, test } from 'vitest';
import { askDay } from '../../../src/core';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { Inputs } from '../../../src/core/sortie/entry';
import { demoAircraft, demoField } from '../documents/demo';
import { AT } from './moments';

const named = (code: string): Aircraft => {
  const found = demoAircraft.find((one) => one.code === code);
  if (found === undefined) throw new Error(`no aircraft ${code}`);
  return found;
};

async function numbers(
  aircraft: Aircraft,
  text: string,
  inputs: Partial<Inputs> = {},
  code = 'XMAR',
) {
  const asked = await askDay({
    field: demoField(code),
    aircraft,
    at: AT,
    inputs: { chosen: { end: '05L', purpose: 'take-off' }, ...inputs },
    wind: { text },
  });
  const { today } = asked.numbers;
  if (today === null) throw new Error('no numbers');
  const { planned, expected } = today.takeoff;
  const landing = today.landing.planned;
  if (planned.because !== null || expected.because !== null || landing.because !== null) {
    throw new Error('no numbers');
  }
  return { asked, today, plan: planned.figures, expected: expected.figures, down: landing.figures };
}

const ratio = (a: { value: number | null }, b: { value: number | null }) =>
  (a.value ?? Number.NaN) / (b.value ?? Number.NaN);

describe('factors on planned lengths', () => {
  // 14 CFR 25.113: 1.15; UK CAA Safety Sense Leaflet 7c: 1.33 and 1.43; 14 CFR 121.195: within 0.6.
  test.each([
    ['turnstone', 'document', 1.15, 1.67],
    ['turnstone', 'common', 1.15, 1 / 0.6],
    ['turnstone', 'none', 1, 1],
    ['tussock', 'document', 1.33, 1.43],
    ['tussock', 'common', 1.33, 1.43],
    ['tussock', 'none', 1, 1],
  ] as const)(
    '%s, %s: %f and %f, in calm too, and never on the stop',
    async (code, factors, up, down) => {
      const day = await numbers(named(code), 'calm', { factors });
      expect(ratio(day.plan.runM, day.expected.runM)).toBeCloseTo(up, 9);
      expect(ratio(day.plan.to50ftM, day.expected.to50ftM)).toBeCloseTo(up, 9);
      expect(ratio(day.plan.stopM, day.expected.stopM)).toBeCloseTo(1, 9);
      expect(ratio(day.down.plannedM, day.down.neededM)).toBeCloseTo(down, 9);
      expect(day.today.factors).toEqual({ choice: factors, takeoff: up, landing: down });
    },
  );

  test('a runway that is not dry asks 1.15 more of a landing', async () => {
    // 14 CFR 121.195(d) (value from memory).
    const wet = await numbers(named('tussock'), 'calm', { surface: 'wet' });
    expect(wet.today.factors.landing).toBeCloseTo(1.43 * 1.15, 9);
    expect(wet.today.factors.takeoff).toBeCloseTo(1.33, 9);
  });
});

test('a parachute that fails: the numbers beside are those of a day without it', async () => {
  const sleet = named('sleet');
  const short = { chosen: { end: '28', purpose: 'take-off' } } as const;
  const packed = await numbers(sleet, '28010KT', short, 'XHAR');
  const without = await numbers(sleet, '28010KT', { ...short, noParachute: true }, 'XHAR');
  expect(packed.plan.lastStopBareKt.value).toBeCloseTo(without.plan.lastStopKt.value ?? 0, 6);
  expect(packed.down.plannedBareM.value).toBeCloseTo(without.down.plannedM.value ?? 0, 6);
  expect(packed.plan.lastStopBareKt.value).toBeLessThan(packed.plan.lastStopKt.value ?? 0);
  expect(without.plan.lastStopBareKt).toEqual({ value: null, because: 'not-in-aircraft' });
});

test('moist air is thin air: 30 °C with a dew point of 28 add about 480 ft, and lengthen the run', async () => {
  // WMO-No. 8, Annex 4.B; some 480 ft by the textbook's virtual temperature, 4.2 K × 120 ft less the pressure's part.
  const text = (temperature: string) => `METAR XMAR 051850Z 00000KT 9999 ${temperature} Q1013`;
  const [dry, moist] = await Promise.all(
    ['30/M40', '30/28'].map((of) => numbers(named('tussock'), text(of))),
  );
  const altitudeFt = (day: typeof dry) => day?.asked.conditions.weather?.densityAltitude.value ?? 0;
  expect(altitudeFt(moist) - altitudeFt(dry)).toBeGreaterThan(440);
  expect(altitudeFt(moist) - altitudeFt(dry)).toBeLessThan(520);
  if (dry === undefined || moist === undefined) throw new Error('no day');
  // 1.4 % less density: by V² and by power at least twice that. Gagg and Ferrar 1934.
  expect(ratio(moist.plan.runM, dry.plan.runM)).toBeGreaterThan(1.028);
  expect(ratio(moist.plan.runM, dry.plan.runM)).toBeLessThan(1.06);
});

test('heat takes more of a jet’s thrust than density does, where its document says so', async () => {
  const jet = named('turnstone');
  const { performance } = jet;
  if (performance?.thrust.kind !== 'jet') throw new Error('no jet');
  const { at20Hotter, ...thrust } = performance.thrust;
  const older = { ...jet, performance: { ...performance, thrust } };
  const thrustN = async (aircraft: Aircraft, celsius: number) => {
    const { today } = await numbers(aircraft, 'calm', {
      ownTemperatureC: celsius,
      ownQnhHpa: 1013.25,
    });
    const { expected } = today.takeoff;
    return expected.because === null ? expected.raw.given.staticThrustN : Number.NaN;
  };
  // Marram Haven lies 156 to 187 ft high, where standard air has 14.7 °C.
  const isaC = 15 - 0.0065 * 0.3048 * demoField('XMAR').place.elevationFt;
  const lapse = (await thrustN(jet, isaC + 20)) / (await thrustN(jet, isaC));
  expect(lapse).toBeCloseTo(at20Hotter ?? Number.NaN, 3);
  // ρ goes with 1 / T: ICAO Doc 7488.
  const byDensity = (await thrustN(older, isaC + 20)) / (await thrustN(older, isaC));
  expect(byDensity).toBeCloseTo((isaC + 273.15) / (isaC + 293.15), 3);
  expect(await thrustN(jet, isaC - 20)).toBeCloseTo(await thrustN(older, isaC - 20), 6);
});

test('in a headwind the climb is steeper over the ground than through the air, by the speeds', async () => {
  const { expected } = await numbers(named('tussock'), '05020KT');
  const head = (await numbers(named('tussock'), '05020KT')).today.headwindKt ?? 0;
  const through = (expected.climbGradient.value ?? 0) / 100;
  const trueKt = (expected.climbRate.value ?? 0) / through / (1852 / 0.3048 / 60);
  const overKt = trueKt * Math.cos(Math.asin(through)) - head;
  expect((expected.climbGroundGradient.value ?? 0) / 100).toBeCloseTo(
    (through * trueKt) / overKt,
    6,
  );
  expect(head).toBeGreaterThan(15);
});
