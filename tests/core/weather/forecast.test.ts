/**
 * Forecasts and trends, part by part, in time. Rules: WMO-No. 306 Vol. I.1, FM 51 and FM 15, 15.14;
 * ICAO Annex 3, App. 5. Section numbers from memory.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forecastsIn, prevailingAt } from '../../../src/core/weather/whole/forecast';

const at = (text: string) => Date.parse(text);
const zulu = (ms: number) =>
  Number.isFinite(ms) ? new Date(ms).toISOString().slice(5, 16).replace('T', ' ') : 'never';

/** Each part as one line: kind, wind, when it counts; for a change, when it is complete. */
function lines(text: string, near: string): readonly string[] {
  return forecastsIn(text, at(near)).flatMap(({ parts }) =>
    parts.map(({ kind, percent, wind, fromMs, byMs, untilMs }) => {
      const blows =
        wind === null
          ? '-'
          : `${wind.variable ? 'VRB' : wind.fromDeg}/${wind.speedKt}${wind.gustKt === null ? '' : `G${wind.gustKt}`}`;
      const chance = percent === null ? '' : `${percent}% `;
      const by = byMs === fromMs ? '' : ` by ${zulu(byMs)}`;
      return `${chance}${kind} ${blows} ${zulu(fromMs)}${by} until ${zulu(untilMs)}`;
    }),
  );
}

describe('a forecast', () => {
  test('is read part by part; a change counts from its beginning, and what it replaces to its end', () => {
    const text =
      'TAF XHAR 051700Z 0518/0624 25016KT 9999 PROB40 TEMPO 0518/0519 25018G28KT ' +
      'BECMG 0521/0524 24010KT TEMPO 0602/0606 BKN012 BECMG 0604/0607 3000 BR PROB30 0610/0612 18020G35KT';
    expect(lines(text, '1987-04-05T17:05Z')).toEqual([
      'base 250/16 04-05 18:00 until 04-06 00:00',
      '40% TEMPO 250/18G28 04-05 18:00 until 04-05 19:00',
      'BECMG 240/10 04-05 21:00 by 04-06 00:00 until 04-07 00:00',
      'TEMPO - 04-06 02:00 until 04-06 06:00',
      'BECMG - 04-06 04:00 by 04-06 07:00 until 04-07 00:00',
      '30% PROB 180/20G35 04-06 10:00 until 04-06 12:00',
    ]);
  });

  test('FM supersedes all that was given before it', () => {
    const text =
      'TAF XHAR 300204Z 3002/3024 13007KT TEMPO 3002/3012 20020KT FM300630 19012G22KT RMK NXT FCST BY 300800Z 0608/0610 27099KT';
    expect(lines(text, '1987-04-30T02:10Z')).toEqual([
      'base 130/7 04-30 02:00 until 04-30 06:30',
      'TEMPO 200/20 04-30 02:00 until 04-30 06:30',
      'FM 190/12G22 04-30 06:30 until 05-01 00:00',
    ]);
  });

  test('runs over the end of a month and of a year, seen from either side', () => {
    const text =
      'TAF XHAR 311700Z 3118/0124 25010KT BECMG 0102/0104 31025G38KT TEMPO 3122/0102 05005KT';
    const expected = [
      'base 250/10 12-31 18:00 until 01-01 04:00',
      'BECMG 310/25G38 01-01 02:00 by 01-01 04:00 until 01-02 00:00',
      'TEMPO 50/5 12-31 22:00 until 01-01 02:00',
    ];
    expect(lines(text, '1986-12-31T17:05Z')).toEqual(expected);
    expect(lines(text, '1987-01-01T10:00Z')).toEqual(expected);
    // February has no 31st: seen on the 1st of March, this is of January.
    expect(lines('TAF XHAR 282300Z 0100/0106 25010KT', '1987-03-01T00:10Z')).toEqual([
      'base 250/10 03-01 00:00 until 03-01 06:00',
    ]);
  });

  test('corrected and amended it is read as any, cancelled or missing it has no parts', () => {
    expect(lines('TAF AMD XHAR 051700Z 0518/0524 25016KT', '1987-04-05T17:05Z')).toHaveLength(1);
    expect(lines('TAF COR XHAR 051700Z 0518/0524 25016KT', '1987-04-05T17:05Z')).toHaveLength(1);
    const states = (text: string) =>
      forecastsIn(text, at('1987-04-05T17:05Z')).map(({ state, parts }) => [state, parts.length]);
    expect(states('TAF AMD XHAR 050939Z 0509/0518 CNL')).toEqual([['cancelled', 0]]);
    expect(states('TAF XHAR 051700Z NIL=')).toEqual([['missing', 0]]);
  });

  test('a part whose period is garbled counts all the time of the forecast', () => {
    const text = 'TAF XHAR 091600Z 0918/1018 17008KT BECMG 1015/1 017 27005KT';
    expect(lines(text, '2018-09-09T16:05Z')).toEqual([
      'base 170/8 09-09 18:00 until 09-10 18:00',
      'BECMG 270/5 09-09 18:00 by 09-10 18:00 until 09-10 18:00',
    ]);
  });

  test('a temperature or a shear aloft brings no time and no wind', () => {
    const text =
      'TAF XHAR 051700Z 0518/0618 25016KT TX15/0614Z TN02/0605Z WS020/24045KT FM060200 20010KT WS020/23055KT';
    expect(lines(text, '1987-04-05T17:05Z')).toEqual([
      'base 250/16 04-05 18:00 until 04-06 02:00',
      'FM 200/10 04-06 02:00 until 04-06 18:00',
    ]);
  });

  test('the wind for now is what prevails: not what comes and goes, nor a change under way', () => {
    const [forecast] = forecastsIn(
      'TAF XHAR 051700Z 0518/0624 25016KT TEMPO 0518/0524 25030KT BECMG 0520/0522 30012KT FM060000 05005KT',
      at('1987-04-05T17:05Z'),
    );
    if (forecast === undefined) throw new Error('unread');
    const from = (time: string) => prevailingAt(forecast, at(time))?.wind?.fromDeg ?? null;
    expect(from('1987-04-05T17:30Z')).toBeNull();
    expect(from('1987-04-05T18:00Z')).toBe(250);
    expect(from('1987-04-05T21:59Z')).toBe(250);
    expect(from('1987-04-05T22:00Z')).toBe(300);
    expect(from('1987-04-06T00:00Z')).toBe(50);
    expect(from('1987-04-07T00:00Z')).toBeNull();
  });
});

describe('the trend of a report', () => {
  const report = (trend: string) => `METAR XHAR 051850Z 23010KT 9999 FEW030 15/08 Q1013 ${trend}`;
  const NEAR = '1987-04-05T19:00Z';

  test('counts two hours from its report', () => {
    expect(lines(report('TEMPO 28025G38KT'), NEAR)).toEqual([
      'TEMPO 280/25G38 04-05 18:50 until 04-05 20:50',
    ]);
    expect(lines(report('NOSIG'), NEAR)).toEqual([]);
  });

  test('with FM, TL and AT counts as FM 15, 15.14 has it, over midnight too', () => {
    expect(lines(report('TEMPO FM1930 TL2030 28025G38KT'), NEAR)).toEqual([
      'TEMPO 280/25G38 04-05 19:30 until 04-05 20:30',
    ]);
    expect(lines(report('TEMPO FM 1930 28025G38KT'), NEAR)).toEqual([
      'TEMPO 280/25G38 04-05 19:30 until 04-05 20:50',
    ]);
    expect(lines(report('BECMG AT2000 28025KT'), NEAR)).toEqual([
      'BECMG 280/25 04-05 20:00 until 04-05 20:50',
    ]);
    expect(lines(report('BECMG TL2000 28025KT'), NEAR)).toEqual([
      'BECMG 280/25 04-05 18:50 by 04-05 20:00 until 04-05 20:50',
    ]);
    expect(lines(report('BECMG FM1900 TL2000 28025KT TEMPO TL2010 05010KT'), NEAR)).toEqual([
      'BECMG 280/25 04-05 19:00 by 04-05 20:00 until 04-05 20:50',
      'TEMPO 50/10 04-05 18:50 until 04-05 20:10',
    ]);
    expect(
      lines('METAR XHAR 302320Z 23010KT TEMPO FM2350 TL0030 28025KT', '1987-05-01T00:05Z'),
    ).toEqual(['TEMPO 280/25 04-30 23:50 until 05-01 00:30']);
    expect(lines('METAR XHAR 302320Z 23010KT BECMG AT2400 28025KT', '1987-05-01T00:05Z')).toEqual([
      'BECMG 280/25 05-01 00:00 until 05-01 01:20',
    ]);
  });

  test('stands beside a forecast pasted with it', () => {
    const both = `${report('TEMPO 28025G38KT')}= TAF XHAR 051700Z 0518/0624 25016KT=`;
    expect(forecastsIn(both, at(NEAR)).map(({ of, parts }) => [of, parts.length])).toEqual([
      ['trend', 1],
      ['taf', 1],
    ]);
  });

  test('typed alone counts from when it was entered', () => {
    expect(lines('TEMPO 28025G38KT', NEAR)).toEqual([
      'TEMPO 280/25G38 04-05 19:00 until 04-05 21:00',
    ]);
  });
});

describe('whatever the text', () => {
  const group = fc.constantFrom(
    ...[
      'TAF',
      'XHAR',
      '051700Z',
      '0518/0624',
      '9999/0099',
      '0612/0610',
      'BECMG',
      'TEMPO',
      'PROB30',
    ],
    ...[
      'FM',
      'FM060200',
      'FM2400',
      'TL1900',
      'AT9999',
      '25016KT',
      '28025G38KT',
      'VRB03KT',
      '/////KT',
    ],
    ...['NOSIG', 'RMK', 'CNL', 'NIL', '=', 'METAR', 'TX15/0614Z', '1017', 'INTER', 'CAVOK'],
  );

  test('every part has times, and none counts before it begins', () => {
    fc.assert(
      fc.property(fc.array(group, { maxLength: 30 }), (groups) => {
        for (const { validMs, parts } of forecastsIn(groups.join(' '), at('1987-04-05T17:05Z'))) {
          expect(validMs !== null || parts.length === 0).toBe(true);
          for (const { fromMs, byMs, untilMs } of parts) {
            expect([fromMs, byMs, untilMs].every(Number.isFinite)).toBe(true);
            expect(byMs).toBeGreaterThanOrEqual(fromMs);
          }
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('a forecast whose changes are in order gives a wind for every hour it is for', () => {
    // Hours of change, two by two; each is a moment from which, or a period within which.
    const changes = fc.uniqueArray(fc.integer({ min: 1, max: 22 }), { maxLength: 8 });
    fc.assert(
      fc.property(changes, fc.boolean(), (hours, byMoments) => {
        const two = (hour: number) => String(hour).padStart(2, '0');
        const written = [...hours]
          .sort((a, b) => a - b)
          .map((hour) =>
            byMoments
              ? `FM06${two(hour)}00 ${two(hour)}010KT`
              : `BECMG 06${two(hour)}/06${two(hour + 1)} ${two(hour)}010KT`,
          );
        const [forecast] = forecastsIn(
          `TAF XHAR 052300Z 0600/0624 36005KT ${written.join(' ')}`,
          at('1987-04-05T23:05Z'),
        );
        if (forecast === undefined) throw new Error('unread');
        for (let hour = 0; hour < 24; hour++) {
          const now = prevailingAt(forecast, Date.UTC(1987, 3, 6, hour, 30));
          // The last that has begun, or whose change is complete, by half past.
          const done = hours.filter((one) => (byMoments ? one : one + 1) <= hour);
          const expected = done.length === 0 ? 360 : Math.max(...done) * 10;
          expect(now?.wind?.fromDeg).toBe(expected);
        }
      }),
    );
  });
});
