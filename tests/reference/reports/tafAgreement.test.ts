/**
 * metar-taf-parser's reading of real forecasts, part by part, against ours: what each part is, its
 * wind, and when it counts. Where the two differ, the rule that decides is named.
 */

import { type IWind, parseTAF, type SpeedUnit } from 'metar-taf-parser';
import { describe, expect, test } from 'vitest';
import { KT_PER_KMH, KT_PER_MPS } from '../../../src/core/units';
import type { Wind } from '../../../src/core/weather/report';
import { forecastsIn } from '../../../src/core/weather/whole/forecast';
import { REAL_TAFS, type RealTaf } from './realTafs';

const KT: Readonly<Record<`${SpeedUnit}`, number>> = { KT: 1, MPS: KT_PER_MPS, 'KM/H': KT_PER_KMH };

const hour = (ms: number | undefined) =>
  ms === undefined ? '?' : new Date(ms).toISOString().slice(0, 16);
const kt = (value: number) => String(Math.round(value * 10) / 10);

const windLine = (from: string, speedKt: number, gustKt: number | null) =>
  `${from}/${kt(speedKt)}${gustKt === null ? '' : `G${kt(gustKt)}`}`;

const ourWind = (wind: Wind | null) =>
  wind === null
    ? '-'
    : windLine(wind.variable ? 'VRB' : String(wind.fromDeg), wind.speedKt ?? 0, wind.gustKt);

function theirWind(wind: IWind | undefined): string {
  if (wind === undefined) return '-';
  const unit = KT[wind.unit];
  const from = wind.degrees === undefined ? 'VRB' : String(wind.degrees);
  return windLine(from, wind.speed * unit, wind.gust === undefined ? null : wind.gust * unit);
}

/** Each part as a line: what it is, its wind, from when, and until when the text itself says. */
function ours({ date, text }: RealTaf): readonly string[] {
  return forecastsIn(text, Date.parse(date)).flatMap(({ state, validMs, parts }) => {
    if (state !== 'given') return [state];
    return parts.map(({ kind, percent, wind, fromMs, byMs, untilMs }) => {
      const end = { base: validMs?.[1], FM: undefined, BECMG: byMs }[String(kind)] ?? untilMs;
      return [
        kind,
        percent ?? '',
        ourWind(wind),
        hour(fromMs),
        kind === 'FM' ? '' : hour(end),
      ].join(' ');
    });
  });
}

function theirs({ date, text }: RealTaf): readonly string[] {
  try {
    const taf = parseTAF(text, { issued: new Date(date) });
    if (taf.nil) return ['missing'];
    if (taf.canceled) return ['cancelled'];
    const { validity, trends } = taf;
    const base = ['base', '', theirWind(taf.wind), hour(+validity.start), hour(+validity.end)];
    return [
      base.join(' '),
      ...trends.map(({ type, probability, wind, validity: { start, end } }) =>
        [type, probability ?? '', theirWind(wind), hour(+start), end ? hour(+end) : ''].join(' '),
      ),
    ];
  } catch {
    return ['refused'];
  }
}

/** Where the readers differ, by a text of the forecast: what only one of them has. */
const DIFFERENCES: readonly {
  readonly group: string;
  readonly ours?: readonly string[];
  readonly theirs?: readonly string[];
  readonly rule: string;
}[] = [
  {
    group: ' NIL',
    ours: ['missing'],
    theirs: ['refused'],
    rule: 'A missing forecast is sent as NIL, without a period: FM 51, 51.1.4; WMO-No. 386, Part II, 2.3.2.',
  },
  {
    group: 'BECMG 1015/1 017 27005KT',
    ours: ['BECMG  270/5 2018-09-09T18:00 2018-09-10T18:00'],
    rule: 'A period that is garbled hides no change: it may come at any time of the forecast. Our rule.',
  },
];

describe('metar-taf-parser reads the same parts in real forecasts, but for a rule', () => {
  test.each(REAL_TAFS)('$date $text', (taf) => {
    const rules = DIFFERENCES.filter(({ group }) => taf.text.includes(group));
    expect([...ours(taf), ...rules.flatMap(({ theirs: only = [] }) => only)].sort()).toEqual(
      [...theirs(taf), ...rules.flatMap(({ ours: only = [] }) => only)].sort(),
    );
  });

  test('over a hundred of them, with every kind of part', () => {
    expect(REAL_TAFS.length).toBeGreaterThan(100);
    const all = REAL_TAFS.flatMap(ours).map((line) => line.split(' ').slice(0, 2).join(' ').trim());
    expect([...new Set(all)].sort()).toEqual([
      'BECMG',
      'FM',
      'PROB 30',
      'PROB 40',
      'TEMPO',
      'TEMPO 30',
      'TEMPO 40',
      'base',
      'cancelled',
      'missing',
    ]);
  });

  test.each(DIFFERENCES)('$group: $rule', ({ group }) => {
    expect(REAL_TAFS.some(({ text }) => text.includes(group))).toBe(true);
  });
});
