/** Shortest paths from one point to all others. */

import { type DirectedEdge, edgeOf, reverseOf, type TaxiGraph } from './graph';
import { isTaxiable } from './rules';

/**
 * The least cost from one node to each node (or, searched backward, from each node to it), and the
 * arc that achieves it.
 */
export interface Search {
  readonly graph: TaxiGraph;
  /** By node; infinite if unreachable. */
  readonly cost: Float64Array;
  /**
   * By node: the last arc of the path there or, backward, the first arc of the path on; −1 for
   * none.
   */
  readonly by: Int32Array;
}

/**
 * Dijkstra's algorithm with a binary heap: E. W. Dijkstra, A note on two problems in connexion with
 * graphs, Numerische Mathematik 1 (1959). Weights are per edge, never negative, infinite if an edge
 * may not be used. Backward, it finds the paths to `start` instead.
 */
export function searchFrom(
  graph: TaxiGraph,
  start: number,
  weights: Float64Array,
  direction: 'forward' | 'backward' = 'forward',
): Search {
  const { first, arcs, target } = graph;
  const cost = new Float64Array(graph.nodes.length).fill(Number.POSITIVE_INFINITY);
  const by = new Int32Array(graph.nodes.length).fill(-1);
  const queue = new Queue();
  cost[start] = 0;
  queue.put(start, 0);
  for (let node = queue.take(); node !== null; node = queue.take()) {
    if (queue.taken > (cost[node] ?? 0)) continue;
    const end = first[node + 1] ?? 0;
    for (let slot = first[node] ?? 0; slot < end; slot++) {
      const leaving = arcs[slot] ?? 0;
      const rolled: DirectedEdge = direction === 'forward' ? leaving : reverseOf(leaving);
      const weight = weights[edgeOf(rolled)] ?? Number.POSITIVE_INFINITY;
      const reached = target[leaving] ?? 0;
      const sum = queue.taken + weight;
      if (sum >= (cost[reached] ?? 0) || !isTaxiable(graph, rolled)) continue;
      cost[reached] = sum;
      by[reached] = rolled;
      queue.put(reached, sum);
    }
  }
  return { graph, cost, by };
}

/** The arcs of the path from a forward search's start to a node; null if there is none. */
export function edgesTo({ graph, cost, by }: Search, node: number): DirectedEdge[] | null {
  if (cost[node] === Number.POSITIVE_INFINITY) return null;
  const path: DirectedEdge[] = [];
  for (let arc = by[node] ?? -1; arc >= 0; arc = by[graph.target[reverseOf(arc)] ?? 0] ?? -1) {
    path.push(arc);
  }
  return path.reverse();
}

/** The arcs of the path from a node to a backward search's start; null if there is none. */
export function edgesFrom({ graph, cost, by }: Search, node: number): DirectedEdge[] | null {
  if (cost[node] === Number.POSITIVE_INFINITY) return null;
  const path: DirectedEdge[] = [];
  for (let arc = by[node] ?? -1; arc >= 0; arc = by[graph.target[arc] ?? 0] ?? -1) path.push(arc);
  return path;
}

/** A heap of nodes, cheapest on top; a node may be in it more than once. */
class Queue {
  readonly #nodes: number[] = [];
  readonly #costs: number[] = [];
  /** The cost with which the last node taken was put in. */
  taken = 0;

  put(node: number, cost: number): void {
    const nodes = this.#nodes;
    const costs = this.#costs;
    let hole = nodes.length;
    while (hole > 0) {
      const parent = (hole - 1) >> 1;
      const above = costs[parent] ?? 0;
      if (above <= cost) break;
      costs[hole] = above;
      nodes[hole] = nodes[parent] ?? 0;
      hole = parent;
    }
    costs[hole] = cost;
    nodes[hole] = node;
  }

  take(): number | null {
    const nodes = this.#nodes;
    const costs = this.#costs;
    const top = nodes[0];
    const lastNode = nodes.pop();
    const lastCost = costs[costs.length - 1] ?? 0;
    if (top === undefined || lastNode === undefined) return null;
    this.taken = costs[0] ?? 0;
    costs.pop();
    const size = nodes.length;
    let hole = 0;
    while (2 * hole + 1 < size) {
      let child = 2 * hole + 1;
      if (child + 1 < size && (costs[child + 1] ?? 0) < (costs[child] ?? 0)) child += 1;
      const below = costs[child] ?? 0;
      if (below >= lastCost) break;
      costs[hole] = below;
      nodes[hole] = nodes[child] ?? 0;
      hole = child;
    }
    if (size > 0) {
      costs[hole] = lastCost;
      nodes[hole] = lastNode;
    }
    return top;
  }
}
