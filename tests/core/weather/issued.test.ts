import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ageMinutes, issuedAt, newestFor } from '../../../src/core/weather/issued';
import { readReports } from '../../../src/core/weather/readReport';

const at = (text: string) => new Date(`${text}Z`);
const issued = (day: number, hour: number, minute: number) => ({ day, hour, minute });

describe('a report was issued at the nearest moment with its day, hour and minute', () => {
  // Counted on the calendar.
  test.each([
    ['the same day', '151250', '2026-11-15T13:00', '2026-11-15T12:50'],
    ['seen on the 1st, of the month before', '312350', '2026-11-01T00:10', '2026-10-31T23:50'],
    ['seen on the 31st, of the month after', '010020', '2026-10-31T23:50', '2026-11-01T00:20'],
    ['past the end of the year', '312350', '2027-01-01T00:10', '2026-12-31T23:50'],
    ['before the end of the year', '010020', '2026-12-31T23:50', '2027-01-01T00:20'],
    ['in a leap February', '292300', '2028-03-01T01:00', '2028-02-29T23:00'],
    // 30 days back to 29 January, 28 days on to 29 March.
    ['past a February without a 29th', '292300', '2027-03-01T01:00', '2027-03-29T23:00'],
    // 28 days and a half back, 30 and a half on.
    ['past a whole February', '311200', '2027-03-01T00:00', '2027-01-31T12:00'],
    // 30 days and a half either side of 1 May: the earlier.
    ['as near before as after', '311200', '2026-05-01T00:00', '2026-03-31T12:00'],
    ['half a month back', '010000', '2026-11-14T00:00', '2026-11-01T00:00'],
    ['half a month on', '010000', '2026-11-17T00:00', '2026-12-01T00:00'],
    ['of a sortie in 1987', '170600', '1987-10-17T07:00', '1987-10-17T06:00'],
  ])('%s', (_, time, near, expected) => {
    const [day, hour, minute] = (time.match(/../g) ?? []).map(Number);
    expect(issuedAt(issued(day ?? 0, hour ?? 0, minute ?? 0), at(near))).toEqual(at(expected));
  });

  test('as searched for day by day', () => {
    const DAY_MS = 86_400_000;
    fc.assert(
      fc.property(
        fc.date({ min: at('1950-01-01'), max: at('2090-01-01'), noInvalidDate: true }),
        fc.integer({ min: 1, max: 31 }),
        fc.integer({ min: 0, max: 23 }),
        fc.integer({ min: 0, max: 59 }),
        (near, day, hour, minute) => {
          let best = Number.POSITIVE_INFINITY;
          const midnight = Math.floor(near.getTime() / DAY_MS) * DAY_MS;
          for (let days = -63; days <= 63; days++) {
            const that = midnight + days * DAY_MS + (hour * 60 + minute) * 60_000;
            if (new Date(that).getUTCDate() !== day) continue;
            best = Math.min(best, Math.abs(that - near.getTime()));
          }
          const answer = issuedAt(issued(day, hour, minute), near);
          expect(Math.abs(answer.getTime() - near.getTime())).toBe(best);
          expect([answer.getUTCDate(), answer.getUTCHours(), answer.getUTCMinutes()]).toEqual([
            day,
            hour,
            minute,
          ]);
        },
      ),
    );
  });

  test('its age is counted from then, and is negative before', () => {
    expect(ageMinutes(issued(31, 23, 50), at('2026-11-01T00:10'))).toBe(20);
    expect(ageMinutes(issued(1, 0, 20), at('2026-10-31T23:50'))).toBe(-30);
    expect(ageMinutes(null, at('2026-11-01T00:10'))).toBeNull();
  });
});

describe('the newest of several reports', () => {
  const BULLETIN = [
    'METAR XHAR 312320Z 24010KT CAVOK=',
    'METAR XBOR 312353Z 28018KT 10SM=',
    'METAR XHAR 010020Z 25012KT CAVOK=',
    'TAF XHAR 010100Z 0102/0212 31040KT=',
    'METAR XHAR 312350Z 24011KT CAVOK=',
    'METAR COR XHAR 010020Z 26013KT CAVOK=',
    'METAR XHAR 010050Z NIL=',
  ].join('\n');
  const NEAR = at('2026-11-01T00:30');
  const newest = (text: string, station: string | null, near = NEAR) =>
    newestFor(readReports(text), station, near);

  test('of a station, across the end of a month, the correction before what it corrects', () => {
    expect(newest(BULLETIN, 'XHAR')).toBe(5);
    expect(newest(BULLETIN, 'XBOR')).toBe(1);
    expect(newest(BULLETIN, null)).toBe(5);
  });

  test('is none where no report is of the station', () => {
    expect(newest(BULLETIN, 'XNOR')).toBeNull();
    expect(newest('', null)).toBeNull();
    expect(newest('TAF XHAR 010100Z 0102/0212 31040KT=', 'XHAR')).toBeNull();
  });

  test('without a station counts where none is of the one asked for', () => {
    const text = 'METAR XBOR 312353Z 28018KT 10SM= 010020Z 24012KT CAVOK=';
    expect(newest(text, 'XHAR')).toBe(1);
    expect(newest(text, 'XBOR')).toBe(0);
  });

  test('without a time counts only where none has any', () => {
    expect(newest('METAR XHAR 24012KT CAVOK= METAR XHAR 312320Z 25012KT CAVOK=', 'XHAR')).toBe(1);
    expect(newest('METAR XHAR 24012KT CAVOK= METAR XHAR 25012KT CAVOK=', 'XHAR')).toBe(0);
  });

  test('whose wind was not reported is still the newest', () => {
    const text = 'METAR XHAR 312350Z 24011KT CAVOK= METAR XHAR 010020Z AUTO /////KT 9999 15/08=';
    expect(newest(text, 'XHAR')).toBe(1);
  });
});
