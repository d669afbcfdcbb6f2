/** Reports as they are really written, and what was misread in them. */

import { expect, test } from 'vitest';
import { readReport } from '../../../src/core/weather/readReport';
import { readWind } from '../../../src/core/weather/readWind';

test.each([
  'KELDER ATIS INFO K 1156Z 19018G28KT 10SM FEW030 15/08 A2992',
  'INFORMATION K 28012KT 9999 FEW030 15/08 Q1013',
])('a coded wind inside a spoken text does not say its north: %s', (text) => {
  // A tower or an ATIS speaks magnetic: FAA AIM 4-3-6.
  const { wind, north } = readWind(text);
  expect(wind).not.toBeNull();
  expect(north).toBe('unstated');
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
