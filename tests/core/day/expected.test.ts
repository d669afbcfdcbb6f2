/** Forecasts and trends judged for the runway in use, at the sortie's time. */

import { expect, test } from 'vitest';
import { settledSources } from '../../../src/core/day/askDay';
import { day } from '../../../src/core/day/day';
import { plainMemo } from '../../../src/core/day/memo';
import type { Inputs } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { written } from '../sortie/recorder';
import { documentsAt, TABLES } from './moments';

const HARROW = documentsAt('XHAR');
const on = (end: string, purpose: 'take-off' | 'landing' = 'take-off') => ({
  chosen: { end, purpose },
  purpose,
});

/** The day at a time of 5 April 1987, after these texts, entered at that time. */
function dayOf(time: string, inputs: Partial<Inputs>, ...texts: readonly string[]) {
  const at = new Date(`1987-04-${time}Z`);
  const sortie = foldSortie(
    written(
      { kind: 'set', inputs },
      ...texts.map((text) => ({ kind: 'wind', text, north: 'true' }) as const),
    ).map((entry) => ({ ...entry, at: { wallMs: at.getTime(), sortieMs: at.getTime() } })),
  );
  return day(settledSources(sortie, HARROW, at, TABLES.magnetic ?? 'failed'), plainMemo);
}

const METAR = 'METAR XHAR 051850Z 28010KT 9999 FEW030 15/08 Q1013';
const hour = (ms: number | undefined) => new Date(ms ?? Number.NaN).toISOString().slice(8, 16);
const codes = (of: ReturnType<typeof dayOf>) =>
  of.verdict().cautions.map(({ code }) => code.replace(/^forecast-.*/, 'forecast'));

test('a trend beyond the limit is said with its figure and its time, as long as it counts', () => {
  const gusty = `${METAR} TEMPO TL2000 19025G38KT`;
  const now = dayOf('05T19:00', on('28'), gusty);
  const worst = now.expected()?.worst;
  expect(worst).toMatchObject({ kind: 'TEMPO', text: 'TEMPO TL2000 19025G38KT', station: 'XHAR' });
  expect([hour(worst?.fromMs), hour(worst?.untilMs)]).toEqual(['05T18:50', '05T20:00']);
  // The Sleet's document: 24 kt dry.
  expect(worst?.beyond).toMatchObject({ code: 'crosswind', limitKt: 24 });
  // 28 heads 266° true: its number is magnetic, and the variation there was 14° west.
  expect(worst?.beyond?.valueKt).toBeCloseTo(38 * Math.sin(((266 - 190) * Math.PI) / 180), 1);
  expect(now.verdict().cautions).toContainEqual({
    code: 'forecast-crosswind',
    value: worst?.beyond?.valueKt,
    limit: 24,
  });
  expect(codes(dayOf('05T19:59', on('28'), gusty))).toContain('forecast');
  expect(codes(dayOf('05T20:00', on('28'), gusty))).not.toContain('forecast');
});

test('it is judged by the same function as the present wind', () => {
  const wind = '19025G38KT';
  const present = dayOf('05T19:00', on('28'), METAR, wind).wind().inUse;
  const expected = dayOf('05T19:00', on('28'), `${METAR} TEMPO ${wind}`).expected()?.worst?.end;
  expect(expected).toEqual({ ...present, reasons: [] });
});

test('what begins within the hour is said, what is later is not', () => {
  const coming = `${METAR} BECMG AT2030 19025G38KT`;
  expect(codes(dayOf('05T19:29', on('28'), coming))).not.toContain('forecast');
  expect(codes(dayOf('05T19:30', on('28'), coming))).toContain('forecast');
  // The trend ends with its two hours.
  expect(codes(dayOf('05T20:50', on('28'), coming))).not.toContain('forecast');
});

test('the worst is for the runway in use and what it is used for', () => {
  const text = `${METAR} TEMPO 10030KT`;
  const worstOn = (inputs: Partial<Inputs>) => dayOf('05T19:00', inputs, text).expected()?.worst;
  expect(worstOn(on('28'))?.beyond?.code).toBe('tailwind');
  expect(worstOn(on('10'))?.beyond).toBeNull();
  expect(dayOf('05T19:00', on('28', 'landing'), text).purpose()).toBe('landing');
  expect(worstOn(on('28', 'landing'))?.beyond?.code).toBe('tailwind');
});

test('a forecast beyond the limit is judged beside the report it was pasted with', () => {
  const taf = 'TAF XHAR 051700Z 0518/0618 28012KT BECMG 0522/0524 19025G38KT';
  const both = `${METAR} NOSIG= ${taf}=`;
  const of = dayOf('05T19:00', on('28'), both);
  expect(of.report()?.weather.pressure?.qnhHpa).toBe(1013);
  expect(of.wind().wind).toMatchObject({ fromDeg: 280, speedKt: 10 });
  expect(codes(of)).not.toContain('forecast');
  expect(of.expected()?.parts.map(({ kind }) => kind)).toEqual(['base', 'BECMG']);
  const later = dayOf('05T21:30', on('28'), both);
  expect(later.expected()?.worst).toMatchObject({ kind: 'BECMG', of: 'taf' });
  expect(codes(later)).toContain('forecast');
  // Pasted apart, in either order, they say the same.
  expect(codes(dayOf('05T21:30', on('28'), METAR, taf))).toContain('forecast');
  expect(codes(dayOf('05T21:30', on('28'), taf, METAR))).toContain('forecast');
});

test('without a report or a wind, a forecast gives the wind for now, and is no caution against itself', () => {
  const taf = 'TAF XHAR 051700Z 0518/0618 19025G38KT TEMPO 0518/0520 28010KT';
  const alone = dayOf('05T19:00', on('28'), taf);
  expect(alone.windIsForecast()).toBe(true);
  expect(alone.wind().wind).toMatchObject({ fromDeg: 190, speedKt: 25, gustKt: 38 });
  expect(codes(alone)).toContain('crosswind');
  expect(codes(alone)).not.toContain('forecast');
  // Before and after its time it says nothing of now.
  expect(codes(dayOf('05T17:30', on('28'), taf))).toContain('no-wind');
  expect(codes(dayOf('06T18:00', on('28'), taf))).toContain('no-wind');
});

test('a wind or a report takes the place of what is forecast for now, whichever came first', () => {
  const taf = 'TAF XHAR 051700Z 0518/0618 30025KT';
  for (const texts of [
    [taf, '28008KT'],
    ['28008KT', taf],
  ]) {
    const of = dayOf('05T19:00', on('28'), ...texts);
    expect(of.windIsForecast()).toBe(false);
    expect(of.wind().wind).toMatchObject({ fromDeg: 280, speedKt: 8 });
  }
});

test('of several forecasts the newest counts, the field’s own before any other; cancelled, none', () => {
  const windy = 'TAF XHAR 051700Z 0518/0618 28012KT TEMPO 0518/0524 19025G38KT';
  const calmer = 'TAF AMD XHAR 051830Z 0518/0618 28012KT';
  const elsewhere = 'TAF XBOR 051840Z 0518/0618 19025G38KT';
  const said = (...texts: string[]) => codes(dayOf('05T19:00', on('28'), METAR, ...texts));
  expect(said(windy)).toContain('forecast');
  expect(said(windy, calmer)).not.toContain('forecast');
  expect(said(calmer, windy)).not.toContain('forecast');
  expect(said(calmer, elsewhere)).not.toContain('forecast');
  expect(said(windy, 'TAF AMD XHAR 051840Z 0518/0618 CNL')).not.toContain('forecast');
});

test('a newer report ends the trend of the one before', () => {
  const newer = 'METAR XHAR 051920Z 28010KT 9999 FEW030 15/08 Q1013 NOSIG';
  const before = `${METAR} TEMPO 19025G38KT`;
  expect(codes(dayOf('05T19:25', on('28'), before))).toContain('forecast');
  expect(codes(dayOf('05T19:25', on('28'), before, newer))).not.toContain('forecast');
  // A wind from the tower replaces the wind and nothing else.
  expect(codes(dayOf('05T19:25', on('28'), before, '28012KT'))).toContain('forecast');
});

test('a forecast takes no part in which way the winds are going', () => {
  const of = dayOf('05T19:00', {}, '28010KT', 'TAF XHAR 051700Z 0518/0618 30025KT');
  expect(of.outlook()?.trend).toMatchObject({ kind: 'thin', basis: { count: 1 } });
});
