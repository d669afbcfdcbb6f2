/**
 * Shortest ways on random plans, against another library's Dijkstra and Floyd–Warshall:
 * @dagrejs/graphlib.
 */

import { alg, Graph } from '@dagrejs/graphlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alternativesTo } from '../../../src/core/taxi/alternatives';
import { taxiGraph } from '../../../src/core/taxi/graph';
import { routeAlong } from '../../../src/core/taxi/route';
import { weightsOf } from '../../../src/core/taxi/rules';
import { edgesFrom, edgesTo, searchFrom } from '../../../src/core/taxi/search';
import { drawn, FREE, node, stretch } from '../../core/taxi/drawn';

/** Plans of up to a dozen points: edges at random, some one-way, some of them along runways, some closed. */
const anyPlan = fc
  .integer({ min: 2, max: 12 })
  .chain((count) =>
    fc.record({
      points: fc.array(
        fc.tuple(fc.integer({ min: -500, max: 500 }), fc.integer({ min: -900, max: -100 })),
        { minLength: count, maxLength: count },
      ),
      edges: fc.array(
        fc.record({
          from: fc.nat(count - 1),
          to: fc.nat(count - 1),
          oneWay: fc.boolean(),
          onRunway: fc.integer({ min: 0, max: 5 }).map((n) => n === 0),
          isClosed: fc.integer({ min: 0, max: 7 }).map((n) => n === 0),
          name: fc.constantFrom('A', 'B', 'C', 'D'),
        }),
        { maxLength: 30 },
      ),
    }),
  )
  .map(({ points, edges }) => {
    const nodes = points.map(([x, y], index) => node(`n${index}`, x, y));
    const kept = edges.filter(({ from, to }) => from !== to);
    const closed = kept
      .filter(({ isClosed }) => isClosed)
      .map(({ from, to }) => [`n${from}`, `n${to}`].sort().join('~'));
    const field = drawn(
      nodes,
      kept.map(({ from, to, oneWay, onRunway, name }) =>
        stretch(name, `n${from}`, `n${to}`, { oneWay, on: onRunway ? 'runway' : 'taxiway' }),
      ),
    );
    return { field, rules: { ...FREE, closed } };
  });

type Plan = typeof anyPlan extends fc.Arbitrary<infer T> ? T : never;

/** The same plan as the other library knows it: the lightest of parallel stretches, in each direction. */
function theirs({ field, rules }: Plan) {
  const graph = new Graph({ directed: true });
  const at = new Map(field.taxi.nodes.map((one) => [one.id, one]));
  for (const { id } of field.taxi.nodes) graph.setNode(id);
  const put = (from: string, to: string, weight: number) => {
    const before = graph.hasEdge(from, to) ? Number(graph.edge(from, to)) : weight;
    graph.setEdge(from, to, Math.min(weight, before));
  };
  for (const edge of field.taxi.edges) {
    if (rules.closed.includes([edge.from, edge.to].sort().join('~'))) continue;
    const [from, to] = [at.get(edge.from), at.get(edge.to)];
    if (!from || !to) continue;
    const lengthM = Math.hypot(from.xM - to.xM, from.yM - to.yM);
    const weight = edge.on === 'runway' ? lengthM * 1e6 : lengthM;
    put(edge.from, edge.to, weight);
    if (edge.oneWay !== true) put(edge.to, edge.from, weight);
  }
  return graph;
}

const same = (ours: number, other: number) =>
  ours === other || Math.abs(ours - other) <= 1e-9 * Math.max(1, Math.abs(other));

test('from every point to every other the way is as long as the other library’s, and as often there is none', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const graph = taxiGraph(plan.field);
      const weights = weightsOf(graph, plan.rules);
      const other = theirs(plan);
      const weightOf = (edge: { v: string; w: string }): number =>
        Number(other.edge(edge.v, edge.w));
      const all = alg.floydWarshall(other, weightOf);
      graph.nodes.forEach((from, start) => {
        const forward = searchFrom(graph, start, weights);
        const backward = searchFrom(graph, start, weights, 'backward');
        const one = alg.dijkstra(other, from.id, weightOf);
        graph.nodes.forEach((to, index) => {
          const there = forward.cost[index] ?? Number.NaN;
          expect(same(there, one[to.id]?.distance ?? Number.NaN)).toBe(true);
          expect(same(there, all[from.id]?.[to.id]?.distance ?? Number.NaN)).toBe(true);
          const back = all[to.id]?.[from.id]?.distance ?? Number.NaN;
          expect(same(backward.cost[index] ?? Number.NaN, back)).toBe(true);
        });
      });
    }),
    { numRuns: 300 },
  );
});

test('the stretches of a way follow one another, with the one-way ones, and add up to its length', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const graph = taxiGraph(plan.field);
      const weights = weightsOf(graph, plan.rules);
      const last = graph.nodes.length - 1;
      const forward = searchFrom(graph, 0, weights);
      const backward = searchFrom(graph, last, weights, 'backward');
      const ways = [edgesTo(forward, last), edgesFrom(backward, 0)];
      for (const way of ways) {
        expect(way === null).toBe(forward.cost[last] === Number.POSITIVE_INFINITY);
        if (way === null || way.length === 0) continue;
        const route = routeAlong(plan.field, way);
        expect(route?.nodes[0]).toBe('n0');
        expect(route?.nodes.at(-1)).toBe(`n${last}`);
        let sum = 0;
        way.forEach((arc, index) => {
          const before = way[index - 1];
          if (before !== undefined) expect(graph.target[arc ^ 1]).toBe(graph.target[before]);
          const edge = graph.edges[arc >> 1];
          if (arc % 2 === 1) expect(edge?.oneWay).not.toBe(true);
          sum += weights[arc >> 1] ?? Number.NaN;
        });
        expect(same(sum, forward.cost[last] ?? Number.NaN)).toBe(true);
      }
    }),
  );
});

/** Every way without a loop from the first point to the last, tried one by one. */
function allWays({ field, rules }: Plan): { readonly lengthM: number; readonly runwayM: number }[] {
  const graph = taxiGraph(field);
  const weights = weightsOf(graph, rules);
  const last = graph.nodes.length - 1;
  const found: { lengthM: number; runwayM: number }[] = [];
  const go = (at: number, seen: ReadonlySet<number>, lengthM: number, runwayM: number) => {
    if (found.length > 3000) return;
    if (at === last) {
      found.push({ lengthM, runwayM });
      return;
    }
    for (let arc = 0; arc < graph.target.length; arc++) {
      const to = graph.target[arc] ?? 0;
      const edge = graph.edges[arc >> 1];
      if (graph.target[arc ^ 1] !== at || seen.has(to)) continue;
      if (weights[arc >> 1] === Number.POSITIVE_INFINITY) continue;
      if (arc % 2 === 1 && edge?.oneWay === true) continue;
      const metres = graph.lengthM[arc >> 1] ?? 0;
      const onRunway = edge?.on === 'runway' ? metres : 0;
      go(to, new Set(seen).add(to), lengthM + metres, runwayM + onRunway);
    }
  };
  go(0, new Set([0]), 0, 0);
  return found;
}

test('no way of all that there are uses less runway, or is shorter with as little; others offered are within a tenth', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const graph = taxiGraph(plan.field);
      const weights = weightsOf(graph, plan.rules);
      const last = graph.nodes.length - 1;
      const forward = searchFrom(graph, 0, weights);
      const way = edgesTo(forward, last);
      const all = allWays(plan);
      expect(way === null).toBe(all.length === 0);
      const route = way && routeAlong(plan.field, way);
      if (!route || all.length > 3000) return;
      const leastM = Math.min(...all.map(({ runwayM }) => runwayM));
      expect(route.runwayM).toBeLessThanOrEqual(leastM + 1e-6);
      const shortest = Math.min(
        ...all.filter(({ runwayM }) => runwayM <= leastM + 1e-6).map(({ lengthM }) => lengthM),
      );
      expect(route.lengthM).toBeLessThanOrEqual(shortest + 1e-3);
      for (const other of alternativesTo(plan.field, forward, last, weights)) {
        expect(other.lengthM).toBeLessThanOrEqual(route.lengthM * 1.1 + 1e-6);
        expect(other.lengthM).toBeGreaterThanOrEqual(shortest - 1e-3);
        expect(new Set(other.nodes).size).toBe(other.nodes.length);
        expect(all.some(({ lengthM }) => Math.abs(lengthM - other.lengthM) < 1e-6)).toBe(true);
      }
    }),
    { numRuns: 150 },
  );
});
