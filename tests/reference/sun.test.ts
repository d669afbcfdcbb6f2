import { describe, expect, test } from 'vitest';
import { degreesOf } from '../../src/core/angle';
import { type Above, sunDay, sunFacts, sunPosition } from '../../src/core/earth/sun';

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** The two times of a day that has both. */
function between(above: Above): { from: Date; until: Date } {
  if (above.kind !== 'between') throw new Error(`${above.kind}, not between two times`);
  return above;
}

/** A civil time of a zone as a moment: `2012-03-20`, `0612`, −8. */
function civilTime(date: string, hhmm: string, zoneHours: number): number {
  return Date.parse(`${date}T${hhmm.slice(0, 2)}:${hhmm.slice(2)}Z`) - zoneHours * HOUR_MS;
}

describe('US Naval Observatory, Sun and Moon rise and set tables', () => {
  /** San Francisco, N37 46 W122 26, 2012, Pacific standard time; rounded to the minute. */
  const place = { latDeg: 37 + 46 / 60, lonDeg: -(122 + 26 / 60) };
  const days = [
    ['2012-01-01', '0725', '1701'],
    ['2012-03-20', '0612', '1822'],
    ['2012-06-21', '0448', '1935'],
    ['2012-09-22', '0558', '1806'],
    ['2012-12-21', '0722', '1655'],
  ] as const;

  test.each(days)('San Francisco on %s: sunrise %s, sunset %s', (date, rise, set) => {
    const { from, until } = between(sunDay(place, new Date(civilTime(date, '1200', -8))).sunUp);
    // The table is rounded to the minute: half a minute, and as much again for the model.
    expect(Math.abs(from.getTime() - civilTime(date, rise, -8))).toBeLessThan(MINUTE_MS);
    expect(Math.abs(until.getTime() - civilTime(date, set, -8))).toBeLessThan(MINUTE_MS);
  });

  /**
   * 20 March 2002, Eastern standard time, as quoted from USNO by
   * stevekluge.com/astronomy/equinoxsunrise.html: dawn, sunrise, noon, sunset, dusk. The evening
   * times there are about a minute late, so 2 minutes.
   */
  const equinox = [
    ['Washington', -77.0, '0545', '0612', '1216', '1821', '1847'],
    ['Cape May', -74.9, '0537', '0604', '1207', '1812', '1839'],
  ] as const;

  test.each(equinox)('%s at the equinox of 2002', (_, lonDeg, dawn, rise, noon, set, dusk) => {
    const date = '2002-03-20';
    const day = sunDay({ latDeg: 38.9, lonDeg }, new Date(civilTime(date, '1200', -5)));
    const sunUp = between(day.sunUp);
    const civil = between(day.civil);
    for (const [found, published] of [
      [civil.from, dawn],
      [sunUp.from, rise],
      [day.noon, noon],
      [sunUp.until, set],
      [civil.until, dusk],
    ] as const) {
      const apart = Math.abs(found.getTime() - civilTime(date, published, -5));
      expect(apart, published).toBeLessThan(2 * MINUTE_MS);
    }
  });

  test('night and lights change at the published times of that day', () => {
    const washington = { latDeg: 38.9, lonDeg: -77.0 };
    const at = (hhmm: string) => new Date(civilTime('2002-03-20', hhmm, -5));
    const near = (until: Date | null, hhmm: string) =>
      expect(Math.abs((until?.getTime() ?? 0) - at(hhmm).getTime())).toBeLessThan(2 * MINUTE_MS);

    const early = sunFacts(washington, at('0500'));
    expect([early.night.holds, early.lights.holds]).toEqual([true, true]);
    near(early.night.until, '0545');
    near(early.lights.until, '0612');

    const dawn = sunFacts(washington, at('0600'));
    expect([dawn.night.holds, dawn.lights.holds]).toEqual([false, true]);
    near(dawn.night.until, '1847');
    near(dawn.lights.until, '0612');

    const midday = sunFacts(washington, at('1300'));
    expect([midday.night.holds, midday.lights.holds]).toEqual([false, false]);
    near(midday.night.until, '1847');
    near(midday.lights.until, '1821');
  });
});

describe('NREL/TP-560-34302, Solar Position Algorithm', () => {
  /** Table A2.1, Greenwich meridian, UT. */
  const days = [
    ['1994-01-02', 35, '07:08:12.8', '16:59:55.9'],
    ['1996-07-05', -35, '07:08:15.4', '17:01:04.5'],
    ['2004-12-04', -35, '04:38:57.1', '19:02:02.5'],
  ] as const;

  test.each(days)(
    'on %s at latitude %i the sun rises %s and sets %s',
    (date, latDeg, rise, set) => {
      const { from, until } = between(
        sunDay({ latDeg, lonDeg: 0 }, new Date(`${date}T12:00Z`)).sunUp,
      );
      // The table's horizon is 50′ and suncalc's 0.833°: 2 s, and as much again for the model.
      expect(Math.abs(from.getTime() - Date.parse(`${date}T${rise}Z`))).toBeLessThan(4000);
      expect(Math.abs(until.getTime() - Date.parse(`${date}T${set}Z`))).toBeLessThan(4000);
    },
  );

  /**
   * The worked example: 39.742476 N 105.1786 W, 2003-10-17 12:30:30 UTC −7. Its apparent elevation is
   * at 820 mbar, where the air refracts less than at sea level by less than 0.01° this high up.
   */
  const golden = { latDeg: 39.742476, lonDeg: -105.1786 };

  test('the worked example has the sun at azimuth 194.34°, 39.89° high', () => {
    const sun = sunPosition(golden, new Date('2003-10-17T19:30:30Z'));
    expect(Math.abs(degreesOf(sun.azimuth) - 194.340241)).toBeLessThan(0.02);
    expect(Math.abs(sun.altitudeDeg - 39.888378)).toBeLessThan(0.02);
  });

  test('its sunrise is 06:12:43 and the sunset of its local day 17:18:51', () => {
    // The report prints 17:20:19, the sunset of the UT day, which is the local day before.
    const { from, until } = between(sunDay(golden, new Date('2003-10-17T19:30:30Z')).sunUp);
    expect(Math.abs(from.getTime() - Date.parse('2003-10-17T06:12:43-07:00'))).toBeLessThan(4000);
    expect(Math.abs(until.getTime() - Date.parse('2003-10-17T17:18:51-07:00'))).toBeLessThan(4000);
  });
});
