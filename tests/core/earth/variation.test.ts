import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { wrapDeg } from '../../../src/core/angle';
import { type FieldModel, fieldModelFor } from '../../../src/core/earth/fieldModel';
import { compassZone, magneticField, variationDeg } from '../../../src/core/earth/variation';

const AT = new Date('2026-11-24T12:00Z');
let tables: FieldModel;
beforeAll(async () => {
  tables = await fieldModelFor(AT);
});

const apartDeg = (a: number, b: number) => Math.abs(180 - wrapDeg(180 - (a - b)));

describe('variation', () => {
  test('is the same on both sides of the date line and after any whole turn', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -90, max: 90, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.integer({ min: -2, max: 2 }),
        (latDeg, lonDeg, turns) => {
          const here = magneticField({ latDeg, lonDeg }, AT, tables);
          const again = magneticField({ latDeg, lonDeg: lonDeg + 360 * turns }, AT, tables);
          expect(Math.abs(again.northNt - here.northNt)).toBeLessThan(1e-6);
          expect(Math.abs(again.eastNt - here.eastNt)).toBeLessThan(1e-6);
        },
      ),
    );
    for (const latDeg of [-60, 0, 52, 75]) {
      const west = variationDeg({ latDeg, lonDeg: -180 }, AT, tables);
      expect(variationDeg({ latDeg, lonDeg: 180 }, AT, tables)).toBeCloseTo(west, 9);
      const close = variationDeg({ latDeg, lonDeg: 179.9999 }, AT, tables);
      expect(Math.abs(close - west)).toBeLessThan(0.001);
    }
  });

  test.each([
    [90, 1],
    [-90, -1],
  ])('at the pole %i turns with the meridian that is called north', (latDeg, sense) => {
    const greenwich = magneticField({ latDeg, lonDeg: 0 }, AT, tables);
    expect(greenwich.horizontalNt).toBeGreaterThan(0);
    for (const lonDeg of [-179, -90, 1, 45, 120, 180]) {
      const field = magneticField({ latDeg, lonDeg }, AT, tables);
      expect(field.horizontalNt).toBeCloseTo(greenwich.horizontalNt, 6);
      const expected = greenwich.variationDeg + sense * lonDeg;
      expect(apartDeg(field.variationDeg, expected)).toBeLessThan(1e-6);
    }
  });

  test('comes up to a pole without a jump', () => {
    for (const sign of [1, -1]) {
      for (const lonDeg of [0, 33, -120]) {
        const at = magneticField({ latDeg: sign * 90, lonDeg }, AT, tables);
        const near = magneticField({ latDeg: sign * 89.99999, lonDeg }, AT, tables);
        // A metre away; the field changes by some tens of nT a km there at most.
        expect(Math.abs(near.northNt - at.northNt)).toBeLessThan(0.1);
        expect(Math.abs(near.eastNt - at.eastNt)).toBeLessThan(0.1);
      }
    }
  });

  test('takes a place without elevation as one at sea level', () => {
    const place = { latDeg: 47, lonDeg: 8 };
    expect(variationDeg(place, AT, tables)).toBe(
      variationDeg({ ...place, elevationM: 0 }, AT, tables),
    );
    expect(variationDeg({ ...place, elevationM: 8000 }, AT, tables)).not.toBe(
      variationDeg(place, AT, tables),
    );
  });

  test('is refused for a date outside the tables and for what is no place', () => {
    const place = { latDeg: 47, lonDeg: 8 };
    expect(() => variationDeg(place, new Date('1987-06-05'), tables)).toThrow(RangeError);
    expect(() => variationDeg(place, new Date(Number.NaN), tables)).toThrow(RangeError);
    expect(() => variationDeg({ latDeg: 90.01, lonDeg: 8 }, AT, tables)).toThrow(RangeError);
    expect(() => variationDeg({ latDeg: Number.NaN, lonDeg: 8 }, AT, tables)).toThrow(RangeError);
    expect(() => variationDeg({ latDeg: 47, lonDeg: Infinity }, AT, tables)).toThrow(RangeError);
  });
});

describe('where one model follows another', () => {
  const switches = ['2015-01-01', '2018-09-18', '2020-01-01', '2025-01-01'];

  interface Jump {
    readonly latDeg: number;
    readonly where: string;
    /** Degrees of variation from the model that ends to the one that begins. */
    readonly jumpDeg: number;
    /** The smaller of the two horizontal fields. */
    readonly horizontalNt: number;
  }

  /** Every 2° of latitude and 4° of longitude: 8010 places. */
  async function jumpsOn(date: string): Promise<Jump[]> {
    const at = new Date(date);
    const ending = await fieldModelFor(new Date(at.getTime() - 1));
    const beginning = await fieldModelFor(at);
    expect(ending.name).not.toBe(beginning.name);
    expect(ending.until).toEqual(beginning.from);
    const jumps: Jump[] = [];
    for (let latDeg = -88; latDeg <= 88; latDeg += 2) {
      for (let lonDeg = -180; lonDeg < 180; lonDeg += 4) {
        const before = magneticField({ latDeg, lonDeg }, at, ending);
        const after = magneticField({ latDeg, lonDeg }, at, beginning);
        jumps.push({
          latDeg,
          where: `${latDeg}, ${lonDeg}`,
          jumpDeg: apartDeg(before.variationDeg, after.variationDeg),
          horizontalNt: Math.min(before.horizontalNt, after.horizontalNt),
        });
      }
    }
    return jumps;
  }

  /**
   * Uncertainty of a model's variation where the horizontal field is H nT: √(0.26² + (5625 / H)²)
   * degrees. WMM2020 Technical Report, error model (value from memory); those of WMM2015 and
   * WMM2025 are a few per cent smaller.
   */
  const uncertaintyDeg = (horizontalNt: number) => Math.hypot(0.26, 5625 / horizontalNt);

  test.each(switches)('on %s variation jumps by less than the two may be wrong', async (date) => {
    for (const { where, jumpDeg, horizontalNt } of await jumpsOn(date)) {
      if (compassZone(horizontalNt) === 'blackout') continue;
      expect(jumpDeg, where).toBeLessThan(Math.SQRT2 * uncertaintyDeg(horizontalNt));
    }
  });

  // The bounds that `fieldModel.ts` states where a compass can be used, H from 6000 nT: the first
  // between 60 N and 60 S, the second anywhere. They guard the switches; they have no outside source.
  test.each([
    ['2015-01-01', 0.1, 0.2],
    ['2018-09-18', 0.5, 0.9],
    ['2020-01-01', 0.2, 0.2],
    ['2025-01-01', 0.6, 0.6],
  ])(
    'on %s it jumps by less than %f°, and less than %f° in high latitudes',
    async (date, low, high) => {
      for (const { latDeg, where, jumpDeg, horizontalNt } of await jumpsOn(date)) {
        if (compassZone(horizontalNt) !== 'usable') continue;
        expect(jumpDeg, where).toBeLessThan(Math.abs(latDeg) <= 60 ? low : high);
      }
    },
  );
});

// NOAA and BGS, State of the Geomagnetic Field: blackout zone below 2000 nT, caution zone below 6000.
test.each([
  [0, 'blackout'],
  [1999.9, 'blackout'],
  [2000, 'caution'],
  [5999.9, 'caution'],
  [6000, 'usable'],
  [40_000, 'usable'],
])('a horizontal field of %f nT is %s', (horizontalNt, zone) => {
  expect(compassZone(horizontalNt)).toBe(zone);
});
