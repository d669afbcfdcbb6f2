import fc from 'fast-check';
import geographiclib from 'geographiclib-geodesic';
import { expect, test } from 'vitest';
import { degreesOf, trueDeg } from '../../../src/core/angle';
import { destination } from '../../../src/core/earth/destination';
import { type GeodesicLine, lineBetween } from '../../../src/core/earth/geodesic';
import type { Place } from '../../../src/core/earth/place';
import { planPoint } from '../../../src/core/earth/planPoint';

// C. F. F. Karney, "Algorithms for geodesics", J. Geodesy 87 (2013), in the author's own library.
const { WGS84 } = geographiclib.Geodesic;

const place = (maxLat: number) =>
  fc.record({
    latDeg: fc.double({ min: -maxLat, max: maxLat, noNaN: true }),
    lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  });
const azimuth = fc.double({ min: 0, max: 360, noNaN: true });

const wrap = (deg: number) => ((((deg + 180) % 360) + 360) % 360) - 180;

function azimuthOf(line: GeodesicLine | null): number {
  if (line === null || line.azimuth === null) throw new Error('no direction');
  return degreesOf(line.azimuth);
}

function lineThere(from: { latDeg: number; lonDeg: number }, azimuthDeg: number, metres: number) {
  const there = WGS84.Direct(from.latDeg, from.lonDeg, azimuthDeg, metres);
  return { latDeg: there.lat2 ?? Number.NaN, lonDeg: there.lon2 ?? Number.NaN };
}

test('a line as long as a runway is found to a micrometre and to a ten-thousandth of a degree', () => {
  fc.assert(
    fc.property(
      place(89.9),
      azimuth,
      fc.double({ min: 100, max: 6000, noNaN: true }),
      (from, azimuthDeg, metres) => {
        const line = lineBetween(from, lineThere(from, azimuthDeg, metres));
        expect(Math.abs((line?.distanceM ?? 0) - metres)).toBeLessThan(1e-6);
        expect(Math.abs(wrap(azimuthOf(line) - azimuthDeg))).toBeLessThan(1e-4);
      },
    ),
    { numRuns: 2000 },
  );
});

test('a line across the date line is as short as it is', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -85, max: 85, noNaN: true }),
      fc.double({ min: 0.001, max: 0.05, noNaN: true }),
      fc.double({ min: 0.001, max: 0.05, noNaN: true }),
      (latDeg, west, east) => {
        const from = { latDeg, lonDeg: 180 - west };
        const to = { latDeg: latDeg + 0.01, lonDeg: -180 + east };
        const { s12, azi1 } = WGS84.Inverse(from.latDeg, from.lonDeg, to.latDeg, to.lonDeg);
        const line = lineBetween(from, to);
        expect(line?.distanceM).toBeCloseTo(s12 ?? Number.NaN, 5);
        expect(wrap(azimuthOf(line) - (azi1 ?? Number.NaN))).toBeCloseTo(0, 5);
      },
    ),
  );
});

test('a line to anywhere but the far side of the globe is found to a millimetre', () => {
  fc.assert(
    fc.property(
      place(90),
      azimuth,
      // Half the circumference is 20 004 km; the last part is where the iteration may not settle.
      fc.double({ min: 1, max: 19_000_000, noNaN: true }),
      (from, azimuthDeg, metres) => {
        const line = lineBetween(from, lineThere(from, azimuthDeg, metres));
        expect(Math.abs((line?.distanceM ?? 0) - metres)).toBeLessThan(1e-3);
      },
    ),
    { numRuns: 2000 },
  );
});

test('a place has no direction to itself, and one nearly opposite has no answer', () => {
  const here = { latDeg: 12.3, lonDeg: 179.9 };
  expect(lineBetween(here, here)).toEqual({ distanceM: 0, azimuth: null });
  expect(lineBetween(here, { ...here, lonDeg: here.lonDeg - 360 })).toMatchObject({
    azimuth: null,
  });
  expect(lineBetween({ latDeg: 0, lonDeg: 0 }, { latDeg: 0.5, lonDeg: 179.7 })).toBeNull();
});

test('Flinders Peak to Buninyon is 54 972.271 m at 306°52′05.37″', () => {
  // Geocentric Datum of Australia Technical Manual, ICSM, ch. 4.1, on GRS 80, from which WGS 84
  // differs by 0.1 mm in the semi-minor axis.
  const flindersPeak = {
    latDeg: -(37 + 57 / 60 + 3.7203 / 3600),
    lonDeg: 144 + 25 / 60 + 29.5244 / 3600,
  };
  const buninyon = {
    latDeg: -(37 + 39 / 60 + 10.1561 / 3600),
    lonDeg: 143 + 55 / 60 + 35.3839 / 3600,
  };
  const line = lineBetween(flindersPeak, buninyon);
  expect(line?.distanceM).toBeCloseTo(54972.271, 2);
  expect(azimuthOf(line)).toBeCloseTo(306 + 52 / 60 + 5.37 / 3600, 5);
});

test('lengths on the plan of a field are true to a centimetre within 10 km', () => {
  const within = fc.double({ min: 0, max: 10_000, noNaN: true });
  fc.assert(
    fc.property(place(89.5), azimuth, within, azimuth, within, (reference, a, ra, b, rb) => {
      const one = lineThere(reference, a, ra);
      const other = lineThere(reference, b, rb);
      const p = planPoint(reference, one);
      const q = planPoint(reference, other);
      if (!p || !q) throw new Error('no plan');
      const { s12 } = WGS84.Inverse(one.latDeg, one.lonDeg, other.latDeg, other.lonDeg);
      const onPlan = Math.hypot(p.eastM - q.eastM, p.northM - q.northM);
      expect(Math.abs(onPlan - (s12 ?? Number.NaN))).toBeLessThan(0.01);
    }),
    { numRuns: 1000 },
  );
});

test('east is to the right of north on the plan', () => {
  const reference = { latDeg: 64, lonDeg: -21 };
  const north = planPoint(reference, lineThere(reference, 0, 1000));
  const east = planPoint(reference, lineThere(reference, 90, 1000));
  expect(north?.northM).toBeCloseTo(1000, 3);
  expect(north?.eastM).toBeCloseTo(0, 3);
  expect(east?.eastM).toBeCloseTo(1000, 3);
  expect(east?.northM).toBeCloseTo(0, 3);
});

test('a line of a runway’s length ends where it ends, to a tenth of a millimetre', () => {
  fc.assert(
    fc.property(
      place(89.9),
      azimuth,
      fc.double({ min: 1, max: 6000, noNaN: true }),
      (from, azimuthDeg, metres) => {
        expect(
          apartM(destination(from, trueDeg(azimuthDeg), metres), from, azimuthDeg, metres),
        ).toBeLessThan(1e-4);
      },
    ),
    { numRuns: 2000 },
  );
});

test('a line half round the globe ends within a millimetre of where it ends', () => {
  fc.assert(
    fc.property(
      place(90),
      azimuth,
      fc.double({ min: 1, max: 20_000_000, noNaN: true }),
      (from, azimuthDeg, metres) => {
        expect(
          apartM(destination(from, trueDeg(azimuthDeg), metres), from, azimuthDeg, metres),
        ).toBeLessThan(1e-3);
      },
    ),
    { numRuns: 2000 },
  );
});

/** How far a place lies from where the author's own library has the line end, metres. */
function apartM(found: Place, from: Place, azimuthDeg: number, metres: number): number {
  const there = lineThere(from, azimuthDeg, metres);
  return WGS84.Inverse(found.latDeg, found.lonDeg, there.latDeg, there.lonDeg).s12 ?? Number.NaN;
}
