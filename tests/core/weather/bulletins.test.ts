import { describe, expect, test } from 'vitest';
import { readReports } from '../../../src/core/weather/readReport';
import { readWind } from '../../../src/core/weather/readWind';
import { codesOf, lineOf, piecesOf, windOf } from './winds';

const BULLETIN = `SAXX31 XHAR 011250
METAR XHAR 011250Z 24012KT 9999
      FEW030 15/08 Q1013=
METAR XBOR 011253Z 28018G31KT
      10SM FEW045 29/11 A2986
      RMK PK WND 29035/1221=
XNOR 011230Z 04007MPS 350V080 CAVOK M12/M18 Q1009 NOSIG=
`;

describe('a bulletin', () => {
  test('gives every report with its station, time and wind', () => {
    const reports = readReports(BULLETIN);
    expect(
      reports.map(({ station, issued, wind }) => [station, issued?.minute, lineOf(wind)]),
    ).toEqual([
      ['XHAR', 50, '240/12'],
      ['XBOR', 53, '280/18G31'],
      ['XNOR', 30, '40/13.6 350V80'],
    ]);
    expect(reports.map(({ others }) => others)).toEqual([2, 2, 2]);
    expect(reports.flatMap(codesOf)).toEqual([]);
  });

  test('is answered from its first report, the rest marked as another', () => {
    expect(readWind(BULLETIN)).toMatchObject({ station: 'XHAR', others: 2 });
    const pieces = piecesOf(BULLETIN);
    expect(pieces[0]).toBe('heading SAXX31 XHAR 011250');
    expect(pieces.at(-1)).toBe(
      BULLETIN.slice(BULLETIN.indexOf('METAR XBOR')).trim().replace(/^/, 'another '),
    );
  });

  test('without = is cut where the next heading begins', () => {
    const bare = BULLETIN.replaceAll('=', '');
    expect(readReports(bare).map(({ station }) => station)).toEqual(['XHAR', 'XBOR', 'XNOR']);
  });

  test('that begins with a forecast is answered from the observation after it', () => {
    const text =
      'TAF XHAR 011100Z 0112/0212 31040KT 9999 BECMG 0114/0116 20005KT METAR XHAR 011250Z 24012KT';
    expect(windOf(text)).toBe('240/12');
    expect(readWind(text).others).toBe(0);
  });

  test('after words of greeting is still read', () => {
    expect(windOf('Here is the latest: METAR XHAR 011250Z 24012KT CAVOK')).toBe('240/12');
    expect(windOf('latest XHAR 011250Z 24012KT CAVOK')).toBe('240/12');
  });

  test('with the wind of the first not reported does not answer with the second', () => {
    const report = readWind('METAR XHAR 011250Z /////KT 9999= METAR XBOR 011250Z 24012KT=');
    expect(report).toMatchObject({ station: 'XHAR', wind: null });
    expect(codesOf(report)).toEqual(['wind-not-reported']);
  });
});

describe('only the observation is the wind now', () => {
  test.each([
    'TEMPO 31040G60KT',
    'BECMG 31040KT',
    'BECMG FM1400 31040KT',
    'NOSIG 31040KT',
    'FM1400 31040KT',
    'FM011400 31040KT',
    'INTER 31040KT',
    'TEMPO TL1400 31040KT',
    'PROB30 TEMPO 31040KT',
    'RMK 31040KT',
    'RMK PK WND 31040/1221',
    'NOSIG RMK 31040KT 280V350',
    '= TAF XHAR 011100Z 0112/0212 31040KT',
    'TAF XHAR 011100Z 0112/0212 31040KT',
  ])('not what follows: %s', (after) => {
    expect(windOf(`METAR XHAR 011250Z 24012KT 9999 FEW030 15/08 Q1013 ${after}`)).toBe('240/12');
    expect(windOf(`METAR XHAR 011250Z 9999 FEW030 15/08 Q1013 ${after}`)).toBe('none');
    expect(windOf(`24012KT ${after}`)).toBe('240/12');
  });
});

describe('what looks like a wind or a heading where none can be', () => {
  test('bare numbers after other groups of a report are no wind', () => {
    expect(windOf('METAR XHAR 011250Z 9999 FEW030 24012')).toBe('none');
    expect(windOf('METAR XHAR 011250Z 9999 FEW030 240/12')).toBe('none');
  });

  test('the next observation announced in remarks is not another report', () => {
    expect(readWind('METAR XHAR 011250Z 24012KT RMK LAST 011850Z').others).toBe(0);
    expect(readWind('METAR XHAR 011250Z 24012KT RMK NEXT 011850Z').others).toBe(0);
  });
});

describe('a forecast is told apart and gives no wind', () => {
  test.each([
    ['by its type', 'TAF XHAR 011100Z 0112/0212 24012KT 9999 BKN020'],
    ['amended', 'TAF AMD XHAR 011100Z 0112/0212 24012KT 9999'],
    ['in lower case', 'taf xhar 011100z 0112/0212 24012kt'],
    ['by its validity alone', 'XHAR 011100Z 0112/0212 24012KT 9999 BKN020'],
    ['by its validity before 2008', 'XHAR 011100Z 011212 24012KT 9999 BKN020'],
    ['without a time of issue', 'XHAR 0112/0212 24012KT 9999 BKN020'],
    ['torn from its heading', '24012KT 9999 BKN020 BECMG 0114/0116 31018G28KT'],
    ['one change group of it', 'FM011400 31018G28KT 9999'],
    ['one becoming of it', 'BECMG 0114/0116 31018G28KT'],
  ])('%s', (_, text) => {
    expect(readWind(text)).toMatchObject({ kind: 'forecast', wind: null });
    expect(codesOf(readWind(text))).toEqual(['forecast']);
  });
});
