/** A field's taxiways as a searchable graph. */

import type { Field } from '../airfield/field';

/** A point of the taxi plan. */
export type TaxiNode = Field['taxi']['nodes'][number];

/** A stretch between two points. */
export type TaxiEdge = Field['taxi']['edges'][number];

/** Names a point of the plan. */
export type NodeId = TaxiNode['id'];

/** An edge in one of its two directions: twice its index, plus 1 if taxied from `to` to `from`. */
export type DirectedEdge = number;

/** The plan, indexed. */
export interface TaxiGraph {
  readonly nodes: readonly TaxiNode[];
  readonly edges: readonly TaxiEdge[];
  readonly indexOf: ReadonlyMap<NodeId, number>;
  /**
   * Arcs that leave node `i` are `arcs[first[i]]` up to, but not including, `arcs[first[i + 1]]`.
   */
  readonly first: Int32Array;
  readonly arcs: Int32Array;
  /** By arc: the index of the node it leads to. */
  readonly target: Int32Array;
  /** By edge, metres. */
  readonly lengthM: Float64Array;
}

export const edgeOf = (arc: DirectedEdge): number => arc >> 1;

/** Whether an arc runs from its edge's `to` to its `from`. */
export const isReversed = (arc: DirectedEdge): boolean => (arc & 1) === 1;

/** The same edge in the other direction. */
export const reverseOf = (arc: DirectedEdge): DirectedEdge => arc ^ 1;

const graphs = new WeakMap<Field, TaxiGraph>();

/** The graph of a field. Fields are immutable, so it is built once for each. */
export function taxiGraph(field: Field): TaxiGraph {
  const before = graphs.get(field);
  if (before !== undefined) return before;
  const graph = graphFrom(field.taxi);
  graphs.set(field, graph);
  return graph;
}

/** Points and stretches, indexed. */
export function graphFrom({ nodes, edges }: Pick<TaxiGraph, 'nodes' | 'edges'>): TaxiGraph {
  const indexOf = new Map(nodes.map(({ id }, index) => [id, index]));
  const target = new Int32Array(2 * edges.length);
  const lengthM = new Float64Array(edges.length);
  const degree = new Int32Array(nodes.length + 1);
  edges.forEach((edge, index) => {
    // A field that names what it doesn't have was refused on the way in.
    const [from, to] = [indexOf.get(edge.from) ?? 0, indexOf.get(edge.to) ?? 0];
    target[2 * index] = to;
    target[2 * index + 1] = from;
    lengthM[index] = distanceM(nodes[from], nodes[to]);
    degree[from] = (degree[from] ?? 0) + 1;
    degree[to] = (degree[to] ?? 0) + 1;
  });
  const first = new Int32Array(nodes.length + 1);
  for (let node = 0; node < nodes.length; node++) {
    first[node + 1] = (first[node] ?? 0) + (degree[node] ?? 0);
  }
  const arcs = new Int32Array(2 * edges.length);
  const next = first.slice();
  for (let arc = 0; arc < target.length; arc++) {
    const leaves = target[reverseOf(arc)] ?? 0;
    const slot = next[leaves] ?? 0;
    arcs[slot] = arc;
    next[leaves] = slot + 1;
  }
  return { nodes, edges, indexOf, first, arcs, target, lengthM };
}

/** The distance between two points of the plan, metres; 0 if one is missing. */
export const distanceM = (one: TaxiNode | undefined, other: TaxiNode | undefined): number =>
  one && other ? Math.hypot(other.xM - one.xM, other.yM - one.yM) : 0;
