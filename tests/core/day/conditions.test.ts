/** What the day is like, quantity by quantity: what is entered replaces what it states. */

import { describe, expect, test } from 'vitest';
import { settledSources } from '../../../src/core/day/askDay';
import { day } from '../../../src/core/day/day';
import { plainMemo } from '../../../src/core/day/memo';
import type { Inputs } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { written } from '../sortie/recorder';
import { AT, documentsAt } from './moments';

const TUMBREL = documentsAt('XTUM');
const HOT = 'METAR XTUM 051850Z 31008KT CAVOK 38/12 Q1012';

type Entered = string | Partial<Inputs>;

/** The day after all that was entered: texts of winds, and what else was set, oldest first. */
function dayOf(...entered: readonly Entered[]) {
  const sortie = foldSortie(
    written(
      ...entered.map((one) =>
        typeof one === 'string'
          ? ({ kind: 'wind', text: one, north: 'true' } as const)
          : ({ kind: 'set', inputs: one } as const),
      ),
    ),
  );
  return day(settledSources(sortie, TUMBREL, AT, 'failed'), plainMemo);
}

const temperature = (...entered: readonly Entered[]) => dayOf(...entered).air()?.temperature.value;

describe('a wind entered after a report', () => {
  test('replaces its wind and nothing else', () => {
    const [reported, later] = [dayOf(HOT), dayOf(HOT, '33009KT')];
    expect(reported.wind().wind).toMatchObject({ fromDeg: 310, speedKt: 8 });
    expect(later.wind().wind).toMatchObject({ fromDeg: 330, speedKt: 9 });
    expect(later.air()).toEqual(reported.air());
    expect(later.air()?.temperature.value).toBe(38);
    expect(later.weather()?.qnhHpa.value).toBe(1012);
    expect([reported.windIsNewer(), later.windIsNewer()]).toEqual([false, true]);
  });

  test('may be spoken', () => {
    const later = dayOf(HOT, 'wind 330 degrees 9 knots');
    expect(later.air()?.temperature.value).toBe(38);
    expect(later.wind().wind?.speedKt).toBe(9);
  });

  test('leaves what the report closes closed', () => {
    const closed = `${HOT} R14/SNOCLO`;
    const inUse = (...texts: readonly string[]) =>
      dayOf(...texts)
        .settled()
        .rules.closedByReport?.includes('14') ?? false;
    expect(inUse('31008KT')).toBe(false);
    expect(inUse(closed)).toBe(true);
    expect(inUse(closed, '14009KT')).toBe(true);
  });
});

test('a newer report replaces an older one, and a wind without a report leaves standard air', () => {
  const cooler = 'METAR XTUM 051920Z 30006KT CAVOK 31/12 Q1011';
  expect(temperature(HOT, '33009KT', cooler)).toBe(31);
  expect(temperature(HOT, cooler, '33009KT')).toBe(31);
  // 15 °C less 1.98 °C for each 1 000 ft: ICAO Doc 7488. Standing at the demo's field.
  const feet = TUMBREL.field?.place.elevationFt ?? Number.NaN;
  expect(temperature('33009KT')).toBeCloseTo(15 - 1.9812e-3 * feet, 3);
});

test('what is typed and not yet usable takes nothing away', () => {
  expect(temperature(HOT, '3')).toBe(38);
});

describe('of what is typed and what is reported, the newer counts', () => {
  const QNH_ONLY = 'METAR XTUM 051920Z 30006KT 9999 ///// Q1011';

  test('quantity by quantity', () => {
    const typedLast = dayOf(HOT, { ownTemperatureC: 25, ownQnhHpa: 1002 });
    expect(typedLast.air()?.temperature.value).toBe(25);
    expect(typedLast.air()?.overruled).toEqual([]);
    const reportedLast = dayOf({ ownTemperatureC: 25, ownQnhHpa: 1002 }, HOT);
    expect(reportedLast.air()?.temperature.value).toBe(38);
    expect(reportedLast.air()?.overruled).toEqual(['qnh', 'temperature']);
    expect(reportedLast.air()).toEqual({ ...dayOf(HOT).air(), overruled: ['qnh', 'temperature'] });
  });

  test('and a report takes no place of what it does not state', () => {
    const later = dayOf({ ownTemperatureC: 25, ownQnhHpa: 1002 }, QNH_ONLY);
    expect(later.air()?.temperature.value).toBe(25);
    expect(later.air()?.overruled).toEqual(['qnh']);
  });

  test('typed again, it counts again; a wind alone changes nothing of it', () => {
    expect(temperature({ ownTemperatureC: 25 }, HOT, { ownTemperatureC: 25 })).toBe(25);
    expect(temperature(HOT, { ownTemperatureC: 25 }, '33009KT')).toBe(25);
    expect(temperature({ ownTemperatureC: 25 }, '33009KT')).toBe(25);
  });
});

describe('at another field', () => {
  test('a wind replaces the whole report of the one before', () => {
    expect(temperature({ field: 'elsewhere' }, HOT, '33009KT')).toBe(38);
    const other = 'METAR XHAR 051850Z 31008KT CAVOK 38/12 Q1012';
    expect(temperature({ field: 'elsewhere' }, other, { field: 'here' }, '33009KT')).toBe(
      temperature('33009KT'),
    );
    // Another station's that was entered here is the pilot's choice; its own counts whenever it came.
    expect(temperature({ field: 'here' }, other, '33009KT')).toBe(38);
    expect(temperature(HOT, { field: 'here' }, '33009KT')).toBe(38);
  });

  const windAt = (...entered: readonly Entered[]) => {
    const of = dayOf(...entered);
    return { wind: of.wind().wind, elsewhere: of.windElsewhere()?.text ?? null };
  };

  test('a wind typed at the one before is no wind, but is shown as that place’s', () => {
    const moved = windAt({ field: 'elsewhere' }, '27012KT', { field: 'here' });
    expect(moved).toEqual({ wind: null, elsewhere: '27012KT' });
    expect(
      dayOf({ field: 'elsewhere' }, '27012KT', { field: 'here' }).windElsewhere(),
    ).toMatchObject({
      field: 'elsewhere',
    });
    // One that is typed here takes its place, and then there is nothing to offer.
    const typed = windAt({ field: 'elsewhere' }, '27012KT', { field: 'here' }, '33009KT');
    expect(typed).toMatchObject({ wind: { fromDeg: 330 }, elsewhere: null });
    // Back where it was typed, it counts again.
    const back = windAt({ field: 'one' }, '27012KT', { field: 'two' }, '33009KT', { field: 'one' });
    expect(back).toMatchObject({ wind: { fromDeg: 270 }, elsewhere: null });
  });

  test('a wind entered before there was a field belongs to the first', () => {
    expect(windAt('27012KT', { field: 'here' }).wind).toMatchObject({ fromDeg: 270 });
  });

  test('a field that was mended keeps its wind: it is another document of the same place', () => {
    const sortie = foldSortie(
      written(
        { kind: 'set', inputs: { field: 'before' } },
        { kind: 'wind', text: '27012KT', north: 'true' },
        { kind: 'set', inputs: { field: 'after' } },
      ),
    );
    const sources = settledSources(sortie, TUMBREL, AT, 'failed');
    const windOf = (code: string) =>
      day({ ...sources, fieldCode: () => code }, plainMemo).wind().wind?.fromDeg ?? null;
    expect([windOf('XTUM'), windOf('XHAR')]).toEqual([270, null]);
  });

  test('taken over it counts, and is as old as it was', () => {
    const entries = written(
      { kind: 'set', inputs: { field: 'elsewhere' } },
      { kind: 'wind', text: '27012KT', north: 'true' },
      { kind: 'set', inputs: { field: 'here' } },
    );
    const before = entries[1];
    if (before === undefined) throw new Error('no wind');
    const taken = foldSortie([
      ...entries,
      {
        ...before,
        id: 'taken',
        seq: 99,
        at: { wallMs: before.at.wallMs + 720_000, sortieMs: before.at.sortieMs + 720_000 },
        kind: 'wind',
        text: '27012KT',
        north: 'true',
        takenFrom: before.id,
      },
    ]);
    const of = day(settledSources(taken, TUMBREL, AT, 'failed'), plainMemo);
    expect(of.wind().wind).toMatchObject({ fromDeg: 270 });
    expect(of.enteredWind()?.at).toEqual(before.at);
  });

  test('neither do the trend of its report and its forecast', () => {
    const taf = 'TAF XHAR 051700Z 0518/0618 19025G38KT';
    const moved = dayOf(
      { field: 'elsewhere' },
      `${HOT.replace('XTUM', 'XHAR')} TEMPO 19040KT`,
      taf,
      {
        field: 'here',
      },
    );
    expect(moved.expected()?.parts).toEqual([]);
    expect(moved.wind().wind).toBeNull();
  });
});
