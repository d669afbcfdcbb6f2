/**
 * Meanings in words: a pressure setting is read out digit by digit, a temperature has a blank, and a
 * funnel cloud with a plus is no heavy funnel cloud.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { readReport } from '../../../src/core/weather/readReport';
import { speak } from '../../../src/parts/catalogues';
import { shownText } from '../../../src/parts/digits';
import { words as bedeutung } from '../../../src/views/wind/report/meaningWords.de';
import { words as meaning } from '../../../src/views/wind/report/meaningWords.en';

beforeAll(() => speak('en'));

const QNH = { code: 'pressure', given: 'hPa', qnhHpa: 1013.2, qnhInHg: null } as const;

/** What is said of the weather in a report. */
const weatherIn = (text: string) =>
  readReport(`METAR XHAR 051850Z 28010KT 9999 ${text} 12/08 Q1013`).weather.present[0];

describe.each([
  ['English', meaning],
  ['German', bedeutung],
])('in %s', (_, { meaning: said }) => {
  test('a QNH has no gap between its thousands', () => {
    expect(said(QNH)).toBe('QNH 1013 hPa');
  });
});

test('a blank that never breaks stands before degrees Celsius, and none before degrees', () => {
  expect(shownText({ value: 12, unit: 'degC' })).toBe('12\u00a0°C');
  expect(shownText({ value: 12.5, unit: 'deg' })).toBe('12.5°');
});

test('+FC is a tornado or waterspout, FC a funnel cloud', () => {
  // WMO-No. 306, table 4678; ICAO Annex 3, appendix 3, 4.4.2.6.
  const [heavy, plain] = [weatherIn('+FC'), weatherIn('FC')];
  if (heavy === undefined || plain === undefined) throw new Error('no weather');
  expect(meaning.meaning(heavy)).toBe('Tornado or waterspout');
  expect(meaning.meaning(plain)).toBe('Funnel cloud');
  expect(bedeutung.meaning(heavy)).toBe('Tornado oder Wasserhose');
  expect(bedeutung.meaning(plain)).toBe('Trichterwolke');
});
