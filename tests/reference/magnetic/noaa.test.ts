import { expect, test } from 'vitest';
import { fieldModelFor } from '../../../src/core/earth/fieldModel';
import { magneticField, variationDeg } from '../../../src/core/earth/variation';
import { dateOf } from './decimalYear';

/**
 * NOAA NCEI, WMM2025 coefficient package, WMM2025_TestValues.txt: decimal year, km above the
 * ellipsoid, latitude, longitude, declination.
 */
const WMM2025 = [
  [2025.0, 28, 89, -121, -99.77],
  [2025.0, 65, 43, 93, 0.5],
  [2025.0, 51, -33, 109, -5.49],
  [2025.0, 3, -50, -103, 27.96],
  [2025.5, 6, -36, -137, 20.28],
  [2025.5, 63, 26, 81, 0.51],
  [2025.5, 8, -66, 17, -33.14],
  [2026.0, 74, -57, 3, -22.51],
  [2026.0, 62, -14, 99, -1.43],
  [2026.5, 14, 0, 80, -3.1],
  [2027.0, 37, -66, -5, -17.22],
  [2027.5, 73, -72, 95, -102.64],
] as const;

test.each(WMM2025)(
  'WMM2025 at %f, %i km, %i, %i has variation %f',
  async (year, km, latDeg, lonDeg, variation) => {
    const at = dateOf(year);
    const tables = await fieldModelFor(at);
    expect(tables.name).toBe('WMM2025');
    // Published to 0.01°; 0.01° is the agreement wanted.
    const found = variationDeg({ latDeg, lonDeg, elevationM: km * 1000 }, at, tables);
    expect(Math.abs(found - variation)).toBeLessThan(0.01);
  },
);

/**
 * NOAA NCEI, WMM2020 coefficient package, README-WMM-COEFS.txt, section 2: decimal year, km,
 * latitude, longitude, declination, then north, east, down and horizontal intensity in nT.
 */
const WMM2020 = [
  [2020.0, 66, 14, 143, 0.12, 34916.8, 70.2, 8114.9, 34916.9],
  [2020.0, 18, 0, 21, 1.05, 29311.2, 536.0, -14589.0, 29316.1],
  [2020.5, 6, -36, -137, 20.16, 23948.6, 8791.9, -32897.6, 25511.4],
  [2020.5, 63, 26, 81, 0.43, 34737.7, 259.2, 30023.4, 34738.7],
] as const;

test.each(WMM2020)(
  'WMM2020 at %f, %i km, %i, %i has variation %f',
  async (year, km, latDeg, lonDeg, variation, north, east, down, horizontal) => {
    const at = dateOf(year);
    const tables = await fieldModelFor(at);
    expect(tables.name).toBe('WMM2020');
    const field = magneticField({ latDeg, lonDeg, elevationM: km * 1000 }, at, tables);
    expect(Math.abs(field.variationDeg - variation)).toBeLessThan(0.01);
    // Published to 0.1 nT.
    expect(field.northNt).toBeCloseTo(north, 1);
    expect(field.eastNt).toBeCloseTo(east, 1);
    expect(field.downNt).toBeCloseTo(down, 1);
    expect(field.horizontalNt).toBeCloseTo(horizontal, 1);
  },
);
