import { describe, expect, test } from 'vitest';
import {
  densityAltitudeFt,
  densityRatio,
  inHgFromHpa,
  isaDensityKgM3,
  isaPressurePa,
  isaTemperatureK,
  pressureAltitudeFt,
} from '../../src/core/earth/atmosphere';

/** ICAO Annex 5: 1 inHg is 33.8639 hPa. */
const hPa = (inHg: number): number => inHg * 33.8639;
const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

const apart = (found: number | null, published: number): number =>
  Math.abs((found ?? Number.NaN) - published);

describe('ICAO Doc 7488, Manual of the ICAO Standard Atmosphere', () => {
  // Geopotential height, pressure, density as in the table's columns.
  test.each([
    [0, 101_325, 1.225],
    [1000, 89_874.6, 1.1116],
    [2000, 79_495.2, 1.0065],
    [3000, 70_108.5, 0.9091],
  ])('at %i m the pressure is %f Pa and the density %f kg/m³', (heightM, pa, kgM3) => {
    // Half of the last digit printed.
    expect(apart(isaPressurePa(heightM), pa)).toBeLessThan(0.05);
    expect(apart(isaDensityKgM3(heightM), kgM3)).toBeLessThan(0.000_05);
  });

  test('at the tropopause, 11 000 m, it is 216.65 K and 226.32 hPa', () => {
    // Value from memory: the same manual, table of layers.
    expect(isaTemperatureK(11_000)).toBeCloseTo(216.65, 9);
    expect(apart(isaPressurePa(11_000), 22_632)).toBeLessThan(1);
  });

  test('by tape instead of geopotential the density at 1 000 m is 1.1117', () => {
    // Tables by geometric height; a tape's 1 000 m is 1000 R / (R + 1000), R = 6 356 766 m.
    const heightM = (1000 * 6_356_766) / (6_356_766 + 1000);
    expect(apart(isaDensityKgM3(heightM), 1.1117)).toBeLessThan(0.000_05);
  });
});

describe('pressure altitude', () => {
  test.each([
    // FAA-H-8083-25A, ch. 10, sample problem 1: the table's −165 ft for 30.10 inHg.
    { elevationFt: 5883, inHg: 30.1, published: 5718 },
    // The same, figure 10-3: 205 ft for 29.7 inHg at sea level.
    { elevationFt: 0, inHg: 29.7, published: 205 },
    // FAA private pilot knowledge test, density altitude chart (value from memory).
    { elevationFt: 1386, inHg: 29.97, published: 1341 },
    { elevationFt: 3563, inHg: 29.96, published: 3527 },
    { elevationFt: 1380, inHg: 28.22, published: 2991 },
  ])('of $elevationFt ft with $inHg inHg is $published ft', ({ elevationFt, inHg, published }) => {
    expect(apart(pressureAltitudeFt(hPa(inHg), elevationFt), published)).toBeLessThan(1);
  });

  test('is the elevation with 1013.25 hPa', () => {
    expect(pressureAltitudeFt(1013.25, 1234)).toBeCloseTo(1234, 9);
  });

  test('rises by 27 to 28 ft for each hectopascal less, near sea level', () => {
    // FAA-H-8083-28 and ICAO Doc 8168 use 27 to 30 ft a hectopascal (value from memory).
    const perHpa = (pressureAltitudeFt(1012.25, 0) ?? 0) - (pressureAltitudeFt(1013.25, 0) ?? 0);
    expect(perHpa).toBeGreaterThan(27);
    expect(perHpa).toBeLessThan(28);
  });

  test('an inch of mercury is 33.8639 hPa, and the standard pressure 29.92 inHg', () => {
    expect(inHgFromHpa(33.8639)).toBeCloseTo(1, 9);
    expect(inHgFromHpa(1013.25).toFixed(2)).toBe('29.92');
  });
});

describe('density altitude', () => {
  test('of 5 883 ft with 30.10 inHg at 70 °F is 7 700 ft', () => {
    // FAA-H-8083-25A, ch. 10, sample problem 1, read off the chart to 100 ft.
    const found = densityAltitudeFt(pressureAltitudeFt(hPa(30.1), 5883) ?? 0, celsius(70));
    expect(apart(found, 7700)).toBeLessThan(50);
  });

  test.each([
    // FAA private pilot knowledge test (value from memory); its chart is read to a few hundred feet,
    // and its answers lie 500 to 1 000 ft apart.
    { elevationFt: 5250, inHg: 29.25, fahrenheit: 81, published: 8500 },
    { elevationFt: 3894, inHg: 30.35, fahrenheit: 25, published: 2000 },
  ])(
    'of $elevationFt ft with $inHg inHg at $fahrenheit °F is $published ft',
    ({ elevationFt, inHg, fahrenheit, published }) => {
      const pressureFt = pressureAltitudeFt(hPa(inHg), elevationFt) ?? 0;
      expect(apart(densityAltitudeFt(pressureFt, celsius(fahrenheit)), published)).toBeLessThan(
        100,
      );
    },
  );

  test.each([
    // The same test, on changes (value from memory).
    { from: [3000, 30], to: [3000, 50], published: 1300 },
    { from: [5000, 25], to: [5000, 50], published: 1650 },
    { from: [1250, 90], to: [1750, 55], published: -1700 },
  ] as const)('changes by $published ft from $from to $to ft and °F', ({ from, to, published }) => {
    const at = ([pressureFt, fahrenheit]: readonly [number, number]) =>
      densityAltitudeFt(pressureFt, celsius(fahrenheit)) ?? Number.NaN;
    expect(apart(at(to) - at(from), published)).toBeLessThan(110);
  });

  test('goes by about 120 ft for each °C off standard', () => {
    // Common practice; within 150 ft up to 20 °C off, at heights where fields lie.
    for (let pressureFt = 0; pressureFt <= 10_000; pressureFt += 1000) {
      const standardC = 15 - 0.0065 * 0.3048 * pressureFt;
      for (let off = -20; off <= 20; off += 5) {
        const ruled = pressureFt + 120 * off;
        expect(apart(densityAltitudeFt(pressureFt, standardC + off), ruled)).toBeLessThan(150);
      }
    }
  });

  test('has the density that the standard atmosphere has there', () => {
    for (const [pressureFt, temperatureC] of [
      [-1000, 45],
      [0, -30],
      [5718, 21.1],
      [12_000, 10],
    ] as const) {
      const foundFt = densityAltitudeFt(pressureFt, temperatureC) ?? Number.NaN;
      const standard = isaDensityKgM3(foundFt * 0.3048) / 1.225;
      expect(densityRatio(pressureFt, temperatureC)).toBeCloseTo(standard, 5);
    }
  });
});

test('air of 30 °C with a dew point of 28 °C is as thin as dry air some 480 ft higher', () => {
  // Saturation pressure at 28 °C 37.8 hPa (WMO-No. 8, Annex 4.B); water 18.015 against air 28.964 g/mol.
  const moist = densityAltitudeFt(0, 30, 28) ?? Number.NaN;
  const dry = densityAltitudeFt(0, 30) ?? Number.NaN;
  expect(Math.abs(moist - dry - 480)).toBeLessThan(10);
  const lighter = 1 - ((1 - 18.015 / 28.964) * 37.8) / 1013.25;
  expect(isaDensityKgM3(moist * 0.3048) / isaDensityKgM3(dry * 0.3048)).toBeCloseTo(lighter, 4);
  expect(densityAltitudeFt(0, 30, null)).toBe(dry);
});
