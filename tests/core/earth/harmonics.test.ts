import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cosDeg, sinDeg } from '../../../src/core/angle';
import { type FieldVector, fieldAtGeocentric } from '../../../src/core/earth/harmonics';

const DEGREE = 13;

/** A place in g10, g11, h11, g20, ... for each pair of degree and order. */
const TERMS = Array.from({ length: DEGREE }, (_, i) => i + 1).flatMap((n) =>
  Array.from({ length: n + 1 }, (_, m) => ({ n, m, g: n * n - 1 + Math.max(0, 2 * m - 1) })),
);

const coefficients = fc
  .array(fc.double({ min: -1000, max: 1000, noNaN: true }), {
    minLength: DEGREE * (DEGREE + 2),
    maxLength: DEGREE * (DEGREE + 2),
  })
  .map((numbers) => Float64Array.from(numbers));
const latitude = fc.double({ min: -90, max: 90, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });

const fieldAt = (numbers: Float64Array, latDeg: number, lonDeg: number, radiusKm = 6371.2) =>
  fieldAtGeocentric(numbers, { sinLat: sinDeg(latDeg), cosLat: cosDeg(latDeg), lonDeg, radiusKm });

/** Numbers of either field may differ by rounding alone: sums of 195 terms of up to 14 000 nT. */
function expectSame(a: FieldVector, b: FieldVector) {
  expect(Math.abs(a.northNt - b.northNt)).toBeLessThan(1e-6);
  expect(Math.abs(a.eastNt - b.eastNt)).toBeLessThan(1e-6);
  expect(Math.abs(a.downNt - b.downNt)).toBeLessThan(1e-6);
}

describe('a sum of spherical harmonics', () => {
  test('with g(1, 0) alone is a dipole along the axis', () => {
    // Any textbook of geomagnetism: north = −g sin θ (a/r)³, down = −2 g cos θ (a/r)³.
    const g = -30_000;
    for (const latDeg of [-90, -45, 0, 30, 90]) {
      for (const radiusKm of [6371.2, 2 * 6371.2]) {
        const shrink = (6371.2 / radiusKm) ** 3;
        expectSame(fieldAt(Float64Array.of(g, 0, 0), latDeg, 77, radiusKm), {
          northNt: -g * cosDeg(latDeg) * shrink,
          eastNt: 0,
          downNt: -2 * g * sinDeg(latDeg) * shrink,
        });
      }
    }
  });

  test('with g(2, 2) alone follows the second sectoral function, (√3 / 2) sin²θ', () => {
    // Schmidt semi-normalised P(2, 2): Chapman and Bartels, Geomagnetism, ch. 17 (value from memory).
    const g = 1000;
    const only = Float64Array.of(0, 0, 0, 0, 0, 0, g, 0);
    const [latDeg, lonDeg] = [35, 20];
    expectSame(fieldAt(only, latDeg, lonDeg), {
      northNt: g * cosDeg(2 * lonDeg) * Math.sqrt(3) * cosDeg(latDeg) * sinDeg(latDeg),
      eastNt: g * 2 * sinDeg(2 * lonDeg) * (Math.sqrt(3) / 2) * cosDeg(latDeg),
      downNt: -3 * g * cosDeg(2 * lonDeg) * (Math.sqrt(3) / 2) * cosDeg(latDeg) ** 2,
    });
  });

  test('turned about the axis gives the field turned about the axis', () => {
    fc.assert(
      fc.property(coefficients, latitude, longitude, longitude, (numbers, lat, lon, turn) => {
        const turned = Float64Array.from(numbers);
        for (const { m, g } of TERMS) {
          if (m === 0) continue;
          const [a, b] = [numbers[g] ?? 0, numbers[g + 1] ?? 0];
          turned[g] = a * cosDeg(m * turn) - b * sinDeg(m * turn);
          turned[g + 1] = a * sinDeg(m * turn) + b * cosDeg(m * turn);
        }
        expectSame(fieldAt(turned, lat, lon + turn), fieldAt(numbers, lat, lon));
      }),
    );
  });

  test('mirrored in the meridian of Greenwich mirrors east', () => {
    fc.assert(
      fc.property(coefficients, latitude, longitude, (numbers, lat, lon) => {
        const mirrored = Float64Array.from(numbers);
        for (const { m, g } of TERMS) if (m > 0) mirrored[g + 1] = -(numbers[g + 1] ?? 0);
        const field = fieldAt(numbers, lat, lon);
        expectSame(fieldAt(mirrored, lat, -lon), { ...field, eastNt: -field.eastNt });
      }),
    );
  });

  test('mirrored in the equator mirrors north', () => {
    fc.assert(
      fc.property(coefficients, latitude, longitude, (numbers, lat, lon) => {
        const mirrored = Float64Array.from(numbers);
        for (const { n, m, g } of TERMS) {
          if ((n + m) % 2 === 0) continue;
          mirrored[g] = -(numbers[g] ?? 0);
          if (m > 0) mirrored[g + 1] = -(numbers[g + 1] ?? 0);
        }
        const field = fieldAt(numbers, lat, lon);
        expectSame(fieldAt(mirrored, -lat, lon), { ...field, northNt: -field.northNt });
      }),
    );
  });

  test('has no sources: what goes into a small box comes out of it', () => {
    // Maxwell: the divergence in spherical coordinates is zero; by central differences.
    const numbers = Float64Array.from({ length: 195 }, (_, i) => 500 * Math.sin(3 * i + 1));
    for (const [lat, lon] of [
      [51, -4],
      [-20, 150],
      [70, 100],
    ] as const) {
      const step = 1e-3;
      const stepKm = 0.1;
      const radius = 6371.2;
      const perRadian = 180 / Math.PI / (2 * step);
      const flux = (r: number) => -(r ** 2) * fieldAt(numbers, lat, lon, r).downNt;
      const up = (flux(radius + stepKm) - flux(radius - stepKm)) / (2 * stepKm) / radius ** 2;
      const towardsNorth = (at: number) => fieldAt(numbers, at, lon).northNt * cosDeg(at);
      const north =
        ((towardsNorth(lat + step) - towardsNorth(lat - step)) * perRadian) /
        (radius * cosDeg(lat));
      const towardsEast = (at: number) => fieldAt(numbers, lat, at).eastNt;
      const east =
        ((towardsEast(lon + step) - towardsEast(lon - step)) * perRadian) / (radius * cosDeg(lat));
      // The three are of the order of 1 nT/km each; together they vanish.
      expect(Math.abs(up)).toBeGreaterThan(0.1);
      expect(Math.abs(up + north + east)).toBeLessThan(1e-5);
    }
  });
});
