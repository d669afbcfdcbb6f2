import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { Load } from '../../../src/core/aircraft/load';
import { type LoadFigures, loadSheet } from '../../../src/core/aircraft/loadSheet';
import { demoAircraft } from '../documents/demo';

function demo(code: string): Aircraft & { load: NonNullable<Aircraft['load']> } {
  const found = demoAircraft.find((one) => one.code === code);
  if (found?.load === undefined) throw new Error(`there is no load sheet of ${code}`);
  return { ...found, load: found.load };
}

const JET = demo('sleet');
const TOURER = demo('tussock');

const codes = ({ exceeded }: LoadFigures) => exceeded.map(({ code }) => code);

/** The demo's jet without stores; more at a station by its name. */
const jetWith = (fuelKg: number, stations: Load['stations'] = {}) =>
  loadSheet(JET, { fuelKg, stations });

describe('the worked example of a handbook', () => {
  // FAA-H-8083-25, Pilot's Handbook of Aeronautical Knowledge, ch. 10, "Computational Method":
  // pounds and inches; total 3,320 lb, moment 281,430 lb·in, 84.8 in aft of the datum; within
  // 3,400 lb and 78 to 86 in.
  const KG = 0.45359237;
  const M = 0.0254;
  const at = (kg: number, armIn: number) => ({ kg: kg * KG, armM: armIn * M });
  const seats = { kind: 'baggage', maxKg: 1000 } as const;
  const example: Aircraft = {
    ...TOURER,
    masses: {
      emptyKg: 2100 * KG,
      usualTakeoffKg: 3320 * KG,
      maxTakeoffKg: 3400 * KG,
      usualLandingKg: 3000 * KG,
      maxLandingKg: 3400 * KG,
    },
    load: {
      emptyArmM: 78.3 * M,
      // The example ends at take-off; 100 lb are left here.
      fuel: { maxKg: 450 * KG, landingKg: 100 * KG, armM: 75 * M },
      crew: [{ name: 'Front seats', ...at(340, 85) }],
      stations: [
        { ...seats, id: 'rear', name: 'Rear seats', armM: 121 * M },
        { ...seats, id: 'bags', name: 'Baggage', armM: 150 * M },
      ],
      envelope: [
        [78 * M, 2000 * KG],
        [78 * M, 3400 * KG],
        [86 * M, 3400 * KG],
        [86 * M, 2000 * KG],
      ],
      presets: [{ name: 'Usual', fuelKg: 450 * KG, stations: {} }],
    },
  };
  const load = { fuelKg: 450 * KG, stations: { rear: 350 * KG, bags: 80 * KG } };

  test('gives its mass, its moment and its centre of gravity, within its limits', () => {
    const sheet = loadSheet(example, load);
    expect((sheet.takeoffMassKg.value ?? 0) / KG).toBeCloseTo(3320, 6);
    expect((sheet.takeoffArmM?.value ?? 0) / M).toBeCloseTo(84.8, 1);
    const moment = (sheet.takeoffArmM?.value ?? 0) * (sheet.takeoffMassKg.value ?? 0);
    expect(moment / KG / M).toBeCloseTo(281_430, 0);
    expect(sheet.exceeded).toEqual([]);
  });

  test('is over with 81 lb more in the back', () => {
    const more = { ...load, stations: { ...load.stations, rear: 431 * KG } };
    expect(codes(loadSheet(example, more))).toContain('over-max-take-off');
  });

  test('leaves the limits only as the fuel ahead of it burns, and says so before', () => {
    // By hand: less 390 lb at 75 in there are 252 180 lb·in over 2 930 lb, 86.07 in; 86 is the last.
    const { fuel, ...loading } = example.load ?? TOURER.load;
    const lower = { ...loading, fuel: { ...fuel, landingKg: 60 * KG } };
    const sheet = loadSheet({ ...example, load: lower }, load);
    expect((sheet.landingArmM?.value ?? 0) / M).toBeCloseTo(86.07, 2);
    expect(sheet.exceeded).toEqual([{ code: 'outside-envelope', at: 'landing', side: 'aft' }]);
  });
});

describe('without a load of the pilot’s own', () => {
  test.each(demoAircraft.filter(({ load }) => load !== undefined).map((one) => [one.code, one]))(
    'the %s has its usual masses',
    (_, aircraft) => {
      const sheet = loadSheet(aircraft, null);
      expect(sheet.takeoffMassKg.value).toBeCloseTo(aircraft.masses.usualTakeoffKg, 6);
      expect(sheet.landingMassKg.value).toBeCloseTo(aircraft.masses.usualLandingKg, 6);
      expect(sheet.exceeded).toEqual([]);
    },
  );

  test('an aircraft whose document says nothing of loading has its usual masses as they are given', () => {
    const { load: _, ...silent } = JET;
    const sheet = loadSheet(silent, null);
    expect(sheet.takeoffMassKg).toMatchObject({ value: 9200, why: { formula: 'as-given' } });
    expect(sheet.landingMassKg).toMatchObject({ value: 7300, why: { source: 'aircraft' } });
    expect(sheet.zeroFuelKg).toMatchObject({ value: null, because: 'not-in-aircraft' });
    expect(sheet).toMatchObject({ takeoffArmM: null, burn: [], exceeded: [] });
  });
});

describe('the demo’s jet', () => {
  // airfields-demo/aircraft/sleet.json: 6 350 kg empty, a pilot of 110, at most 10 400 to take off
  // with and 8 200 to land with, 3 200 of fuel, of which 520 are left on landing.
  test('lands with the fuel it is to land with, and with what it has where that is less', () => {
    expect(jetWith(2000).landingMassKg.value).toBe(6350 + 110 + 520);
    expect(jetWith(400).landingMassKg.value).toBe(6350 + 110 + 400);
    expect(jetWith(400).exceeded).toEqual([{ code: 'below-landing-fuel', byKg: 120 }]);
    expect(jetWith(520).exceeded).toEqual([]);
  });

  test('without fuel has no mass to take off or land at, and says why', () => {
    for (const fuelKg of [0, -5]) {
      const sheet = jetWith(fuelKg);
      expect(sheet.takeoffMassKg).toEqual({ value: null, because: 'no-fuel' });
      expect(sheet.landingMassKg).toEqual({ value: null, because: 'no-fuel' });
      expect(sheet.zeroFuelKg.value).toBe(6460);
      expect(codes(sheet)).toEqual(['no-fuel']);
    }
  });

  test('is within its masses when it just reaches them, and over with a kilogram more', () => {
    const stores = { 'wing-left': 300, 'wing-right': 300, belly: 400 };
    expect(jetWith(2940, stores).takeoffMassKg.value).toBe(10_400);
    expect(jetWith(2940, stores).exceeded).toEqual([]);
    expect(jetWith(2941, stores).exceeded).toEqual([{ code: 'over-max-take-off', byKg: 1 }]);
  });

  test('is over to land with more aboard than its landing mass leaves room for', () => {
    // 8 200 less 6 460 less 520 leave 1 220.
    const stores = (belly: number) => ({ 'wing-left': 300, 'wing-right': 300, belly });
    expect(codes(jetWith(600, stores(620)))).not.toContain('over-max-landing');
    expect(jetWith(600, stores(621)).exceeded).toContainEqual({
      code: 'over-max-landing',
      byKg: 1,
    });
  });

  test('names the tank and the station that hold more than they can', () => {
    expect(jetWith(3300, { belly: 450 }).exceeded).toEqual([
      { code: 'fuel-over', byKg: 100 },
      { code: 'station-over', station: 'belly', byKg: 50 },
    ]);
  });

  test('has no centre of gravity, since its document gives no arms', () => {
    expect(jetWith(2000)).toMatchObject({ takeoffArmM: null, landingArmM: null, burn: [] });
  });

  test('carries nothing at stations that it does not have', () => {
    const sheet = jetWith(2000, { tail: 500, constructor: 70 });
    expect(sheet.zeroFuelKg.value).toBe(6460);
  });
});

describe('the demo’s tourer', () => {
  const FOUR = { front: 80, rear: 160 };

  test('with four aboard is too far aft with all its baggage, and not without', () => {
    // By hand: 1324.8 + 174.25 + 164 + 456 + 186.3 + 90 kg·m over 1 109 kg are 2.160 m; 2.15 is the last.
    const sheet = loadSheet(TOURER, { fuelKg: 40, stations: { ...FOUR, bags: 54 } });
    expect(sheet.takeoffArmM?.value).toBeCloseTo(2.16, 3);
    expect(sheet.exceeded).toEqual([{ code: 'outside-envelope', at: 'take-off', side: 'aft' }]);
    expect(codes(loadSheet(TOURER, { fuelKg: 60, stations: FOUR }))).toEqual([]);
  });

  test.each([
    // The envelope holds 700 to 1 110 kg, and at 700 from 1.9 m on. A pilot of 85 kg, fuel at 2.25 m.
    ['heavy', 690, 1.92, 96, FOUR],
    ['light', 560, 1.92, 41, {}],
    // By hand: 690 × 1.80 + 85 × 2.05 + 80 × 2.25 kg·m over 855 kg are 1.867 m.
    ['forward', 690, 1.8, 80, {}],
    // 690 × 2.2 + 85 × 2.05 + 80 × 2.25 kg·m over 855 kg are 2.190 m.
    ['aft', 690, 2.2, 80, {}],
  ])('is outside to the side %s', (side, emptyKg, emptyArmM, fuelKg, stations) => {
    const masses = { ...TOURER.masses, emptyKg };
    const load = { ...TOURER.load, emptyArmM };
    const sheet = loadSheet({ ...TOURER, masses, load }, { fuelKg, stations });
    expect(sheet.exceeded).toContainEqual({ code: 'outside-envelope', at: 'take-off', side });
  });

  test('that only reaches its aft limit to take off leaves it as soon as fuel burns', () => {
    // By hand: 1 000 kg at 2.05 m and 100 kg of fuel at 1.5 m are 2 200 kg·m over 1 100 kg, 2 m, the
    // limit. With 20 kg of it left they are 2 080 over 1 020, 2.04 m.
    const load: Aircraft['load'] = {
      emptyArmM: 2.05,
      crew: [],
      fuel: { maxKg: 110, landingKg: 20, armM: 1.5 },
      stations: [],
      envelope: [
        [1, 500],
        [2, 500],
        [2, 1500],
        [1, 1500],
      ],
      presets: [],
    };
    const masses = { ...TOURER.masses, emptyKg: 1000, maxTakeoffKg: 1500, maxLandingKg: 1500 };
    const sheet = loadSheet({ ...TOURER, masses, load }, { fuelKg: 100, stations: {} });
    expect(sheet.takeoffArmM?.value).toBeCloseTo(2, 9);
    expect(sheet.exceeded).toEqual([{ code: 'outside-envelope', at: 'landing', side: 'aft' }]);
  });

  test('is told of a way that leaves the envelope and comes back', () => {
    const arms = { emptyArmM: 2, crew: [{ name: 'Pilot', kg: 85, armM: 2 }] };
    const fuel = { maxKg: 110, landingKg: 40, armM: 2 };
    // Everything at 2 m: from 885 kg down to 815 straight through the notch at 850, behind its corner.
    const envelope: Aircraft['load'] = {
      ...arms,
      fuel,
      stations: [],
      envelope: [
        [1, 700],
        [1, 1000],
        [3, 1000],
        [3, 860],
        [1.5, 850],
        [3, 840],
        [3, 700],
      ],
      presets: [],
    };
    const sheet = loadSheet({ ...TOURER, load: envelope }, { fuelKg: 110, stations: {} });
    expect(sheet.exceeded).toEqual([{ code: 'outside-envelope', at: 'between', side: 'aft' }]);
  });
});

const anyLoad: fc.Arbitrary<Load> = fc.record({
  fuelKg: fc.oneof(
    fc.double({ noNaN: true, min: -10, max: 1e6 }),
    fc.integer({ min: 0, max: 200 }),
  ),
  stations: fc.dictionary(
    fc.constantFrom('front', 'rear', 'bags', 'belly', '__proto__'),
    fc.double({ noNaN: true, min: 0, max: 1e6 }),
  ),
});

test('whatever is loaded, the sheet is numbers or causes, and what is over is over by something', () => {
  fc.assert(
    fc.property(fc.constantFrom(JET, TOURER), anyLoad, (aircraft, load) => {
      const sheet = loadSheet(aircraft, load);
      const { takeoffMassKg, landingMassKg } = sheet;
      if (takeoffMassKg.value === null) expect(load.fuelKg).toBeLessThanOrEqual(0);
      else expect(landingMassKg.value ?? Number.NaN).toBeLessThanOrEqual(takeoffMassKg.value);
      for (const exceeded of sheet.exceeded)
        if ('byKg' in exceeded) expect(exceeded.byKg).toBeGreaterThan(0);
      expect(sheet.burn.flat().every(Number.isFinite)).toBe(true);
    }),
  );
});

test('fuel moves the centre of gravity towards the tanks and never past them', () => {
  const tankM = TOURER.load.fuel.armM ?? Number.NaN;
  fc.assert(
    fc.property(anyLoad, fc.integer({ min: 1, max: 60 }), (load, more) => {
      fc.pre(load.fuelKg > 0 && load.fuelKg < 1e5);
      const before = loadSheet(TOURER, load).takeoffArmM?.value ?? Number.NaN;
      const after =
        loadSheet(TOURER, { ...load, fuelKg: load.fuelKg + more }).takeoffArmM?.value ?? Number.NaN;
      const slack = 1e-9;
      expect(Math.abs(after - tankM)).toBeLessThanOrEqual(Math.abs(before - tankM) + slack);
      expect((after - tankM) * (before - tankM)).toBeGreaterThanOrEqual(-slack);
    }),
  );
});
