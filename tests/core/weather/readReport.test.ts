import { describe, expect, test } from 'vitest';
import { readReport, readReports } from '../../../src/core/weather/readReport';
import type { ReadSpan } from '../../../src/core/weather/whole/report';

const weatherOf = (groups: string) => readReport(`METAR XHAR 011250Z 24012KT ${groups} =`).weather;
const meaningsOf = (text: string) => readReport(text).spans.map(({ meaning }) => meaning);
const pieces = (text: string, spans: readonly ReadSpan[]) =>
  spans.map(({ at, kind, meaning }) => `${kind} ${text.slice(...at)}: ${meaning?.code ?? '-'}`);

describe('visibility', () => {
  // 9999, 0000, NDV: WMO-No. 306 Vol. I.1, FM 15, 15.6, from memory. Statute miles: FMH-1, 12.6.5.
  test.each([
    ['9999', { distanceM: 10_000, unit: 'm', bound: 'at-least' }],
    ['9999NDV', { distanceM: 10_000, unit: 'm', bound: 'at-least' }],
    ['CAVOK', { distanceM: 10_000, unit: 'm', bound: 'at-least' }],
    ['0000', { distanceM: 50, unit: 'm', bound: 'below' }],
    ['0800', { distanceM: 800, unit: 'm', bound: 'exact' }],
    ['10SM', { value: 10, unit: 'SM', bound: 'exact' }],
    ['P6SM', { value: 6, unit: 'SM', bound: 'above' }],
    ['M1/4SM', { value: 0.25, unit: 'SM', bound: 'below' }],
    ['1 1/2SM', { value: 1.5, unit: 'SM', bound: 'exact' }],
    ['15/16SM', { value: 0.9375, unit: 'SM', bound: 'exact' }],
    // Habits; common practice, no published source.
    ['11/2SM', { value: 1.5, unit: 'SM', bound: 'exact' }],
    ['10KM', { distanceM: 10_000, value: 10, unit: 'km', bound: 'exact' }],
  ])('%s', (group, distance) => {
    expect(weatherOf(group).visibility?.distance).toMatchObject(distance);
  });

  test.each(['////', '////SM', '//SM'])('%s is there and not observed', (group) => {
    expect(weatherOf(group).visibility).toMatchObject({ distance: null });
  });

  test('without a group is null', () => {
    expect(weatherOf('FEW030 15/08 Q1013').visibility).toBeNull();
  });

  test('towards several directions keeps them all beside the prevailing one', () => {
    const { visibility, visibilityTowards } = weatherOf('6000 1400SW 3000N');
    expect(visibility?.distance?.distanceM).toBe(6000);
    expect(visibilityTowards.map(({ towards }) => towards)).toEqual(['SW', 'N']);
  });

  test('of 10SM beside 9999, both understood, is the first', () => {
    expect(weatherOf('10SM 9999').visibility?.distance).toMatchObject({ value: 10, unit: 'SM' });
  });

  test('of no possible fraction is not read', () => {
    expect(weatherOf('1/0SM').visibility).toBeNull();
  });
});

describe('runway visual range', () => {
  test.each([
    ['R24/////', null, null],
    ['R07/1000D', 1000, 'falling'],
    ['R07/1000/D', 1000, 'falling'],
    ['R06L/4000FT/N', 4000 * 0.3048, 'steady'],
  ])('%s', (group, distanceM, tendency) => {
    const [range] = weatherOf(group).runwayVisualRange;
    expect(range?.distance?.distanceM ?? null).toBe(distanceM);
    expect(range?.tendency).toBe(tendency);
  });
});

describe('weather', () => {
  // Table 4678 and FM 15, 15.8.
  test('is light, moderate or heavy only where something falls or storms', () => {
    const { present } = weatherOf('-SN RA +TSRA SS FG BLSN TS VCSH BR');
    const strengths = present.map(({ intensity }) => intensity);
    expect(strengths.slice(0, 4)).toEqual(['light', 'moderate', 'heavy', 'moderate']);
    expect(strengths.slice(4)).toEqual([null, null, null, null, null]);
  });

  test('a tornado is a funnel cloud, well developed', () => {
    expect(weatherOf('+FC').present).toMatchObject([{ intensity: 'heavy', phenomena: ['FC'] }]);
  });

  test('in the past and in the vicinity are told from weather at the field', () => {
    const { present, recent } = weatherOf('VCTS RETSRA');
    expect(present).toMatchObject([{ vicinity: true, descriptor: 'TS', phenomena: [] }]);
    expect(recent).toMatchObject([{ recent: true, descriptor: 'TS', phenomena: ['RA'] }]);
  });
});

describe('cloud', () => {
  test.each(['NSC', 'NCD', 'SKC', 'CLR'] as const)('%s is no cloud', (group) => {
    expect(weatherOf(group)).toMatchObject({ noCloud: group, clouds: [] });
  });

  test('hidden sky has a vertical visibility, which may be unknown', () => {
    expect(weatherOf('VV002').verticalVisibility?.heightFt).toBe(200);
    expect(weatherOf('VV///').verticalVisibility).toMatchObject({ heightFt: null });
    expect(weatherOf('OVC002').verticalVisibility).toBeNull();
  });
});

describe('temperature and pressure', () => {
  test.each([
    ['15/M02', 15, -2],
    ['M00/M00', 0, 0],
    ['14///', 14, null],
    ['15/', 15, null],
    ['/////', null, null],
    ['///M05', null, -5],
  ])('%s', (group, airC, dewPointC) => {
    expect(weatherOf(group).temperature).toEqual({ code: 'temperature', airC, dewPointC });
  });

  test('tenths in remarks replace the degrees that they round to, and no others', () => {
    // FMH-1, 12.6.10: halves are rounded up, M02 stands for −2.5 too.
    expect(weatherOf('18/16 RMK T01820159').temperature).toMatchObject({
      airC: 18.2,
      dewPointC: 15.9,
    });
    expect(weatherOf('M02/M03 RMK T10251025').temperature).toMatchObject({
      airC: -2.5,
      dewPointC: -2.5,
    });
    expect(weatherOf('18/16 RMK T02820159').temperature).toMatchObject({
      airC: 18,
      dewPointC: 15.9,
    });
    expect(weatherOf('18/// RMK T0182').temperature).toMatchObject({
      airC: 18.2,
      dewPointC: null,
    });
    expect(weatherOf('A2992 RMK T00061017').temperature).toMatchObject({
      airC: 0.6,
      dewPointC: -1.7,
    });
  });

  test.each([
    ['Q1013', 1013, 1013 / 33.8639, 'hPa'],
    ['Q998', 998, 998 / 33.8639, 'hPa'],
    // ICAO Annex 5: 1 inHg is 33.8639 hPa.
    ['A2992', 29.92 * 33.8639, 29.92, 'inHg'],
    ['QNH2992INS', 29.92 * 33.8639, 29.92, 'inHg'],
    ['Q1010 A2986', 1010, 29.86, 'both'],
    ['A2986 Q1010', 1010, 29.86, 'both'],
    ['A2992 Q////', 29.92 * 33.8639, 29.92, 'both'],
  ])('%s', (group, qnhHpa, qnhInHg, given) => {
    const { pressure } = weatherOf(group);
    expect(pressure?.given).toBe(given);
    expect(pressure?.qnhHpa).toBeCloseTo(qnhHpa, 6);
    expect(pressure?.qnhInHg).toBeCloseTo(qnhInHg, 6);
  });

  test('a pressure that no air has is not read; one not reported is there', () => {
    expect(weatherOf('Q0103').pressure).toBeNull();
    expect(weatherOf('A0299').pressure).toBeNull();
    expect(weatherOf('Q////').pressure).toMatchObject({ qnhHpa: null, given: 'hPa' });
    expect(weatherOf('A////').pressure).toMatchObject({ qnhInHg: null, given: 'inHg' });
  });
});

describe('runways', () => {
  // FM 15, 15.13.6 until 2021; tables 0919, 0519, 1079, 0366; values from memory.
  test.each([
    ['R24/590392', { depth: { depthMm: 3, bound: 'exact' }, braking: 'medium-poor' }],
    ['R24/599295', { depth: { depthMm: 100, bound: 'exact' }, braking: 'good' }],
    ['R24/599793', { depth: { depthMm: 350, bound: 'exact' }, braking: 'medium' }],
    ['R24/599894', { depth: { depthMm: 400, bound: 'at-least' }, braking: 'medium-good' }],
    ['R24/599999', { depth: null, closed: true, braking: 'unreliable' }],
    ['R24/599191', { depth: null, closed: false, braking: 'poor' }],
    [
      'R24/529096',
      { coveredPercent: [11, 25], depth: { depthMm: 90, bound: 'exact' }, braking: null },
    ],
    ['R24///////', { deposit: null, coveredPercent: null, depth: null, braking: null }],
    ['24590390', { runway: '24', braking: 0.9 }],
    ['74590390', { runway: '24R' }],
    ['86590390', { runway: '36R' }],
    ['88590390', { runway: 'all' }],
    ['99590390', { runway: 'repeated' }],
    ['24CLRD70', { runway: '24', cleared: true, braking: 0.7 }],
    ['R24L/CLRD//', { runway: '24L', cleared: true, braking: null }],
  ])('%s', (group, says) => {
    expect(weatherOf(group).runwayStates).toMatchObject([{ code: 'runway-state', ...says }]);
  });

  test.each([
    ['SNOCLO', 'all'],
    ['R/SNOCLO', 'all'],
    ['R88/SNOCLO', 'all'],
    ['R24L/SNOCLO', '24L'],
  ])('%s is closed by snow', (group, runway) => {
    expect(weatherOf(group).runwayStates).toEqual([{ code: 'snow-closed', runway }]);
  });

  test.each([
    ['WS R04', '04', null],
    ['WS RWY04L', '04L', null],
    ['WS ALL RWY', 'all', null],
    ['WS TKOF RWY22', '22', 'take-off'],
    ['WS LDG RWY22', '22', 'landing'],
    ['WS R31', '31', null],
    ['WS', null, null],
  ])('%s', (group, runway, path) => {
    expect(weatherOf(`${group} NOSIG`).windShear).toEqual([{ code: 'wind-shear', runway, path }]);
  });
});

describe('colour states', () => {
  // Habit of military fields; common practice, no published source.
  test.each([
    ['BLU', 'BLU', false],
    ['BLU+', 'BLU', false],
    ['YLO2', 'YLO2', false],
    ['BLACKAMB', 'AMB', true],
    ['BLACK', null, true],
  ])('%s', (group, colour, black) => {
    expect(weatherOf(group).colourState).toEqual({ code: 'colour-state', colour, black });
  });
});

describe('what is not observed is kept apart', () => {
  test('each expectation with its own words and place', () => {
    const text =
      'METAR XHAR 011250Z 24012KT CAVOK 15/08 Q1013 PROB30 TEMPO 0600 FG BECMG FM1400 31018G28KT 250V340 FM1500 9999 NOSIG';
    const { trends, visibility, present } = readReport(text).weather;
    expect(trends.map(({ trend, text: words }) => `${trend}: ${words}`)).toEqual([
      'PROB: PROB30 TEMPO 0600 FG',
      'BECMG: BECMG FM1400 31018G28KT 250V340',
      'FM: FM1500 9999',
      'NOSIG: NOSIG',
    ]);
    for (const { at, text: words } of trends) expect(text.slice(...at)).toBe(words);
    expect(visibility?.distance?.distanceM).toBe(10_000);
    expect(present).toEqual([]);
  });

  test('remarks with their words, and the few that are read', () => {
    const text =
      'METAR XBOR 121755Z 21016KT 10SM CLR 06/04 A2990 RMK AO2 PK WND 20032/1725 WSHFT 1715 FROPA RAB05E30 CIG 005V010 SLP123 P0009 60217 70125 4/008 T00640036 10066 21012 58033 PRESRR TSNO LTGICCC $';
    const { weather, spans } = readReport(text);
    expect(weather.remarks?.text).toBe(text.slice(text.indexOf('RMK')));
    expect(weather.remarks).toMatchObject({
      peakWind: { fromDeg: 200, speedKt: 32, hour: 17, minute: 25 },
      seaLevelHpa: 1012.3,
    });
    expect(weather.maintenance).toBe(true);
    // FMH-1, 12.7.
    const remarks = spans.filter(({ kind }) => kind === 'remarks');
    expect(
      remarks.map(({ at, meaning }) => {
        const what = meaning?.code === 'remark' ? meaning.remark : (meaning?.code ?? '-');
        return `${text.slice(...at)}: ${what}`;
      }),
    ).toEqual([
      'RMK: remarks',
      'AO2: station-kind',
      'PK WND 20032/1725: peak-wind',
      'WSHFT 1715 FROPA: wind-shift',
      'RAB05E30: weather-times',
      'CIG 005V010: -',
      'SLP123: sea-level-pressure',
      'P0009: precipitation',
      '60217: precipitation',
      '70125: precipitation',
      '4/008: snow-depth',
      'T00640036: temperature-tenths',
      '10066: temperature-extremes',
      '21012: temperature-extremes',
      '58033: pressure-tendency',
      'PRESRR: pressure-rising-rapidly',
      'TSNO: sensor-out',
      'LTGICCC: lightning',
      '$: maintenance',
    ]);
  });

  // FMH-1, 12.7.1: pairs of letters for weather, each with B or E and the minute, with the hour
  // before it where that is another. QFE748 is a pressure, in mm of mercury.
  test.each([
    ['RAB05E30SNB20E55', 'weather-times'],
    ['SHRAB05E30SHSNB20E55', 'weather-times'],
    ['TSB0159E30', 'weather-times'],
    ['QFE748', 'field-pressure'],
    ['QFE742/0989', 'field-pressure'],
    ['RAB75', '-'],
    ['RAB2505', '-'],
    ['RAB105', '-'],
    ['XABB05', '-'],
  ])('%s in remarks is %s', (group, kind) => {
    const text = `METAR XNOR 011230Z 04007MPS 9999 SCT033 M12/M18 Q1009 RMK ${group}`;
    const meaning = readReport(text).spans.find(({ at }) => text.slice(...at) === group)?.meaning;
    expect(meaning?.code === 'remark' ? meaning.remark : (meaning?.code ?? '-')).toBe(kind);
  });

  test('the sea-level pressure not available is no number', () => {
    expect(weatherOf('RMK SLPNO').remarks?.seaLevelHpa).toBeNull();
  });

  test('a forecast has its type and no weather, but its groups have meanings', () => {
    // FM 51; the shear group is of US forecasts, AIM 7-1, key to TAF.
    const text =
      'TAF AMD XHAR 011100Z 0112/0218 24012KT 9999 BKN020 WS010/31022KT TX15/0114Z TNM02/0205Z PROB40 0114/0116 4000 SHRA FM011600 31018G28KT CAVOK=';
    const { weather, spans } = readReport(text);
    expect(weather).toMatchObject({
      ...{ type: 'TAF', modifiers: ['amended'], visibility: null, clouds: [], trends: [] },
    });
    expect(pieces(text, spans).slice(4)).toEqual([
      'forecast 0112/0218: validity',
      'forecast 24012KT: wind',
      'forecast 9999: visibility',
      'forecast BKN020: cloud',
      'forecast WS010/31022KT: shear-aloft',
      'forecast TX15/0114Z: extreme',
      'forecast TNM02/0205Z: extreme',
      'forecast PROB40: trend',
      'forecast 0114/0116: validity',
      'forecast 4000: visibility',
      'forecast SHRA: weather',
      'forecast FM011600: time',
      'forecast 31018G28KT: wind',
      'forecast CAVOK: cavok',
      'end =: end',
    ]);
    expect(meaningsOf(text)).toContainEqual({
      ...{ code: 'validity', from: { day: 1, hour: 12, minute: 0 } },
      to: { day: 2, hour: 18, minute: 0 },
    });
    expect(meaningsOf(text)).toContainEqual({
      ...{ code: 'extreme', is: 'TN', airC: -2, day: 2, hour: 5, minute: 0 },
    });
    expect(meaningsOf(text)).toContainEqual({
      ...{ code: 'shear-aloft', heightFt: 1000, fromDeg: 310, speedKt: 22 },
    });
  });
});

describe('stretches', () => {
  test('each group is one, its words together, what is not read is marked', () => {
    const text = 'METAR COR XHAR 011250Z AUTO 24012KT 200V280 1 1/2SM BLURGH WS ALL RWY 15/08=';
    expect(pieces(text, readReport(text).spans)).toEqual([
      'type METAR: type',
      'modifier COR: modifier',
      'station XHAR: station',
      'time 011250Z: issued',
      'modifier AUTO: modifier',
      'wind 24012KT: wind',
      'swing 200V280: swing',
      'other 1 1/2SM: visibility',
      'unread BLURGH: -',
      'other WS ALL RWY: wind-shear',
      'other 15/08: temperature',
      'end =: end',
    ]);
    expect(readReport(text).weather.modifiers).toEqual(['corrected', 'automatic']);
  });

  test('of another report in the same text keep their meanings', () => {
    const text = 'METAR XHAR 011250Z 24012KT CAVOK= METAR XBOR 011253Z 28018KT 0800 FG=';
    const others = readReport(text).spans.filter(({ kind }) => kind === 'another');
    expect(others.map(({ at, meaning }) => `${text.slice(...at)}: ${meaning?.code}`)).toEqual([
      'METAR: type',
      'XBOR: station',
      '011253Z: issued',
      '28018KT: wind',
      '0800: visibility',
      'FG: weather',
      '=: end',
    ]);
    expect(readReport(text).weather).toMatchObject({ cavok: true, present: [] });
    expect(readReports(text).map(({ weather }) => weather.cavok)).toEqual([true, false]);
  });

  test('of one report do not reach into the next', () => {
    // TKOF stands where a station does, before a time.
    const text = 'METAR XHAR 011250Z 24012KT CAVOK WS TKOF 011250Z 25013KT CAVOK';
    const [first, second] = readReports(text);
    expect(first?.weather.windShear).toMatchObject([{ runway: null, path: null }]);
    expect(second).toMatchObject({ station: 'TKOF', wind: { fromDeg: 250 } });
  });

  test('of a wind in short have its meaning, and there is no weather', () => {
    const { spans, weather } = readReport('240/12G20');
    expect(spans.map(({ meaning }) => meaning?.code)).toEqual(['wind']);
    expect(weather).toMatchObject({ type: null, visibility: null, remarks: null });
  });

  test('of a blank text are none', () => {
    expect(readReport(' \n')).toMatchObject({
      kind: 'nothing',
      spans: [],
      weather: { type: null },
    });
  });
});

describe('a bulletin of a thousand lines', () => {
  const line = (i: number) =>
    `METAR X${String(i).padStart(3, '0')} 011250Z 24012KT 9999 FEW030 15/08 Q1013=\n`;
  const bulletin = Array.from({ length: 1000 }, (_, i) => line(i)).join('');

  test('is read as far as the bound, says so, and every report read is whole', () => {
    const reports = readReports(bulletin);
    expect(reports.length).toBeGreaterThan(300);
    // The bound may cut the last one.
    for (const [i, { station, weather }] of reports.slice(0, -1).entries()) {
      expect(station).toBe(line(i).slice(6, 10));
      expect(weather.pressure?.qnhHpa).toBe(1013);
    }
    expect(reports[0]?.problems.map(({ code }) => code)).toEqual(['too-long']);
  });
});
