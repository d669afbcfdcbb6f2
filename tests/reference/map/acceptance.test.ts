/**
 * How much of two large airports a field from the map keeps, counted from the map's own lines by
 * plain geometry. Charlotte and Seattle-Tacoma, © OpenStreetMap contributors, ODbL 1.0: see
 * tests/maps. The shares are this project's own bounds.
 */

import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { readMapExtract } from '../../../src/core/map/readMapExtract';
import { readDocument } from '../../../src/core/readDocument.schema';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { FREE } from '../../core/taxi/drawn';

interface Raw {
  readonly tags: Record<string, string>;
  readonly line: readonly (readonly [lat: number, lon: number])[];
}

const stored = (name: string) =>
  gunzipSync(readFileSync(new URL(`../../maps/${name}.gz`, import.meta.url))).toString('utf8');

function rawOfJson(text: string): readonly Raw[] {
  const { elements } = JSON.parse(text) as {
    elements: {
      type: string;
      id: number;
      lat?: number;
      lon?: number;
      nodes?: number[];
      tags?: Record<string, string>;
    }[];
  };
  const at = new Map(
    elements.flatMap(({ id, lat, lon }) =>
      lat === undefined || lon === undefined ? [] : [[id, [lat, lon] as const]],
    ),
  );
  return elements.flatMap(({ id, nodes, tags }) =>
    tags === undefined
      ? []
      : [
          {
            tags,
            line: (nodes ?? [id])
              .flatMap((one) => [at.get(one) ?? []])
              .filter((p): p is [number, number] => p.length === 2),
          },
        ],
  );
}

function rawOfXml(text: string): readonly Raw[] {
  const of = (one: string, name: string) =>
    new RegExp(`\\b${name}=["']([^"']*)`).exec(one)?.[1] ?? '';
  const at = new Map<string, readonly [number, number]>();
  for (const [node] of text.matchAll(/<node\b[^>]*>/g)) {
    at.set(of(node, 'id'), [Number(of(node, 'lat')), Number(of(node, 'lon'))]);
  }
  return [...text.matchAll(/<(?:way|node)\b[^>]*[^/]>[\s\S]*?<\/(?:way|node)>/g)].map(([one]) => {
    const ids = [...one.matchAll(/<nd\b[^>]*>/g)].map(([nd]) => of(nd, 'ref'));
    return {
      tags: Object.fromEntries(
        [...one.matchAll(/<tag\b[^>]*>/g)].map(([tag]) => [of(tag, 'k'), of(tag, 'v')]),
      ),
      line: (ids.length > 0 ? ids : [of(one, 'id')]).flatMap((id) => {
        const place = at.get(id);
        return place === undefined ? [] : [place];
      }),
    };
  });
}

const [kclt, ksea] = [stored('kclt.json'), stored('ksea.osm')];

describe.each([
  // Runways as the airport has them: its own lines on the map, by hand.
  ['Charlotte', kclt, rawOfJson(kclt), ['05/23', '18C/36C', '18L/36R', '18R/36L']],
  ['Seattle', ksea, rawOfXml(ksea), ['16C/34C', '16L/34R', '16R/34L']],
] as const)('%s', (_name, text, raw, runways) => {
  const [found] = readMapExtract(text).fields;
  if (found === undefined) throw new Error('no field was read');
  const { field } = found;
  const { nodes, edges } = field.taxi;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const ends = field.runways.flatMap((runway) => runway.ends);
  const of = (...kinds: string[]) => raw.filter(({ tags }) => kinds.includes(tags.aeroway ?? ''));
  // A plane at the reference point: within metres of the ellipsoid over a field.
  const flat = ([lat, lon]: readonly [number, number]) => {
    const phi = (field.place.latDeg * Math.PI) / 180;
    return [
      (lon - field.place.lonDeg) * (111_412.84 * Math.cos(phi) - 93.5 * Math.cos(3 * phi)),
      (lat - field.place.latDeg) * (111_132.92 - 559.82 * Math.cos(2 * phi)),
    ] as const;
  };
  const isNear = (x: number, y: number, reachM: number, kind: string) =>
    nodes.some((node) => node.kind === kind && Math.hypot(node.xM - x, node.yM - y) < reachM);

  test('passes its schema, with every runway once', () => {
    expect(readDocument(JSON.stringify(field)).problems ?? []).toEqual([]);
    const names = field.runways.map((one) =>
      one.ends
        .map((end) => end.designator)
        .sort()
        .join('/'),
    );
    expect(names.sort()).toEqual(runways);
    const mapped = of('runway').flatMap(({ line }) => line);
    for (const { at } of ends) expect(mapped).toContainEqual([at.latDeg, at.lonDeg]);
  });

  test('has at least 98 % of its taxiways in one network', () => {
    const beside = new Map<string, string[]>();
    for (const { from, to, on } of edges) {
      if (on === 'runway') continue;
      beside.set(from, [...(beside.get(from) ?? []), to]);
      beside.set(to, [...(beside.get(to) ?? []), from]);
    }
    const part = new Map<string, string>();
    for (const { id } of nodes) {
      const waiting = [id];
      for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
        if (part.has(at)) continue;
        part.set(at, id);
        waiting.push(...(beside.get(at) ?? []));
      }
    }
    const lengths = new Map<string, number>();
    for (const { from, to, on } of edges) {
      const [a, b, one] = [byId.get(from), byId.get(to), part.get(from)];
      if (on !== 'taxiway' || !a || !b || one === undefined) continue;
      lengths.set(one, (lengths.get(one) ?? 0) + Math.hypot(a.xM - b.xM, a.yM - b.yM));
    }
    const all = [...lengths.values()];
    const total = all.reduce((sum, length) => sum + length, 0);
    expect(total).toBeGreaterThan(30_000);
    expect(Math.max(...all) / total).toBeGreaterThanOrEqual(0.98);
  });

  test('has a point on the runway wherever a taxiway runs over a centreline', () => {
    const missed: string[] = [];
    let crossings = 0;
    for (const { ends: pair } of field.runways) {
      const [a, b] = pair.map(({ at }) => flat([at.latDeg, at.lonDeg]));
      if (!a || !b) continue;
      for (const { line, tags } of of('taxiway', 'taxilane')) {
        line.slice(1).forEach((to, index) => {
          const [c, d] = [flat(line[index] ?? to), flat(to)];
          const over = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
          const s = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / over;
          const t = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / over;
          if (!(s >= 0 && s <= 1 && t >= 0 && t <= 1)) return;
          const [x, y] = [a[0] + s * (b[0] - a[0]), a[1] + s * (b[1] - a[1])];
          const sine =
            Math.abs(over) /
            (Math.hypot(b[0] - a[0], b[1] - a[1]) * Math.hypot(d[0] - c[0], d[1] - c[1]));
          const angleDeg = (Math.asin(Math.min(1, sine)) * 180) / Math.PI;
          // What lies along the runway is no crossing; a curve on to it meets it a little further on.
          if (angleDeg < 5) return;
          crossings += 1;
          if (!isNear(x, y, angleDeg < 20 ? 50 : 15, 'runway'))
            missed.push(`${tags.ref ?? '?'} at ${x}, ${y}`);
        });
      }
    }
    expect(crossings).toBeGreaterThan(10);
    expect(missed).toEqual([]);
  });

  test('has at least 90 % of its holding points, and one for every end', () => {
    const mapped = of('holding_position').filter(
      ({ tags }) => tags['holding_position:type'] !== 'intermediate',
    );
    const kept = mapped.filter(({ line }) =>
      line.slice(0, 1).some((place) => isNear(...flat(place), 12, 'hold')),
    );
    expect(mapped.length).toBeGreaterThan(50);
    expect(kept.length / mapped.length).toBeGreaterThanOrEqual(0.9);
    for (const { designator } of ends) {
      const holds = nodes.filter((node) => node.kind === 'hold' && node.ends?.includes(designator));
      expect(holds, designator).not.toEqual([]);
    }
  });

  test('names the ends that the holding points beside a runway give on to', () => {
    /** How far a place lies from the line between a runway's ends, metres; none beyond them. */
    const besideM = ([x, y]: readonly [number, number]) =>
      Math.min(
        ...field.runways.map(({ ends: [near, far] }) => {
          const [a, b] = [
            flat([near.at.latDeg, near.at.lonDeg]),
            flat([far.at.latDeg, far.at.lonDeg]),
          ];
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          const along = ((x - a[0]) * (b[0] - a[0]) + (y - a[1]) * (b[1] - a[1])) / length;
          const off = ((x - a[0]) * (b[1] - a[1]) - (y - a[1]) * (b[0] - a[0])) / length;
          return along < -50 || along > length + 50 ? Number.POSITIVE_INFINITY : Math.abs(off);
        }),
      );
    const beside = of('holding_position').flatMap(({ tags, line: [place] }) =>
      place === undefined ||
      tags['holding_position:type'] === 'intermediate' ||
      besideM(flat(place)) > 120
        ? []
        : [flat(place)],
    );
    const silent = beside.filter(
      ([x, y]) =>
        !nodes.some(
          (one) =>
            one.ends !== undefined &&
            Math.hypot(one.xM - x, one.yM - y) < 12 &&
            one.kind === 'hold',
        ),
    );
    expect(beside.length).toBeGreaterThan(40);
    expect(silent.length / beside.length, silent.join('; ')).toBeLessThanOrEqual(0.02);
  });

  /** How much of the way to an end lies on runways, metres; undefined without a way. */
  const wayFrom = (id: string, end: string) =>
    findRouteOut({ field, from: id, end, rules: FREE }).route?.runwayM;

  // Seattle's map has no stands.
  if (of('parking_position').length > 0) {
    test('has at least 95 % of its stands joined, with a way to every end, off the runways', () => {
      const stands = nodes.filter(({ kind }) => kind === 'stand');
      const mapped = of('parking_position');
      expect(stands.length).toBeGreaterThanOrEqual(0.95 * mapped.length);
      for (const { designator: end } of ends) {
        // Every fourth: the ways of neighbours are the same.
        for (const { id } of stands.filter((_, index) => index % 4 === 0)) {
          expect(wayFrom(id, end), `${id} to ${end}`).toBe(0);
        }
      }
    });
  }

  test('has a way to every end from 95 % of the points where taxiways meet, off the runways', () => {
    const met = (id: string) => edges.filter(({ from, to }) => from === id || to === id).length;
    const meetings = nodes.filter(({ kind, id }) => kind === 'junction' && met(id) > 2);
    expect(meetings.length).toBeGreaterThan(100);
    const some = meetings.filter((_, index) => index % 4 === 0);
    for (const { designator: end } of ends) {
      const led = some.filter(({ id }) => wayFrom(id, end) === 0);
      expect(led.length / some.length, end).toBeGreaterThanOrEqual(0.95);
    }
  });
});
