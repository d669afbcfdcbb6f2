/** A field and its plan from a piece of OpenStreetMap; and whatever else is given for one. */

import { readFileSync } from 'node:fs';
import geographiclib from 'geographiclib-geodesic';
import { describe, expect, test } from 'vitest';
import { readMapExtract } from '../../../src/core/map/readMapExtract';
import { readDocument } from '../../../src/core/readDocument.schema';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { FREE } from '../taxi/drawn';

/** Luxembourg, © OpenStreetMap contributors, ODbL 1.0: see tests/maps. */
const text = readFileSync(new URL('../../maps/ellx.json', import.meta.url), 'utf8');
const { elements } = JSON.parse(text) as {
  elements: { tags: Record<string, string>; geometry?: { lat: number; lon: number }[] }[];
};
const of = (aeroway: string) => elements.filter(({ tags }) => tags.aeroway === aeroway);

const { fields, problems } = readMapExtract(text);
const [found] = fields;
if (found === undefined) throw new Error('no field was read');
const { field } = found;
const stands = field.taxi.nodes.filter(({ kind }) => kind === 'stand');

describe('Luxembourg', () => {
  test('is one field that passes its schema, and says whose data it is', () => {
    expect(problems).toEqual([]);
    expect(fields).toHaveLength(1);
    expect([field.code, field.name]).toEqual(['ELLX', 'Luxembourg Airport']);
    expect(readDocument(JSON.stringify(field)).problems ?? []).toEqual([]);
    expect(field.about).toContain('© OpenStreetMap contributors, ODbL');
  });

  test('has its runway with the ends the map has, and the length between them', () => {
    const line = of('runway')[0]?.geometry ?? [];
    const [first, last] = [line[0], line.at(-1)];
    if (!first || !last) throw new Error('no runway on the map');
    const [runway] = field.runways;
    expect(field.runways).toHaveLength(1);
    const ends = runway?.ends.map(({ at }) => [at.latDeg, at.lonDeg]);
    expect(ends).toEqual(expect.arrayContaining([[first.lat, first.lon]]));
    expect(ends).toEqual(expect.arrayContaining([[last.lat, last.lon]]));
    // C. F. F. Karney's geodesics, GeographicLib.
    const { s12 = 0 } = geographiclib.Geodesic.WGS84.Inverse(
      first.lat,
      first.lon,
      last.lat,
      last.lon,
    );
    expect(runway?.ends[0].toraM).toBe(Math.round(s12));
    // 24 is landed on towards the west (its number, ICAO Annex 14, 5.2.2).
    const end = runway?.ends.find(({ designator }) => designator === '24');
    const other = runway?.ends.find(({ designator }) => designator === '06');
    expect(end?.at.lonDeg).toBeGreaterThan(other?.at.lonDeg ?? 0);
  });

  test('has at least 98 % of its taxiways in one network', () => {
    const beside = new Map<string, string[]>();
    for (const { from, to, on } of field.taxi.edges) {
      if (on === 'runway') continue;
      beside.set(from, [...(beside.get(from) ?? []), to]);
      beside.set(to, [...(beside.get(to) ?? []), from]);
    }
    const part = new Map<string, number>();
    for (const { id } of field.taxi.nodes) {
      const waiting = part.has(id) ? [] : [id];
      for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
        if (part.has(at)) continue;
        part.set(at, part.get(id) ?? part.size);
        waiting.push(...(beside.get(at) ?? []));
      }
    }
    const byId = new Map(field.taxi.nodes.map((node) => [node.id, node]));
    const lengths = new Map<number, number>();
    for (const { from, to, on } of field.taxi.edges) {
      const [a, b] = [byId.get(from), byId.get(to)];
      if (on !== 'taxiway' || !a || !b) continue;
      const one = part.get(from) ?? -1;
      lengths.set(one, (lengths.get(one) ?? 0) + Math.hypot(a.xM - b.xM, a.yM - b.yM));
    }
    const all = [...lengths.values()];
    const total = all.reduce((sum, length) => sum + length, 0);
    expect(total).toBeGreaterThan(10_000);
    expect(Math.max(...all) / total).toBeGreaterThanOrEqual(0.98);
  });

  test('has at least 95 % of its stands joined, each with a way to both ends, off the runway', () => {
    expect(stands.length / of('parking_position').length).toBeGreaterThanOrEqual(0.95);
    for (const end of ['06', '24']) {
      for (const { id } of stands) {
        const { route } = findRouteOut({ field, from: id, end, rules: FREE });
        expect(route, `${id} to ${end}`).not.toBeNull();
        expect(route?.runwayM).toBe(0);
      }
    }
  });

  test('has the letters the map has', () => {
    const letters = new Set(field.taxi.edges.map(({ name }) => name));
    for (const letter of ['A', 'B1', 'C', 'D1', 'E', 'G', 'H', 'I'])
      expect(letters).toContain(letter);
  });
});

const osm = (inside: string) => `<?xml version="1.0"?><osm version="0.6">${inside}</osm>`;
const runway = (points: readonly (readonly [number, number])[], ref = '18/36') =>
  osm(
    points.map(([lat, lon], id) => `<node id="${id}" lat="${lat}" lon="${lon}"/>`).join('') +
      `<way id="9">${points.map((_, id) => `<nd ref="${id}"/>`).join('')}` +
      `<tag k="aeroway" v="runway"/><tag k="ref" v="${ref}"/></way>`,
  );

describe('what is given for a map', () => {
  test.each([
    ['nothing', '', 'not-a-map'],
    ['words', 'see you at the pond', 'not-a-map'],
    ['a bare number', '42', 'not-a-map'],
    ['JSON that breaks off', text.slice(0, 5000), 'cut-short'],
    ['JSON of something else', '{"a":1}', 'not-a-map'],
    ['a list', '[1,2]', 'not-a-map'],
    ['null', '{"elements":null}', 'not-a-map'],
    ['elements that are none', '{"elements":[1,"x",null,{}]}', 'no-runway'],
    ['XML that breaks off', '<osm><node id="1" lat="1"', 'cut-short'],
    ['XML of something else', '<gpx></gpx>', 'not-a-map'],
    ['an empty map', osm(''), 'no-runway'],
    [
      'a runway of two points at one place',
      runway([
        [50, 6],
        [50, 6],
      ]),
      'no-runway',
    ],
    ['a runway of one point', runway([[50, 6]]), 'no-runway'],
    [
      'coordinates out of range',
      runway([
        [95, 6],
        [96, 6],
      ]),
      'lines-without-points',
    ],
    [
      'coordinates that are no numbers',
      '{"elements":[{"type":"node","id":1,"lat":"a","lon":{}}]}',
      'no-runway',
    ],
    [
      'ways without nodes',
      osm('<way id="1"><nd ref="7"/><tag k="aeroway" v="runway"/></way>'),
      'lines-without-points',
    ],
    [
      'GeoJSON without geometry',
      '{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"aeroway":"runway"},"geometry":null}]}',
      'no-runway',
    ],
    [
      'GeoJSON with a broken line',
      '{"type":"FeatureCollection","features":[{"properties":{"aeroway":"runway"},"geometry":{"type":"LineString","coordinates":[1,2]}}]}',
      'no-runway',
    ],
  ])('%s: a code, and no field', (_what, given, code) => {
    const read = readMapExtract(given);
    expect(read.fields).toEqual([]);
    expect(read.problems.map((problem) => problem.code)).toEqual([code]);
  });

  test('entities are not expanded', () => {
    const bomb = `<?xml version="1.0"?><!DOCTYPE osm [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">]><osm><node id="1" lat="1" lon="1"><tag k="aeroway" v="aerodrome"/><tag k="name" v="&b;"/></node></osm>`;
    expect(JSON.stringify(readMapExtract(bomb))).not.toContain('aaaaaaaaaa');
  });

  test('an aerodrome that is a relation gives the field its code', () => {
    const line = [
      { lat: 50, lon: 6 },
      { lat: 50.02, lon: 6 },
    ];
    const tags = { aeroway: 'aerodrome', icao: 'EAAA' };
    for (const place of [
      { center: { lat: 50.01, lon: 6 } },
      { bounds: { minlat: 50, minlon: 5.99, maxlat: 50.02, maxlon: 6.01 } },
    ]) {
      const elements = [
        { type: 'way', id: 1, tags: { aeroway: 'runway', ref: '18/36' }, geometry: line },
        { type: 'relation', id: 2, tags, ...place },
      ];
      const read = readMapExtract(JSON.stringify({ elements }));
      expect(read.fields.map((one) => one.field.code)).toEqual(['EAAA']);
    }
  });

  test('an aerodrome whose fence is a relation’s lines gives the field its code and name', () => {
    const nodes = [
      [50, 6],
      [50.02, 6],
      [50, 5.99],
      [50.02, 5.99],
      [50.02, 6.01],
    ].map(([lat, lon], id) => `<node id="${id}" lat="${lat}" lon="${lon}"/>`);
    const read = readMapExtract(
      osm(
        `${nodes.join('')}<way id="9"><nd ref="0"/><nd ref="1"/><tag k="aeroway" v="runway"/><tag k="ref" v="18/36"/></way>` +
          '<way id="10"><nd ref="2"/><nd ref="3"/><nd ref="4"/></way>' +
          '<relation id="11"><member type="way" ref="10" role="outer"/><tag k="aeroway" v="aerodrome"/><tag k="icao" v="EAAA"/><tag k="name" v="Fenced"/></relation>',
      ),
    );
    expect(read.fields.map(({ field: { code, name } }) => [code, name])).toEqual([
      ['EAAA', 'Fenced'],
    ]);
  });

  test('a million nodes and more are refused before they are parsed', () => {
    const startMs = performance.now();
    const read = readMapExtract(osm('<node id="1" lat="1" lon="1"/>'.repeat(1_000_001)));
    expect(read).toEqual({ fields: [], problems: [{ code: 'too-many' }] });
    // Parsing takes some 20 s.
    expect(performance.now() - startMs).toBeLessThan(5000);
  });

  test('a runway of very many points is read at once', () => {
    const points = Array.from({ length: 20_000 }, (_, at) => [50 + at * 1e-6, 6] as const);
    const startMs = performance.now();
    const [one] = readMapExtract(runway(points)).fields;
    // 14 s when every pair was measured.
    expect(performance.now() - startMs).toBeLessThan(4000);
    expect(one?.field.runways).toHaveLength(1);
  });

  test('a runway over the antimeridian is read like any other', () => {
    const ends = [
      [-17.75, 179.99],
      [-17.75, -179.99],
    ] as const;
    const [one] = readMapExtract(runway(ends, '09/27')).fields;
    // C. F. F. Karney's geodesics, GeographicLib.
    const { s12 = 0 } = geographiclib.Geodesic.WGS84.Inverse(...ends[0], ...ends[1]);
    expect(one?.field.runways[0]?.ends[0].toraM).toBe(Math.round(s12));
    expect(Math.abs(one?.field.place.lonDeg ?? 0)).toBeCloseTo(180, 6);
  });

  test('a runway at a pole has a length a runway can have, or is none', () => {
    const at = [
      [89.99, 0],
      [89.99, 90],
    ] as const;
    for (const { field: one } of readMapExtract(runway(at, '09/27')).fields) {
      for (const { ends } of one.runways) expect(ends[0].toraM).toBeLessThan(6000);
    }
  });
});
