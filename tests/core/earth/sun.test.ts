import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degreesOf, trueDeg } from '../../../src/core/angle';
import { isSunLowAhead, sunDay, sunFacts, sunPosition } from '../../../src/core/earth/sun';

const HOUR_MS = 3_600_000;

const places = fc.record({
  latDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
});
const moments = fc.date({
  min: new Date('1950-01-01T00:00Z'),
  max: new Date('2030-01-01T00:00Z'),
  noInvalidDate: true,
});

describe('night and lights', () => {
  test('night never holds without lights', () => {
    fc.assert(
      fc.property(places, moments, (place, at) => {
        const { night, lights } = sunFacts(place, at);
        return lights.holds || !night.holds;
      }),
    );
  });

  test('are the other way at the moment they last until, and not two seconds before', () => {
    fc.assert(
      fc.property(places, moments, fc.constantFrom('night', 'lights'), (place, at, fact) => {
        const { holds, until } = sunFacts(place, at)[fact];
        if (until === null) return;
        expect(until.getTime()).toBeGreaterThan(at.getTime());
        expect(until.getTime() - at.getTime()).toBeLessThanOrEqual(24 * HOUR_MS);
        expect(sunFacts(place, until)[fact].holds).toBe(!holds);
        const before = new Date(Math.max(until.getTime() - 2000, at.getTime()));
        expect(sunFacts(place, before)[fact].holds).toBe(holds);
      }),
    );
  });

  test('change at the sunset and at the end of the twilight of the day', () => {
    // Two ways to one time: altitudes looked at here, hour angles solved in suncalc.
    fc.assert(
      fc.property(
        fc.record({
          latDeg: fc.double({ min: -55, max: 55, noNaN: true }),
          lonDeg: fc.double({ min: -180, max: 180, noNaN: true }),
        }),
        moments,
        (place, moment) => {
          const day = sunDay(place, moment);
          const { night, lights } = sunFacts(place, day.noon);
          if (day.sunUp.kind !== 'between' || day.civil.kind !== 'between') return false;
          const apartMs = [
            (lights.until?.getTime() ?? 0) - day.sunUp.until.getTime(),
            (night.until?.getTime() ?? 0) - day.civil.until.getTime(),
          ];
          return apartMs.every((ms) => Math.abs(ms) < 3000);
        },
      ),
    );
  });

  // The sun's declination is 23.4° at the solstices, so its height at noon is 90° − |φ − δ| and at
  // midnight |φ + δ| − 90° (arithmetic).
  test('do not come on a polar day: 78 N in June, sun 11° high at midnight', () => {
    const place = { latDeg: 78, lonDeg: 15 };
    const { night, lights } = sunFacts(place, new Date('2026-06-21T00:00Z'));
    expect([night, lights]).toEqual([
      { holds: false, until: null },
      { holds: false, until: null },
    ]);
    const day = sunDay(place, new Date('2026-06-21T00:00Z'));
    expect([day.sunUp.kind, day.civil.kind]).toEqual(['always', 'always']);
  });

  test('do not end in a polar night: 78 N in December, sun 11° down at noon', () => {
    const place = { latDeg: 78, lonDeg: 15 };
    const { night, lights } = sunFacts(place, new Date('2026-12-21T11:00Z'));
    expect([night, lights]).toEqual([
      { holds: true, until: null },
      { holds: true, until: null },
    ]);
    const day = sunDay(place, new Date('2026-12-21T11:00Z'));
    expect([day.sunUp.kind, day.civil.kind]).toEqual(['never', 'never']);
  });

  test('part where the sun stays down but comes within 6°: 70 N in December, 3.4° down at noon', () => {
    const place = { latDeg: 70, lonDeg: 15 };
    const { night, lights } = sunFacts(place, new Date('2026-12-21T11:00Z'));
    expect(night.holds).toBe(false);
    expect(night.until).not.toBeNull();
    expect(lights).toEqual({ holds: true, until: null });
    const day = sunDay(place, new Date('2026-12-21T11:00Z'));
    expect([day.sunUp.kind, day.civil.kind]).toEqual(['never', 'between']);
  });

  test('hold at the pole for half the year', () => {
    const pole = { latDeg: 90, lonDeg: 0 };
    expect(sunFacts(pole, new Date('2026-01-15T00:00Z')).night).toEqual({
      holds: true,
      until: null,
    });
    expect(sunFacts(pole, new Date('2026-07-15T00:00Z')).lights).toEqual({
      holds: false,
      until: null,
    });
  });
});

describe('the sun', () => {
  test('stands south at noon in the north, and north in the south', () => {
    for (const [latDeg, azimuth] of [
      [50, 180],
      [-50, 0],
    ] as const) {
      const place = { latDeg, lonDeg: 20 };
      const { noon } = sunDay(place, new Date('2026-11-24T11:00Z'));
      const off = Math.abs(degreesOf(sunPosition(place, noon).azimuth) - azimuth);
      expect(Math.min(off, 360 - off)).toBeLessThan(0.05);
    }
  });

  test('has its noon within 12 hours of the moment asked about, also beside the date line', () => {
    fc.assert(
      fc.property(places, moments, (place, at) => {
        const apart = Math.abs(sunDay(place, at).noon.getTime() - at.getTime());
        // Noon by the sun wanders against the clock by up to 17 minutes over a year.
        return apart <= 12.3 * HOUR_MS;
      }),
    );
  });

  test('is not worked out for what is no date or no place', () => {
    const place = { latDeg: 10, lonDeg: 10 };
    expect(() => sunFacts(place, new Date(Number.NaN))).toThrow(RangeError);
    expect(() => sunDay(place, new Date(Number.NaN))).toThrow(RangeError);
    expect(() => sunPosition({ latDeg: Number.NaN, lonDeg: 0 }, new Date(0))).toThrow(RangeError);
  });

  // Common practice, no published source: within 25° of the heading, 0 to 15° high.
  test.each([
    [270, 5, 280, true],
    [10, 15, 345, true],
    [10, 15.1, 345, false],
    [10, -0.1, 10, false],
    [296, 5, 270, false],
    [90, 5, 270, false],
  ])('at azimuth %f, %f° high, on heading %f is low ahead: %s', (azimuth, high, heading, low) => {
    const sun = { azimuth: trueDeg(azimuth), altitudeDeg: high };
    expect(isSunLowAhead(sun, trueDeg(heading))).toBe(low);
  });
});
