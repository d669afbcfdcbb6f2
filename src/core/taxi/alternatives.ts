/** Other routes to the same point that are hardly longer. */

import type { Field } from '../airfield/field';
import {
  type DirectedEdge,
  edgeOf,
  reverseOf,
  type TaxiEdge,
  type TaxiGraph,
  taxiGraph,
} from './graph';
import { type Route, routeAlong } from './route';
import { isTaxiable } from './rules';
import { edgesFrom, edgesTo, type Search, searchFrom } from './search';

/** How much longer than the shortest an alternative may be, as a share of it. */
export const HARDLY_LONGER = 0.1;

/** How many are offered besides the shortest. */
const MOST_OFFERED = 2;

/**
 * What distinguishes routes for the pilot: their taxiways, and where each is joined. The path over
 * the apron makes no difference.
 */
export const routeKey = (route: Route): string =>
  route.legs
    .filter(({ on }) => on !== 'apron')
    .map(({ name, from }) => `${name}@${from}`)
    .join(' ');

/** The same for a route that isn't built yet. */
function keyOf({ nodes, edges, target }: TaxiGraph, arcs: readonly DirectedEdge[]): string {
  const parts: string[] = [];
  let before: TaxiEdge | undefined;
  for (const arc of arcs) {
    const edge = edges[edgeOf(arc)];
    const isOn = edge?.name === before?.name && edge?.on === before?.on;
    if (edge !== undefined && !isOn && edge.on !== 'apron') {
      parts.push(`${edge.name}@${nodes[target[reverseOf(arc)] ?? 0]?.id}`);
    }
    before = edge;
  }
  return parts.join(' ');
}

/** Whether a route visits no point twice. */
function isWithoutLoop({ target }: TaxiGraph, arcs: readonly DirectedEdge[]): boolean {
  const seen = new Set(arcs.map((arc) => target[arc]));
  return seen.size === arcs.length && !seen.has(target[reverseOf(arcs[0] ?? 0)]);
}

/**
 * Routes to a node that are at most a tenth longer than the shortest, use no more runway, and read
 * differently; the shortest comes first. Each leaves the shortest at some point and takes the
 * shortest way on from there, as the second shortest of all does: D. Eppstein, Finding the k
 * shortest paths, SIAM J. Comput. 28 (1998).
 */
export function alternativesTo(
  field: Field,
  forward: Search,
  to: number,
  weights: Float64Array,
): readonly Route[] {
  const graph = taxiGraph(field);
  const shortest = edgesTo(forward, to);
  const best = shortest && routeAlong(field, shortest);
  if (shortest === null || best === null) return [];
  const backward = searchFrom(graph, to, weights, 'backward');
  const most = (forward.cost[to] ?? 0) * (1 + HARDLY_LONGER);
  const told = new Set([routeKey(best)]);
  const offered: Route[] = [];
  for (const { after, arc } of leavings(shortest, forward, backward, weights, most)) {
    const onwards = edgesFrom(backward, graph.target[arc] ?? 0) ?? [];
    const arcs = [...shortest.slice(0, after), arc, ...onwards];
    const key = keyOf(graph, arcs);
    if (told.has(key) || !isWithoutLoop(graph, arcs)) continue;
    told.add(key);
    const route = routeAlong(field, arcs);
    if (route === null || route.lengthM > best.lengthM * (1 + HARDLY_LONGER)) continue;
    if (route.runwayM > best.runwayM) continue;
    offered.push(route);
    if (offered.length === MOST_OFFERED) break;
  }
  return offered;
}

/** Where one can leave the shortest route for another of cost at most `most`, cheapest first. */
function leavings(
  shortest: readonly DirectedEdge[],
  forward: Search,
  backward: Search,
  weights: Float64Array,
  most: number,
): readonly { readonly after: number; readonly arc: DirectedEdge; readonly cost: number }[] {
  const { graph } = forward;
  const { first, arcs, target } = graph;
  return shortest
    .flatMap((taken, after) => {
      const node = target[reverseOf(taken)] ?? 0;
      const leaving = [...arcs.subarray(first[node] ?? 0, first[node + 1] ?? 0)];
      return leaving
        .filter((arc) => arc !== taken && isTaxiable(graph, arc))
        .map((arc) => {
          const on = backward.cost[target[arc] ?? 0] ?? Number.POSITIVE_INFINITY;
          return { after, arc, cost: (forward.cost[node] ?? 0) + (weights[edgeOf(arc)] ?? 0) + on };
        });
    })
    .filter(({ cost }) => cost <= most)
    .sort((a, b) => a.cost - b.cost);
}
