import { describe, expect, test } from 'vitest';
import { readReport } from '../../../src/core/weather/readReport';
import type { Wind } from '../../../src/core/weather/report';
import { PUBLISHED } from './published';

const wind = (fields: Partial<Wind>): Wind => ({
  fromDeg: null,
  speedKt: null,
  gustKt: null,
  sectorDeg: null,
  variable: false,
  speedIsMinimum: false,
  gustIsMinimum: false,
  ...fields,
});

describe('a published report says the wind that its source says', () => {
  test.each(PUBLISHED)('$source: $text', (published) => {
    const { text } = published;
    const report = readReport(text);
    expect(report).toMatchObject({ kind: 'report', north: 'true' });
    if (published.wind === 'not observable') {
      expect(report.wind).toBeNull();
      expect(report.problems.map(({ code }) => code)).toEqual(['wind-not-reported']);
      return;
    }
    const [from, speedKt, gustKt = null] = published.wind;
    expect(report.wind).toEqual(
      wind({
        fromDeg: from === 'VRB' ? null : from,
        variable: from === 'VRB',
        speedKt,
        gustKt,
        sectorDeg: published.swing ?? null,
        speedIsMinimum: published.above === 'speed',
        gustIsMinimum: published.above === 'gust',
      }),
    );
    expect(report.problems).toEqual([]);
  });

  test.each(PUBLISHED)('without its type: $text', ({ text }) => {
    const bare = text.replace(/^(?:METAR|SPECI)(?: COR)? /, '');
    expect(readReport(bare).wind).toEqual(readReport(text).wind);
    expect(readReport(bare).kind).toBe('report');
  });

  test.each(PUBLISHED)('every group of it is known: $text', ({ text }) => {
    const unread = readReport(text).spans.filter(({ kind }) => kind === 'unread');
    expect(unread.map(({ at }) => text.slice(...at))).toEqual([]);
  });

  test('4 m/s in Annex 3 example A3-1 is 7.8 kt', () => {
    // 1 m/s = 1.943844 kt, ICAO Annex 5.
    const [example] = PUBLISHED;
    expect(readReport(example?.text ?? '').wind?.speedKt).toBeCloseTo(4 * 1.943844, 5);
  });

  test('the station and the time of issue are those of the heading', () => {
    // Annex 3, example A3-1: "issued ... on the 22nd of the month at 1630 UTC".
    expect(readReport(PUBLISHED[0]?.text ?? '')).toMatchObject({
      station: 'YUDO',
      issued: { day: 22, hour: 16, minute: 30 },
    });
  });
});

describe('the wind groups of the AIM, 7-1 (faraim.org, aim-505)', () => {
  test.each<[string, Partial<Wind>]>([
    ['13008KT', { fromDeg: 130, speedKt: 8 }],
    ['08032G45KT', { fromDeg: 80, speedKt: 32, gustKt: 45 }],
    ['VRB04KT', { variable: true, speedKt: 4 }],
    ['00000KT', { fromDeg: 0, speedKt: 0 }],
    ['210103G130KT', { fromDeg: 210, speedKt: 103, gustKt: 130 }],
    ['32012G22KT 280V350', { fromDeg: 320, speedKt: 12, gustKt: 22, sectorDeg: [280, 350] }],
    // AFMAN 15-111, 7.2.2: 112 kt codes as 112KT.
    ['240112KT', { fromDeg: 240, speedKt: 112 }],
    // Navy aerographer's text (navyaviation.tpub.com, 14342A): from 160 to 250 at 12 kt.
    ['21012KT 160V250', { fromDeg: 210, speedKt: 12, sectorDeg: [160, 250] }],
  ])('%s', (text, fields) => {
    expect(readReport(text).wind).toEqual(wind(fields));
    expect(readReport(`METAR XHAR 011250Z ${text} 10SM CLR 15/02 A2992`).wind).toEqual(
      wind(fields),
    );
  });

  test('a peak wind in remarks is not the wind now', () => {
    const calm = readReport(
      'METAR XHAR 011250Z 00000KT 10SM CLR 15/02 A2992 RMK PK WND 28045/1955',
    );
    expect(calm.wind).toMatchObject({ speedKt: 0, gustKt: null });
    expect(readReport('METAR XHAR 011250Z 10SM CLR RMK PK WND 34050/38').wind).toBeNull();
  });

  test('the low-level shear of the TAF beside the key is not the wind now', () => {
    // AIM 7-1, key to TAF: "WS010/31022KT", 010 being hundreds of feet.
    const text =
      'TAF KPIT 091730Z 0918/1024 15005KT 5SM HZ FEW020 WS010/31022KT FM091930 30015G25KT';
    const report = readReport(text);
    expect(report).toMatchObject({ kind: 'forecast', wind: null });
    expect(readReport('METAR KPIT 091955Z WS010/31022KT 5SM HZ').wind).toBeNull();
  });
});

describe('national habits', () => {
  test('an Australian trend FM0000 is not the wind now', () => {
    // FM opens a trend: FM 15, 15.14. What stands before it says 310° at 13 kt.
    const text =
      'YSCB 020000Z AUTO 31013KT 9999 // BKN024 08/04 Q1005 FM0000 31018G28KT 9999 FEW030';
    expect(readReport(text).wind).toEqual(wind({ fromDeg: 310, speedKt: 13 }));
  });
});
