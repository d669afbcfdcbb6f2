import geomagnetism from 'geomagnetism';
import { expect, test } from 'vitest';
import { fieldModelFor } from '../../../src/core/earth/fieldModel';
import { magneticField } from '../../../src/core/earth/variation';
import { apartDeg } from './decimalYear';

/**
 * The npm package geomagnetism 0.2, an independent synthesis over the same WMM tables. It counts
 * every year as 365 days and goes over to a new model on its release date, so the dates are in
 * common years and away from the switches.
 */
const DATES = [
  ['WMM2015', '2017-03-03T00:00Z'],
  ['WMM2015v2', '2019-06-01T12:00Z'],
  ['WMM2020', '2023-05-05T06:00Z'],
  ['WMM2025', '2026-11-24T18:00Z'],
] as const;

/** Every 12° of latitude and 17° of longitude and the poles, at five heights by turns: 374 places. */
const PLACES = [-90, -84, -72, -60, -48, -36, -24, -12, 0, 12, 24, 36, 48, 60, 72, 84, 90].flatMap(
  (latDeg) =>
    Array.from({ length: 22 }, (_, i) => ({
      latDeg,
      lonDeg: -180 + 17 * i,
      elevationM: [0, 150, 1200, 4000, 12_000][i % 5] ?? 0,
    })),
);

test.each(DATES)('%s on %s agrees with geomagnetism everywhere', async (name, date) => {
  const at = new Date(date);
  const tables = await fieldModelFor(at);
  expect(tables.name).toBe(name);
  const reference = geomagnetism.model(at);
  expect(reference.name.replace('-', '')).toBe(name);
  for (const place of PLACES) {
    const where = `${place.latDeg}, ${place.lonDeg}, ${place.elevationM} m`;
    const ours = magneticField(place, at, tables);
    const theirs = reference.point([place.latDeg, place.lonDeg, place.elevationM / 1000]);
    // The same numbers by another way round: only rounding and the tenth digit of the ellipsoid's
    // minor axis may differ.
    expect(Math.abs(ours.northNt - theirs.x), where).toBeLessThan(1e-4);
    expect(Math.abs(ours.eastNt - theirs.y), where).toBeLessThan(1e-4);
    expect(Math.abs(ours.downNt - theirs.z), where).toBeLessThan(1e-4);
    expect(apartDeg(ours.variationDeg, theirs.decl), where).toBeLessThan(1e-5);
  }
});
