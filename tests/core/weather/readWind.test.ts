import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWind } from '../../../src/core/weather/readWind';
import { codesOf, piecesOf, validGroup, windOf } from './winds';

describe('a wind typed in short', () => {
  // Forms: common practice, no published source.
  test.each([
    ['24012', '240/12'],
    ['24012g20', '240/12G20'],
    ['240/12', '240/12'],
    ['240/12G20', '240/12G20'],
    ['240@12', '240/12'],
    ['240 12', '240/12'],
    ['240 12 20', '240/12G20'],
    ['240 12 20 KT', '240/12G20'],
    ['240 12 200V280', '240/12 200V280'],
    ['24012 20', '240/12'],
    ['vrb03', 'VRB/3'],
    ['VRB 3 kt', 'VRB/3'],
    ['variable at 3 knots', 'VRB/3'],
    ['calm', '0/0'],
    ['wind calm', '0/0'],
    ['000/00', '0/0'],
    ['24012KTS', '240/12'],
    ['240/12 kt', '240/12'],
    ['05010 MPS', '50/19.4'],
    ['050/10 m/s', '50/19.4'],
    ['24046KM/H', '240/24.8'],
    ['24046 kmh', '240/24.8'],
    ['24012 G20 KT', '240/12G20'],
    ['240P99', '240/>99'],
    ['240°/12', '240/12'],
    ['240° 12 kt', '240/12'],
    ['240 at 12 gusting 20', '240/12G20'],
    ['240 at 12 kt gusting to 20 kt', '240/12G20'],
    ['240 degrees 12 knots gust 20', '240/12G20'],
    ['Wind 240/12, gusting 20.', '240/12G20'],
    ['(240/12)', '240/12'],
    ['240/12g20 200v280', '240/12G20 200V280'],
    ['240/5 kt', '240/5'],
    ['240/105', '240/105'],
    ['２４０／１２', '240/12'],
    ['240\u00a012', '240/12'],
    ['\u200b24012\u200b', '240/12'],
    ['\u202e24012KT\u202c', '240/12'],
  ])('%s is %s', (text, wind) => {
    expect(windOf(text)).toBe(wind);
    expect(readWind(text)).toMatchObject({ kind: 'shorthand', north: 'unstated' });
  });

  test.each([
    '2405KT',
    '240105',
    '12',
    'hello',
    'A240/12',
    '20032/25',
    '1013',
    '118.05',
    '2026-11-24',
  ])('%s is none', (text) => {
    expect(windOf(text)).toBe('none');
  });
});

describe('a wind group', () => {
  test('with 000 and a speed is north written carelessly', () => {
    expect(windOf('00012KT')).toBe('360/12');
    expect(windOf('36012KT 330V000')).toBe('360/12 330V360');
  });

  test('without a part keeps what was reported', () => {
    expect(windOf('///12KT')).toBe('///' + '/12');
    expect(windOf('240//KT')).toBe('240///');
    expect(windOf('240//G25KT')).toBe('240///G25');
  });

  test('in metres a second or kilometres an hour is the same wind in knots', () => {
    // 10 m/s = 36 km/h = 19.4384 kt, ICAO Annex 5.
    expect(readWind('24010MPS').wind?.speedKt).toBeCloseTo(19.4384, 4);
    expect(readWind('24036KMH').wind?.speedKt).toBeCloseTo(19.4384, 4);
  });

  test('comes back field for field, alone, in a report, and amid junk', () => {
    // Junk without what has a meaning: words of no wind, no trend and no heading.
    const junk = fc.stringMatching(/^(?:[xqzj#~]{1,9}(?: |\n)){0,6}$/);
    fc.assert(
      fc.property(validGroup, junk, junk, ({ text, wind }, before, after) => {
        const report = `METAR XHAR 011250Z AUTO ${text} 9999 // FEW030 15/M02 Q1013 TEMPO 31040G60KT RMK 05003KT`;
        expect(readWind(text).wind).toEqual(wind);
        expect(readWind(report)).toMatchObject({ wind, kind: 'report', station: 'XHAR' });
        expect(readWind(`${before}${text} ${after}`).wind).toEqual(wind);
        expect(readWind(report.toLowerCase()).wind).toEqual(wind);
        expect(readWind(report.replaceAll(' ', '\n  ')).wind).toEqual(wind);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what cannot be used is refused with its place', () => {
  test.each([
    ['a direction above 360', '37012KT', 'none', 'direction-out-of-range', { deg: 370 }],
    [
      'a gust below the mean',
      '24012G10KT',
      '240/12',
      'gust-below-mean',
      { meanKt: 12, gustKt: 10 },
    ],
    ['a speed of 250 kt', '240/250', 'none', 'speed-out-of-range', { speedKt: 250 }],
    ['a gust of 250 kt', '24012G250KT', 'none', 'speed-out-of-range', { speedKt: 250 }],
    ['a wind not reported', '/////KT', 'none', 'wind-not-reported', undefined],
  ])('%s', (_, text, wind, code, values) => {
    expect(windOf(text)).toBe(wind);
    const { problems } = readWind(text);
    expect(problems).toEqual([
      values ? { code, at: [0, text.length], values } : { code, at: [0, text.length] },
    ]);
  });

  test('a swing above 360 is dropped, its wind kept', () => {
    const text = '24012KT 200V370';
    expect(windOf(text)).toBe('240/12');
    expect(readWind(text).problems).toEqual([
      { code: 'direction-out-of-range', at: [8, 15], values: { deg: 370 } },
    ]);
  });

  test('a mean outside its swing is flagged, both kept', () => {
    const text = '24012KT 300V330';
    expect(windOf(text)).toBe('240/12 300V330');
    expect(readWind(text).problems).toEqual([
      {
        code: 'mean-outside-swing',
        at: [8, 15],
        values: { fromDeg: 240, firstDeg: 300, secondDeg: 330 },
      },
    ]);
    expect(readWind('35012KT 310V020').problems).toEqual([]);
  });

  test('a gust above a number may be above the mean, whatever the number', () => {
    expect(windOf('14055GP50KT')).toBe('140/55G>50');
    expect(readWind('14055GP50KT').problems).toEqual([]);
  });
});

describe('an untidy report', () => {
  const HABITS = [
    'XHAR 011250Z  24012KT   9999  FEW030 15/08 Q1013',
    '011250Z 24012KT 9999 FEW030 15/08 Q1013',
    'METAR 011250Z 24012KT 9999',
    'metar xhar 011250z 24012kt 9999',
    'XHAR 011250Z E24012KT 10SM 9999 A2986 Q1011',
    'METAR XHAR 011250 24012KT CAVOK',
    'METAR XHAR 24012KT CAVOK 15/M02 Q1013',
    'METAR XHAR 011250Z 24012 9999 FEW030',
    'METAR XHAR 011250Z 24012 KT 9999 FEW030',
    'METAR COR XHAR 011250Z 24012KT 9999',
    'XHAR 011250Z COR 24012KT ////SM //// ////// 14/// A////',
    'XHAR 011250Z 24012KT 1 1/2SM R24/P6000FT R17L/P2000 R07/1000D 15/M02',
    'XHAR 011250Z 24012KT M1/4SM +TSRA VV002 M00/M00 Q//// WS R31 R11/1///// $',
    'XHAR 011250Z AUTO 24012KT 9999NDV // ///015 ///// Q1013 WS ALL RWY REUP',
    'XHAR 011250Z 24012KT 0800 R24/0600V1200U FZFG -SN BLSN OVC003/// M10/M11 W12/S4 BLU+',
    'SPECI XHAR 011250Z CCA 24012KT 15SM -FZRA BKN004 OVC009TCU 00/M01 A2945',
  ];
  test.each(HABITS)('%s', (text) => {
    expect(readWind(text)).toMatchObject({ kind: 'report', north: 'true', problems: [] });
    expect(windOf(text)).toBe('240/12');
    expect(piecesOf(text).filter((piece) => piece.startsWith('unread'))).toEqual([]);
  });

  test('marks what it does not understand, and nothing else', () => {
    const text = 'METAR XHAR 011250Z 24012KT 9999 BLURGH FEW03O 15/08 Q1013';
    expect(piecesOf(text)).toEqual([
      'type METAR',
      'station XHAR',
      'time 011250Z',
      'wind 24012KT',
      'other 9999',
      'unread BLURGH FEW03O',
      'other 15/08',
      'other Q1013',
    ]);
  });

  test('with a time that no clock shows has no time', () => {
    expect(readWind('METAR XHAR 321250Z 24012KT').issued).toBeNull();
    expect(readWind('METAR XHAR 012560Z 24012KT').issued).toBeNull();
  });

  test('says so where it has no wind', () => {
    expect(codesOf(readWind('METAR XHAR 011250Z 9999 FEW030 15/08 Q1013'))).toEqual(['no-wind']);
    expect(codesOf(readWind('METAR XHAR 011250Z NIL='))).toEqual(['wind-not-reported']);
    expect(codesOf(readWind('good morning'))).toEqual(['no-wind']);
    expect(readWind(' \n\u200b')).toMatchObject({ kind: 'nothing', problems: [], spans: [] });
  });
});
