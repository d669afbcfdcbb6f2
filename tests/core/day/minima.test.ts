/**
 * The pilot's own minima and bingo fuel, and a crosswind that was only demonstrated. What a report
 * says is as WMO-No. 306, FM 15, has it: BKN and OVC make a ceiling (ICAO Annex 2, ch. 1), FEW and
 * SCT don't; the figures were written by hand.
 */

import { describe, expect, test } from 'vitest';
import type { Field, Runway } from '../../../src/core/airfield/field';
import { notAccepted } from '../../../src/core/day/accepted';
import { settledSources } from '../../../src/core/day/askDay';
import { day } from '../../../src/core/day/day';
import { plainMemo } from '../../../src/core/day/memo';
import { isStopping } from '../../../src/core/day/verdict';
import type { Inputs } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { written } from '../sortie/recorder';
import { brief, documentsAt, flown, moment, TABLES } from './moments';

const HARROW = documentsAt('XHAR');
const AT = new Date('1987-04-05T19:00Z');

/** The verdict on runway 28 after these texts, by the pilot's own limits. */
function verdict(inputs: Partial<Inputs>, ...texts: readonly string[]) {
  const chosen = { end: '28', purpose: 'take-off' } as const;
  const sortie = foldSortie(
    written(
      { kind: 'set', inputs: { chosen, ...inputs } },
      ...texts.map((text) => ({ kind: 'wind', text, north: 'true' }) as const),
    ).map((entry) => ({ ...entry, at: { wallMs: AT.getTime(), sortieMs: AT.getTime() } })),
  );
  return day(settledSources(sortie, HARROW, AT, TABLES.magnetic ?? 'failed'), plainMemo).verdict();
}

const cautions = (...of: Parameters<typeof verdict>) => verdict(...of).cautions;
const coded = (codes: readonly string[], ...of: Parameters<typeof verdict>) =>
  cautions(...of).filter(({ code }) => codes.includes(code));

const MINIMA = { ownVisibilityM: 3000, ownCeilingFt: 800 };
const report = (rest: string) => `METAR XHAR 051850Z 28010KT ${rest} 05/04 Q1013`;

describe('visibility and ceiling below the pilot’s own', () => {
  const own = (text: string, inputs: Partial<Inputs> = MINIMA) =>
    coded(['visibility', 'ceiling'], inputs, text);

  test('stop, with figure and minimum', () => {
    expect(own(report('2500 BR BKN006'))).toEqual([
      { code: 'visibility', value: 2500, limit: 3000 },
      { code: 'ceiling', value: 600, limit: 800 },
    ]);
    expect(own(report('2500 BR BKN006')).every(isStopping)).toBe(true);
  });

  test.each([
    ['just at them', '3000 BR BKN008', []],
    ['one metre step below', '2900 BR BKN008', ['visibility']],
    ['few and scattered are no ceiling', '9999 FEW004 SCT006 BKN012', []],
    ['the lowest layer counts', '9999 SCT004 BKN007 OVC020', ['ceiling']],
    ['vertical visibility is one', '0400 FG VV002', ['visibility', 'ceiling']],
    ['CAVOK is within any', 'CAVOK', []],
    ['no cloud detected', '9999 NCD', []],
    ['the sky not reported isn’t judged', '9999', []],
    ['nor is a visibility not reported', '//// BKN020', []],
  ])('%s: %s', (_, rest, codes) => {
    expect(own(report(rest)).map(({ code }) => code)).toEqual(codes);
  });

  test('none is judged where none is set, nor without a report', () => {
    expect(own(report('0400 FG VV002'), {})).toEqual([]);
    expect(coded(['visibility', 'ceiling'], MINIMA, '28010KT')).toEqual([]);
  });

  test('come back after going on outside them when it gets worse, and not when it gets better', () => {
    const before = verdict(MINIMA, report('2500 BR BKN020'));
    const accepted = before.cautions.map((one) => ({
      ...one,
      end: '28',
      purpose: 'take-off' as const,
      at: { wallMs: 0, sortieMs: 0 },
    }));
    const left = (rest: string) =>
      notAccepted(verdict(MINIMA, report(rest)), accepted).map(({ code }) => code);
    expect(left('2500 BR BKN020')).not.toContain('visibility');
    expect(left('2800 BR BKN020')).not.toContain('visibility');
    expect(left('2400 BR BKN020')).toContain('visibility');
  });
});

describe('a forecast below them', () => {
  const forecast = (text: string) =>
    coded(['forecast-visibility', 'forecast-ceiling'], MINIMA, text);

  test('is said in a word, the lowest of the parts that count within the hour', () => {
    const text = `${report('9999 BKN030')} TEMPO TL2000 2000 BR BKN007`;
    expect(forecast(text)).toEqual([
      { code: 'forecast-visibility', value: 2000, limit: 3000 },
      { code: 'forecast-ceiling', value: 700, limit: 800 },
    ]);
    expect(forecast(text).some(isStopping)).toBe(false);
  });

  test('and one that begins later is not', () => {
    expect(forecast(`${report('9999 BKN030')} TEMPO FM2005 2000 BR`)).toEqual([]);
    expect(forecast(`${report('9999 BKN030')} TEMPO FM1955 2000 BR`)).toHaveLength(1);
  });

  test('in a TAF: a part is judged for the time it counts', () => {
    const taf = 'TAF XHAR 051700Z 0518/0618 28010KT CAVOK BECMG 0523/0601 1500 BR OVC004';
    expect(forecast(taf)).toEqual([]);
    const foggy = 'TAF XHAR 051700Z 0518/0618 28010KT 1500 BR OVC004 FM052300 28010KT CAVOK';
    expect(forecast(foggy)).toEqual([
      { code: 'forecast-visibility', value: 1500, limit: 3000 },
      { code: 'forecast-ceiling', value: 400, limit: 800 },
    ]);
  });
});

describe('bingo', () => {
  const bingo = (inputs: Partial<Inputs>) => coded(['bingo'], inputs, '28010KT');
  const load = { fuelKg: 1500, stations: {} };

  test('stops where there is no more fuel than to turn back with', () => {
    expect(bingo({ load, bingoKg: 1499 })).toEqual([]);
    expect(bingo({ load, bingoKg: 1500 })).toEqual([{ code: 'bingo', value: 1500, limit: 1500 }]);
    expect(bingo({ load, bingoKg: 1500 }).every(isStopping)).toBe(true);
    expect(bingo({ load, bingoKg: null })).toEqual([]);
  });
});

describe('brakes', () => {
  const turnstone = { ...HARROW, ...flown('turnstone') };
  /** The cautions of the brakes on 28, some minutes after the aircraft stopped. */
  function brakes(
    minutes: number,
    what: 'stopping' | 'landed' | 'before',
    purpose: 'take-off' | 'landing',
  ) {
    const brakesUsedMs = what === 'before' ? AT.getTime() : null;
    const inputs = { chosen: { end: '28', purpose }, purpose, brakesUsedMs };
    const sortie = foldSortie(
      written(
        { kind: 'set', inputs },
        ...(what === 'before' ? [] : [{ kind: 'stamp', what } as const]),
      ).map((entry) => ({
        ...entry,
        at: { wallMs: AT.getTime(), sortieMs: AT.getTime() },
      })),
    );
    const later = new Date(AT.getTime() + minutes * 60_000);
    return day(settledSources(sortie, turnstone, later, TABLES.magnetic ?? 'failed'), plainMemo)
      .verdict()
      .cautions.filter(({ code }) => code === 'brakes-hot');
  }

  test('are hot until the document’s time is over, after a stop and after a landing', () => {
    // The Turnstone’s document: 25 minutes.
    expect(brakes(4, 'stopping', 'take-off')).toEqual([
      { code: 'brakes-hot', value: 4, limit: 25 },
    ]);
    expect(brakes(24, 'landed', 'take-off')).toEqual([
      { code: 'brakes-hot', value: 24, limit: 25 },
    ]);
    expect(brakes(25, 'stopping', 'take-off')).toEqual([]);
    // Stopped so in the sortie before.
    expect(brakes(4, 'before', 'take-off')).toEqual([{ code: 'brakes-hot', value: 4, limit: 25 }]);
    expect(brakes(4, 'landed', 'landing')).toEqual([]);
    expect(brakes(4, 'stopping', 'take-off').every(isStopping)).toBe(true);
  });
});

test('where a cable lies is said in a word: at Kelder Ness the last is 1 400 m along', () => {
  const cables = (code: string, end: string) =>
    brief(
      moment('15010KT', { chosen: { end, purpose: 'take-off' } }),
      documentsAt(code),
      TABLES,
    ).verdict.cautions.filter((one) => one.code === 'cable');
  expect(cables('XKEL', '15')).toEqual([{ code: 'cable', value: 1400, limit: null }]);
  expect(cables('XHAR', '28')).toEqual([]);
});

test('the hook is a step where a cable lies, or where the field doesn’t say whether one does', () => {
  const cable = (code: string, end: string, more: Partial<Field> = {}) => {
    const documents = documentsAt(code);
    const field = documents.field && { ...documents.field, ...more };
    const inputs = { chosen: { end, purpose: 'take-off' } } as const;
    return brief(moment('15010KT', inputs), { ...documents, field }, TABLES).steps?.facts.cable;
  };
  expect(cable('XKEL', '15')).toBe(true);
  expect(cable('XHAR', '28')).toBe(false);
  const runways = documentsAt('XHAR').field?.runways.map(({ ends: [near, far], ...runway }) => {
    const { cablesM: _, ...unsaid } = near;
    const { cablesM: __, ...unsaidToo } = far;
    const ends: Runway['ends'] = [unsaid, unsaidToo];
    return { ...runway, ends };
  });
  expect(cable('XHAR', '28', { runways: runways ?? [] })).toBeNull();
});

test('a crosswind beyond what was demonstrated is said in a word, and beyond the limit stops alone', () => {
  const { aircraft } = HARROW;
  if (aircraft === null) return expect.unreachable('no aircraft');
  const limits = { ...aircraft.limits, demonstratedCrosswindKt: 15 };
  const documents: typeof HARROW = { ...HARROW, aircraft: { ...aircraft, limits } };
  const told = (wind: string, of = documents) =>
    brief(
      moment(wind, { chosen: { end: '28', purpose: 'take-off' } }),
      of,
      TABLES,
    ).verdict.cautions.map(({ code }) => code);
  // 28 heads 266° true: a wind from 356° is all crosswind. The document's limit is 24 kt dry.
  expect(told('35620KT')).toContain('demonstrated-crosswind');
  expect(told('35614KT')).not.toContain('demonstrated-crosswind');
  expect(told('35630KT')).not.toContain('demonstrated-crosswind');
  expect(told('35630KT')).toContain('crosswind');
  expect(told('35620KT', HARROW)).not.toContain('demonstrated-crosswind');
});
