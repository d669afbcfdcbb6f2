/** Other ways to the same point that are hardly longer. */

import type { Field } from '../airfield/field';
import { type Arc, edgeOf, reverseOf, taxiGraph } from './graph';
import { type Route, routeAlong } from './route';
import { isWithWay } from './rules';
import { type Search, searchFrom, wayOnFrom, wayTo } from './search';

/** No more than so much longer than the shortest, as a share of it. */
export const HARDLY_LONGER = 0.1;

/** How many are offered beside the shortest. */
const MOST_OFFERED = 2;

/** How many are looked at: on a grid thousands are of one length, and read alike. */
const MOST_TRIED = 60;

/**
 * What tells a way from another to the pilot: its taxiways and where each is joined, and the runways
 * it crosses. How one rolls over the apron makes no difference.
 */
export const routeKey = (route: Route): string =>
  [
    ...route.legs.filter(({ on }) => on !== 'apron').map(({ name, from }) => `${name}@${from}`),
    ...route.crossings.map(({ runway }) => `x${runway}`),
  ].join(' ');

/**
 * Ways to a node that are at most a tenth longer than the shortest, that use no more runway, and that
 * are told otherwise; the shortest of them first. Each goes the shortest way to some stretch and from it
 * the shortest way on, as the second shortest path always does: D. Eppstein, Finding the k shortest
 * paths, SIAM J. Comput. 28 (1998).
 */
export function alternativesTo(
  field: Field,
  forward: Search,
  to: number,
  weights: Float64Array,
): readonly Route[] {
  const graph = taxiGraph(field);
  const shortest = wayTo(forward, to);
  const best = shortest && routeAlong(field, shortest);
  if (best === null) return [];
  const backward = searchFrom(graph, to, weights, 'backward');
  const most = (forward.cost[to] ?? 0) * (1 + HARDLY_LONGER);
  const over = arcsWithin(forward, backward, weights, most);
  const read = new Set([routeKey(best)]);
  const offered: Route[] = [];
  for (const { arc } of over.slice(0, MOST_TRIED)) {
    const before = wayTo(forward, graph.target[reverseOf(arc)] ?? 0) ?? [];
    const after = wayOnFrom(backward, graph.target[arc] ?? 0) ?? [];
    const route = routeAlong(field, [...before, arc, ...after]);
    if (route === null || new Set(route.nodes).size < route.nodes.length) continue;
    if (route.lengthM > best.lengthM * (1 + HARDLY_LONGER)) continue;
    if (route.runwayM > best.runwayM || read.has(routeKey(route))) continue;
    read.add(routeKey(route));
    offered.push(route);
    if (offered.length === MOST_OFFERED) break;
  }
  return offered;
}

/** The arcs over which a way of no more than `most` leads, the cheapest first, each kind of way once. */
function arcsWithin(
  forward: Search,
  backward: Search,
  weights: Float64Array,
  most: number,
): readonly { readonly arc: Arc; readonly cost: number }[] {
  const { graph } = forward;
  const found = [];
  for (let arc = 0; arc < graph.target.length; arc++) {
    const from = graph.target[reverseOf(arc)] ?? 0;
    const to = graph.target[arc] ?? 0;
    const cost = (forward.cost[from] ?? 0) + (weights[edgeOf(arc)] ?? 0) + (backward.cost[to] ?? 0);
    // Arcs of the shortest ways themselves give nothing new.
    const isOfTree = forward.by[to] === arc && backward.by[from] === arc;
    if (cost <= most && !isOfTree && isWithWay(graph, arc)) found.push({ arc, cost });
  }
  return found.sort((a, b) => a.cost - b.cost || a.arc - b.arc);
}
