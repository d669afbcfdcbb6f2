import { expect, test } from 'vitest';
import { cosDeg, sinDeg } from '../../../src/core/angle';
import { fieldModelFor } from '../../../src/core/earth/fieldModel';
import { fieldAtGeocentric } from '../../../src/core/earth/harmonics';
import { dateOf } from './decimalYear';

/**
 * British Geological Survey's IGRF-13 test points, as in the tests of github ciaranbe/pyIGRF
 * (tests_igrf13.py; their "latitude" is colatitude): year, geocentric latitude, longitude, radius
 * in km, then north, east and down in nT. The definitive fields of 1945 to 2010 and those before
 * them did not change between the 12th and the 13th generation.
 */
const BGS_POINTS = [
  [1900, -85, -150, 6300, -5072.93, 10620.34, -67233.55, 115.532],
  [1930, -45, -90, 6400, 23925.47, 10358.94, -30640.98, 23.411],
  [1960, -5, -30, 6500, 23647.0, -9302.27, -3610.73, -21.474],
  [1990, 35, 30, 6600, 25224.81, 1058.25, 30965.61, 2.402],
] as const;

test.each(BGS_POINTS)(
  'IGRF in %i at %i, %i, %i km is the field that BGS gives',
  async (year, latDeg, lonDeg, radiusKm, north, east, down, variation) => {
    const at = dateOf(year);
    const coefficients = (await fieldModelFor(at)).coefficientsAt(at);
    const point = { sinLat: sinDeg(latDeg), cosLat: cosDeg(latDeg), lonDeg, radiusKm };
    const field = fieldAtGeocentric(coefficients, point);
    // Published to 0.01 nT.
    expect(Math.abs(field.northNt - north)).toBeLessThan(0.01);
    expect(Math.abs(field.eastNt - east)).toBeLessThan(0.01);
    expect(Math.abs(field.downNt - down)).toBeLessThan(0.01);
    // Arithmetic on the published components: atan2(east, north), to 0.001°.
    const found = (Math.atan2(field.eastNt, field.northNt) * 180) / Math.PI;
    expect(Math.abs(found - variation)).toBeLessThan(0.001);
  },
);

/** g(1, 0) in nT. IAGA V-MOD, igrf14coeffs.txt. */
const G10 = [
  [1900, -31543],
  [1945, -30594],
  [1985, -29873],
  [2010, -29496.57],
] as const;

test.each(G10)('IGRF in %i has g(1, 0) = %f nT', async (year, g10) => {
  const at = dateOf(year);
  expect((await fieldModelFor(at)).coefficientsAt(at)[0]).toBe(g10);
});
