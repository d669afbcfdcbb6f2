import fc from 'fast-check';
import { getPosition } from 'suncalc';
import { describe, expect, test } from 'vitest';
import { trueDeg } from '../../../src/core/angle';
import { lowSunAhead } from '../../../src/core/earth/lowSun';

const MINUTE_MS = 60_000;

interface Spot {
  readonly latDeg: number;
  readonly lonDeg: number;
}

/** Low ahead, by the library alone. Within 25°, 0 to 15° high: common practice, no published source. */
function isLowAhead({ latDeg, lonDeg }: Spot, headingDeg: number, ms: number): boolean {
  const { azimuth, altitude } = getPosition(new Date(ms), latDeg, lonDeg);
  const off = Math.abs(((azimuth - headingDeg + 540 + 360) % 360) - 180);
  return altitude >= 0 && altitude <= 15 && off <= 25;
}

/** Minute by minute, as slow as it takes. */
function byMinutes(place: Spot, headingDeg: number, atMs: number) {
  const low = (ms: number) => isLowAhead(place, headingDeg, ms);
  const whole = (ms: number) => Math.ceil(ms / MINUTE_MS) * MINUTE_MS;
  const endOf = (from: number) => {
    let ms = whole(from + 1);
    while (low(ms)) ms += MINUTE_MS;
    return ms;
  };
  if (low(atMs)) return { kind: 'now', from: atMs, until: endOf(atMs) };
  for (let ms = whole(atMs + 1); ms <= atMs + 180 * MINUTE_MS; ms += MINUTE_MS) {
    if (low(ms)) return { kind: 'later', from: ms, until: endOf(ms) };
  }
  return { kind: 'none' };
}

const stated = (place: Spot, headingDeg: number, atMs: number) => {
  const sun = lowSunAhead(place, trueDeg(headingDeg), new Date(atMs));
  return sun.kind === 'none'
    ? { kind: sun.kind }
    : { kind: sun.kind, from: sun.from.getTime(), until: sun.until.getTime() };
};

const headings = fc.integer({ min: 0, max: 359 });
const longitudes = fc.double({ min: -180, max: 180, noNaN: true });
const moments = fc.date({
  min: new Date('1950-01-01T00:00Z'),
  max: new Date('2030-01-01T00:00Z'),
  noInvalidDate: true,
});

describe('a low sun ahead', () => {
  test.each([
    ['anywhere', -90, 90],
    ['in the far north', 62, 90],
    ['in the far south', -90, -62],
  ])(
    'is what every minute looked at says, %s',
    (_, min, max) => {
      const latitudes = fc.double({ min, max, noNaN: true });
      fc.assert(
        fc.property(latitudes, longitudes, headings, moments, (latDeg, lonDeg, heading, at) => {
          const place = { latDeg, lonDeg };
          const ms = at.getTime();
          expect(stated(place, heading, ms)).toEqual(byMinutes(place, heading, ms));
        }),
        { numRuns: 150 },
      );
    },
    30_000,
  );

  test('is met often enough above, also when it comes later', () => {
    const kinds = { none: 0, now: 0, later: 0 };
    for (let hour = 0; hour < 24; hour++) {
      for (let heading = 0; heading < 360; heading += 30) {
        const at = Date.UTC(2026, 8, 22, hour, 13);
        kinds[lowSunAhead({ latDeg: 50, lonDeg: 0 }, trueDeg(heading), new Date(at)).kind]++;
      }
    }
    for (const count of Object.values(kinds)) expect(count).toBeGreaterThan(3);
  });

  test('stands left or right of the heading by as much as the library says', () => {
    // 22 September, 50 N: the sun sets close to due west, coming from the left of it.
    const place = { latDeg: 50, lonDeg: 0 };
    const at = new Date('2026-09-22T17:00:00Z');
    const { azimuth, altitude } = getPosition(at, place.latDeg, place.lonDeg);
    const west = lowSunAhead(place, trueDeg(270), at);
    expect(west).toMatchObject({
      kind: 'now',
      relativeDeg: expect.closeTo(azimuth - 270, 9),
      altitudeDeg: expect.closeTo(altitude, 9),
    });
    // It is seven minutes ahead of the clock that day and goes by 15 sin 50° = 11.5° an hour: 53
    // minutes before it sets in the west it stands 10° to the left (arithmetic).
    expect(Math.abs(azimuth - 270 + 10)).toBeLessThan(1);
    const more = lowSunAhead(place, trueDeg(250), at);
    expect(more).toMatchObject({ kind: 'now', relativeDeg: expect.closeTo(azimuth - 250, 9) });
    expect(lowSunAhead(place, trueDeg(90), at)).toEqual({ kind: 'none' });
  });

  test('ends with the sun at the horizon as it is seen where the heading is due west at the equinox', () => {
    // USNO, San Francisco, 22 September 2012: sunset 18:06 Pacific standard time. Its centre sits on
    // the horizon about a minute and a half earlier: 16′ at 12° an hour.
    const place = { latDeg: 37 + 46 / 60, lonDeg: -(122 + 26 / 60) };
    const sun = lowSunAhead(place, trueDeg(270), new Date('2012-09-22T17:45:00-08:00'));
    if (sun.kind !== 'now') throw new Error(sun.kind);
    const beforeMin = (Date.parse('2012-09-22T18:06:00-08:00') - sun.until.getTime()) / MINUTE_MS;
    expect(beforeMin).toBeGreaterThanOrEqual(0);
    expect(beforeMin).toBeLessThanOrEqual(3);
  });

  test('comes round through every heading on a polar day with the sun 11° high at midnight', () => {
    // 78 N on 21 June: 78 + 23.4 − 90 = 11.4° at midnight, in the north (arithmetic).
    const place = { latDeg: 78, lonDeg: 0 };
    const midnight = new Date('2026-06-21T00:00:00Z');
    const north = lowSunAhead(place, trueDeg(0), midnight);
    expect(north).toMatchObject({ kind: 'now' });
    if (north.kind !== 'now') throw new Error(north.kind);
    expect(Math.abs(north.altitudeDeg - 11.4)).toBeLessThan(0.3);
    // It goes round by 15° an hour or a little more, so 25° are left behind in 1 to 2 hours.
    const lasts = (north.until.getTime() - midnight.getTime()) / MINUTE_MS;
    expect(lasts).toBeGreaterThan(60);
    expect(lasts).toBeLessThan(120);
    // An hour and some later it is ahead on 050.
    const later = lowSunAhead(place, trueDeg(50), midnight);
    expect(later).toMatchObject({ kind: 'later', relativeDeg: expect.closeTo(-25, 0) });
  });

  test('never comes in a polar night', () => {
    for (let heading = 0; heading < 360; heading += 10) {
      const at = new Date('2026-12-21T11:00:00Z');
      expect(lowSunAhead({ latDeg: 78, lonDeg: 15 }, trueDeg(heading), at).kind).toBe('none');
    }
  });

  test('is not worked out for what is no date', () => {
    expect(() => lowSunAhead({ latDeg: 0, lonDeg: 0 }, trueDeg(0), new Date(Number.NaN))).toThrow(
      RangeError,
    );
  });
});

test('three hours ahead is still looked at, and a minute more is not', () => {
  // Found minute by minute with the library alone, on an evening with the sun still high.
  const place = { latDeg: 52, lonDeg: 4 };
  const noon = Date.UTC(1987, 3, 5, 12, 0);
  let first = noon;
  while (!isLowAhead(place, 270, first)) first += MINUTE_MS;
  expect(stated(place, 270, first - 180 * MINUTE_MS)).toMatchObject({ kind: 'later', from: first });
  expect(stated(place, 270, first - 181 * MINUTE_MS)).toEqual({ kind: 'none' });
});
