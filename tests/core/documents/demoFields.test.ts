/** What the demo airfields promise: taxiways that lead where they should, and differences that matter. */

import { describe, expect, test } from 'vitest';
import { endsOf } from '../../../src/core/airfield/ends';
import type { Field } from '../../../src/core/airfield/field';
import { planPoint } from '../../../src/core/earth/planPoint';
import { demoField, demoFields } from './demo';

const each = demoFields.map((field) => [field.code, field] as const);

/** Every point that can be reached from one by the plan's edges, without going on from `shut` ones. */
function reachable({ taxi }: Field, from: string, shut: readonly string[] = []): Set<string> {
  const reached = new Set([from]);
  for (const id of reached) {
    if (shut.includes(id)) continue;
    for (const edge of taxi.edges) {
      if (edge.from === id) reached.add(edge.to);
      if (edge.to === id && edge.oneWay !== true) reached.add(edge.from);
    }
  }
  return reached;
}

interface Point {
  readonly xM: number;
  readonly yM: number;
}

/** Twice the area of the triangle: positive when `c` lies left of the line from `a` to `b`. */
const leftOf = (a: Point, b: Point, c: Point) =>
  (b.xM - a.xM) * (c.yM - a.yM) - (b.yM - a.yM) * (c.xM - a.xM);

/** Whether two stretches cut through each other, touching at an end not counted. */
const cross = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]) =>
  leftOf(a, b, c) * leftOf(a, b, d) < 0 && leftOf(c, d, a) * leftOf(c, d, b) < 0;

const distanceM = (a: Point, b: Point) => Math.hypot(a.xM - b.xM, a.yM - b.yM);

/** Runways as stretches on the plan, by their two names. */
const stretches = (field: Field) =>
  field.runways.map(({ ends }) => {
    const [one, other] = ends.map(({ at }) => {
      const point = planPoint(field.place, at);
      if (point === null) throw new Error(`${field.code}: an end lies beyond the plan`);
      return { xM: point.eastM, yM: point.northM };
    });
    if (one === undefined || other === undefined) throw new Error('a runway without two ends');
    const [here, there] = ends.map(({ designator }) => designator);
    return { names: [`${here}/${there}`, `${there}/${here}`], stretch: [one, other] as const };
  });

/** How far a point lies from the line through a stretch, metres. */
const offLineM = ([a, b]: readonly [Point, Point], point: Point) =>
  Math.abs(leftOf(a, b, point)) / distanceM(a, b);

const pointOf = ({ taxi }: Field, id: string) => {
  const node = taxi.nodes.find((one) => one.id === id);
  if (node === undefined) throw new Error(`there is no point ${id}`);
  return node;
};

describe.each(each)('%s', (_, field) => {
  const stands = field.taxi.nodes.filter(({ kind }) => kind === 'stand');
  const open = endsOf(field).filter(({ given }) => given.closed === undefined);

  test('has a code that begins with X, as invented fields do', () => {
    expect(field.code).toMatch(/^X/);
  });

  test('lets every stand reach a holding point for every open end, and its start', () => {
    const missing = stands.flatMap(({ id }) => {
      const reached = [...reachable(field, id)].map((point) => pointOf(field, point));
      return open.flatMap(({ designator }) =>
        (['hold', 'runway'] as const).flatMap((kind) =>
          reached.some((node) => node.kind === kind && node.ends?.includes(designator))
            ? []
            : [`${id} to ${kind} ${designator}`],
        ),
      );
    });
    expect(stands.length).toBeGreaterThan(0);
    expect(missing).toEqual([]);
  });

  test('lets nobody onto a runway but past a holding point', () => {
    const holds = field.taxi.nodes.flatMap(({ id, kind }) => (kind === 'hold' ? id : []));
    const entered = stands
      .flatMap(({ id }) => [...reachable(field, id, holds)])
      .filter((id) => pointOf(field, id).kind === 'runway');
    expect(entered).toEqual([]);
  });

  test('lets every point of a runway reach every stand', () => {
    const missing = field.taxi.nodes
      .filter(({ kind }) => kind === 'runway')
      .flatMap(({ id }) => {
        const reached = reachable(field, id);
        return stands.flatMap((stand) => (reached.has(stand.id) ? [] : [`${id} to ${stand.id}`]));
      });
    expect(missing).toEqual([]);
  });

  test('says of every edge that cuts through a runway that it crosses it, and of no other', () => {
    const wrong = field.taxi.edges.filter((edge) => {
      const ends = [pointOf(field, edge.from), pointOf(field, edge.to)] as const;
      const crossed = stretches(field).filter(({ stretch }) => {
        // What ends on a runway or runs along it does not cross it; points are whole metres.
        if (ends.some((end) => offLineM(stretch, end) < 1)) return false;
        return cross(stretch, ends);
      });
      const said = edge.crosses;
      if (crossed.length > 1) return true;
      return said === undefined ? crossed.length > 0 : !crossed[0]?.names.includes(said);
    });
    expect(wrong).toEqual([]);
  });

  test('is named from runway edges only by runways that it has', () => {
    const names = stretches(field).flatMap((one) => one.names);
    const strange = field.taxi.edges.filter(
      ({ on, name }) => on === 'runway' && !names.includes(name),
    );
    expect(strange).toEqual([]);
  });

  test('has its runway points on the centreline, and those of an end near that end', () => {
    const all = stretches(field);
    for (const node of field.taxi.nodes.filter(({ kind }) => kind === 'runway')) {
      // Points are whole metres, so up to 0.7 m off the line.
      expect(Math.min(...all.map(({ stretch }) => offLineM(stretch, node)))).toBeLessThan(1);
      for (const designator of node.ends ?? []) {
        const end = open.find((one) => one.designator === designator);
        const at = end && planPoint(field.place, end.given.at);
        const start = { xM: at?.eastM ?? Number.NaN, yM: at?.northM ?? Number.NaN };
        expect(distanceM(start, node)).toBeLessThan(20);
      }
    }
  });

  test('has no edge of no length and no stand that others taxi through', () => {
    for (const { from, to } of field.taxi.edges)
      expect(distanceM(pointOf(field, from), pointOf(field, to))).toBeGreaterThan(5);
    for (const { id } of stands) {
      const edges = field.taxi.edges.filter(({ from, to }) => from === id || to === id);
      expect(edges.length).toBe(1);
    }
  });
});

describe('the demo airfields differ where it matters', () => {
  const slopes = (field: Field) =>
    endsOf(field).map(({ slopePercent }) => Math.abs(slopePercent ?? Number.NaN));

  test('runways that cross, at Harrow Sound, with a taxiway across one of them', () => {
    const [main, short] = stretches(demoField('XHAR')).map(({ stretch }) => stretch);
    expect(main && short && cross(main, short)).toBe(true);
    expect(
      demoField('XHAR').taxi.edges.filter((edge) => edge.on === 'taxiway' && edge.crosses),
    ).toHaveLength(1);
  });

  test('parallels, at Marram Haven', () => {
    const names = endsOf(demoField('XMAR')).map(({ designator }) => designator);
    expect(names).toEqual(['05L', '05R', '23L', '23R']);
  });

  test('a tower at one, traffic only at others, nobody at one', () => {
    const services = demoFields.map(({ radio }) => radio.map(({ service }) => service).join(' '));
    expect(services).toContain('traffic');
    expect(services).toContain('ground tower information');
    expect(services).toContain('');
  });

  test('one high, one short and steep, one with a closed runway', () => {
    expect(demoField('XTUM').place.elevationFt).toBeGreaterThan(5000);
    expect(Math.max(...slopes(demoField('XLIN')))).toBeGreaterThan(2.5);
    expect(endsOf(demoField('XTUM')).filter(({ given }) => given.closed)).toHaveLength(2);
  });

  test('some with an end for calm wind, some without', () => {
    const calm = demoFields.filter(({ calmWindEnd }) => calmWindEnd !== undefined);
    expect(calm.map(({ code }) => code).sort()).toEqual(['XLIN', 'XMAR', 'XTUM']);
  });
});
