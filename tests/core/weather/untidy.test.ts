/** Reports as they are really written, and what was misread in them. */

import { expect, test } from 'vitest';
import { closureOf } from '../../../src/core/weather/closure';
import { envelopeOf } from '../../../src/core/weather/envelope';
import { readReport } from '../../../src/core/weather/readReport';
import { readWind } from '../../../src/core/weather/readWind';

test.each([
  'KELDER ATIS INFO K 1156Z 19018G28KT 10SM FEW030 15/08 A2992',
  'INFORMATION K 28012KT 9999 FEW030 15/08 Q1013',
])('a coded wind inside a spoken text is magnetic: %s', (text) => {
  // A tower or an ATIS speaks magnetic: FAA AIM 4-3-6.
  const { wind, north } = readWind(text);
  expect(wind).not.toBeNull();
  expect(north).toBe('magnetic');
});

test('a whole report is true', () => {
  expect(readWind('METAR XKEL 051156Z 19018G28KT 10SM FEW030 15/08 A2992').north).toBe('true');
  expect(readWind('XKEL 051156Z 19018G28KT 10SM FEW030 15/08 A2992').north).toBe('true');
});

// As officially decoded.
test.each([
  ['CWRX 231100Z AUTO ///// ////SM BKN011 BKN049 OVC055 M03/M04 A2943', -3, -4],
  ['LIVC 231106Z AUTO 22018KT 200V270 ///// 10/06 Q1030', 10, 6],
])('slashes before it take no temperature away: %s', (text, airC, dewPointC) => {
  expect(readReport(text).weather.temperature).toMatchObject({ airC, dewPointC });
});

test('a temperature outside −90 to 60 °C is a slip, and not read', () => {
  expect(readReport('METAR XHAR 051830Z 28010KT 9999 99/08 Q1013').weather.temperature).toBeNull();
  expect(
    readReport('METAR XHAR 051830Z 28010KT 9999 M91/M95 Q1013').weather.temperature,
  ).toBeNull();
});

// ICAO Annex 3, App. 3, table A3-1, local reports (values from memory).
test.each([
  ['WIND 240/8KT', { fromDeg: 240, speedKt: 8, gustKt: null }],
  ['WIND 120/6KT MAX18 MNM4', { fromDeg: 120, speedKt: 6, gustKt: 18 }],
  ['WIND 120/3MPS MAX9 MNM2', { fromDeg: 120, speedKt: 5.83, gustKt: 17.49 }],
  ['280/12KT MAX30 MNM5', { fromDeg: 280, speedKt: 12, gustKt: 30 }],
  ['WIND 270/ABV99KT', { fromDeg: 270, speedKt: 99, speedIsMinimum: true }],
  ['WIND 020/10KT VRB BTN 350/ AND 070/', { fromDeg: 20, sectorDeg: [350, 70] }],
  ['WIND VRB BTN 350/ AND 050/2KT', { fromDeg: null, variable: true, speedKt: 2 }],
  ['280/12KT VRB BTN 200/ AND 340/', { fromDeg: 280, sectorDeg: [200, 340] }],
  // Apart out of habit.
  ['28012KT G30', { fromDeg: 280, speedKt: 12, gustKt: 30 }],
  ['METAR XHAR 051830Z 28012KT G30KT 9999 15/08 Q1013', { speedKt: 12, gustKt: 30 }],
  ['28006MPS G15', { speedKt: 11.66, gustKt: 29.16 }],
] as const)('local wording is read: %s', (text, expected) => {
  const { wind, problems, spans } = readWind(text);
  const { speedKt, gustKt, ...others } = expected as Record<string, unknown>;
  expect(wind).toMatchObject(others);
  for (const [is, of] of [
    [wind?.speedKt, speedKt],
    [wind?.gustKt, gustKt],
  ]) {
    if (typeof of === 'number') expect(is).toBeCloseTo(of, 1);
    else if (of === null) expect(is).toBeNull();
  }
  expect(problems).toEqual([]);
  expect(spans.filter(({ kind }) => kind === 'unread')).toEqual([]);
});

test.each(['28012KT 9999 MAX30', '28012KT GUSTS UNKNOWN', '280/12KT VRB BETWEEN 200 AND 340'])(
  'while more of the wind seems to be written than was read, its strength is open: %s',
  (text) => {
    const { wind, problems } = readWind(text);
    expect(problems.map(({ code }) => code)).toContain('wind-unread');
    expect(wind?.gustIsMinimum).toBe(true);
  },
);

test('a gust out of a calm is said, and comes from anywhere', () => {
  const { wind, problems } = readWind('METAR XHAR 051830Z 00000G15KT 9999 15/08 Q1013');
  expect(problems.map(({ code }) => code)).toEqual(['gust-in-calm']);
  expect(wind && envelopeOf(wind)).toEqual({ kind: 'any' });
});

test.each([
  ['XHAR ATIS INFO K 1830Z 28012KT 9999 QNH 1013', 1013],
  ['280/12 QNH 998', 998],
  // 29.92 inHg are 1013.25 hPa: ICAO Doc 7488.
  ['INFORMATION B 28012KT 10SM ALTIMETER 2992', 1013.2],
])('a pressure behind its word is no visibility: %s', (text, qnhHpa) => {
  const { weather } = readReport(text);
  expect(weather.pressure?.qnhHpa).toBeCloseTo(qnhHpa, 0);
  expect(weather.visibility?.distance?.distanceM ?? 10_000).toBeGreaterThan(9000);
});

test.each([
  ['28010KT 9999 15/08 Q1013 R/SNOCLO', 'all'],
  ['28010KT 9999 15/08 Q1013 SNOCLO', 'all'],
  ['28010KT 9999 15/08 Q1013 R28/SNOCLO', ['28']],
  ['28010KT 9999 15/08 Q1013 BLACK', 'all'],
  ['28010KT 9999 15/08 Q1013 BLACKRED', 'all'],
  ['28010KT 9999 15/08 Q1013 BLU', []],
  ['28010KT 9999 15/08 Q1013', []],
])('what a report closes: %s', (groups, closure) => {
  const { weather, spans } = readReport(`METAR XHAR 051830Z ${groups}`);
  expect(closureOf(weather)).toEqual(closure);
  expect(spans.filter(({ kind }) => kind === 'unread')).toEqual([]);
});
