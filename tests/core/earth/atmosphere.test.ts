import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  densityAltitudeFt,
  densityRatio,
  isaPressurePa,
  isaTemperatureK,
  pressureAltitudeFt,
} from '../../../src/core/earth/atmosphere';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('the standard atmosphere', () => {
  test('is not asked beyond where its temperature falls evenly', () => {
    for (const heightM of [-5001, 11_001, Number.NaN]) {
      expect(() => isaTemperatureK(heightM)).toThrow(RangeError);
      expect(() => isaPressurePa(heightM)).toThrow(RangeError);
    }
    expect(() => densityRatio(40_000, -56)).toThrow(RangeError);
  });

  test('bears its own weight: pressure falls by density times gravity', () => {
    // dp/dh = −ρ g, the hydrostatic equation that the standard is defined by.
    fc.assert(
      fc.property(within(-4000, 10_900), (heightM) => {
        const slope = (isaPressurePa(heightM + 1) - isaPressurePa(heightM - 1)) / 2;
        const rho = isaPressurePa(heightM) / (287.05287 * isaTemperatureK(heightM));
        expect(slope / (-rho * 9.80665)).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('pressure altitude', () => {
  test('has no answer for a setting that is no pressure, nor far from where fields lie', () => {
    expect(pressureAltitudeFt(0, 100)).toBeNull();
    expect(pressureAltitudeFt(-5, 100)).toBeNull();
    expect(pressureAltitudeFt(Number.NaN, 100)).toBeNull();
    expect(pressureAltitudeFt(1013.25, 36_001)).toBeNull();
    expect(pressureAltitudeFt(1013.25, -1501)).toBeNull();
    expect(pressureAltitudeFt(1060, -1000)).toBeNull();
    expect(pressureAltitudeFt(1013.25, -1500)).toBeCloseTo(-1500, 9);
  });

  test('is lower the higher the setting, and as much higher as the field', () => {
    fc.assert(
      fc.property(within(950, 1040), within(0, 12_000), within(1, 1000), (qnh, field, more) => {
        const here = pressureAltitudeFt(qnh, field) ?? Number.NaN;
        expect(pressureAltitudeFt(qnh + more / 1000, field)).toBeLessThan(here);
        expect(pressureAltitudeFt(qnh, field + more)).toBeCloseTo(here + more, 6);
      }),
    );
  });
});

describe('density altitude', () => {
  test('has no answer outside the tables', () => {
    expect(densityAltitudeFt(-1501, 15)).toBeNull();
    expect(densityAltitudeFt(36_001, -56)).toBeNull();
    expect(densityAltitudeFt(36_000, 40)).toBeNull();
    expect(densityAltitudeFt(0, -273.15)).toBeNull();
    expect(densityAltitudeFt(0, -300)).toBeNull();
    expect(densityAltitudeFt(0, Number.NaN)).toBeNull();
  });

  test('is the pressure altitude at the standard temperature', () => {
    fc.assert(
      fc.property(within(-1500, 36_000), (pressureFt) => {
        const standardC = isaTemperatureK(pressureFt * 0.3048) - 273.15;
        expect(densityAltitudeFt(pressureFt, standardC)).toBeCloseTo(pressureFt, 5);
      }),
    );
  });

  test('is higher the warmer and the higher it is', () => {
    fc.assert(
      fc.property(
        within(0, 12_000),
        within(-30, 40),
        within(0.1, 10),
        (pressureFt, temperatureC, more) => {
          const here = densityAltitudeFt(pressureFt, temperatureC) ?? Number.NaN;
          expect(densityAltitudeFt(pressureFt, temperatureC + more)).toBeGreaterThan(here);
          expect(densityAltitudeFt(pressureFt + more, temperatureC)).toBeGreaterThan(here);
        },
      ),
    );
  });
});
