/** The shortest way that says every name of a route in its turn. */

import {
  type DirectedEdge,
  edgeOf,
  graphFrom,
  isReversed,
  type NodeId,
  type TaxiEdge,
  type TaxiGraph,
} from './graph';
import { sameRunway } from './route';
import { RUNWAY_WEIGHT, type TaxiRules, weightsOf } from './rules';
import { edgesTo, searchFrom } from './search';

/** A part of the route under one name; the apron has none. */
export interface Layer {
  readonly name: string | null;
  readonly on: TaxiEdge['on'];
  /** The point at which one gets to it; null for any where both meet. */
  readonly gate: NodeId | null;
}

/** The apron before the first name, and behind the last after a landing. */
export const APRON: Layer = { name: null, on: 'apron', gate: null };

/** The points that lie on a part of the route. */
export const pointsOn = ({ edges }: TaxiGraph, layer: Layer): ReadonlySet<NodeId> =>
  new Set(edges.filter((edge) => isOf(edge, layer)).flatMap(({ from, to }) => [from, to]));

/**
 * The plan once for each part of the route, with steps from one to the next where they meet; the
 * shortest way through it says every name in its turn. `unsaid` lets the apron's parts use other
 * taxiways too, if they cross no runway. `isThere`: the aircraft is known to be at the start, and not
 * only likely to come by it.
 */
export function searchAsSaid(
  graph: TaxiGraph,
  layers: readonly Layer[],
  start: NodeId,
  rules: TaxiRules,
  unsaid: boolean,
  isThere: boolean,
) {
  const { nodes, edges, indexOf } = graph;
  const id = (node: NodeId, layer: number) => `${layer} ${node}`;
  const allowed = weightsOf(graph, rules);
  const plan: TaxiEdge[] = [];
  const source: number[] = [];
  const add = (edge: TaxiEdge, of: number) => {
    plan.push(edge);
    source.push(of);
  };
  layers.forEach((layer, at) => {
    edges.forEach((edge, index) => {
      if (!isOf(edge, layer) && !(unsaid && layer.name === null && isQuiet(edge))) return;
      add({ ...edge, from: id(edge.from, at), to: id(edge.to, at) }, index);
    });
    const next = layers[at + 1];
    if (next === undefined) return;
    const onNext = pointsOn(graph, next);
    for (const node of nodes) {
      const isGate = next.gate === null ? true : next.gate === node.id;
      if (!isGate || !(next.name === null || onNext.has(node.id))) continue;
      add(
        { from: id(node.id, at), to: id(node.id, at + 1), name: '', on: 'apron', oneWay: true },
        -1,
      );
    }
  });
  // Said from the beginning although a part of it lies behind: one goes on from where one is.
  const isUnderWay = isThere && nodes[indexOf.get(start) ?? -1]?.kind !== 'stand';
  layers.forEach((layer, at) => {
    if (!isUnderWay || at < 2 || layers.slice(0, at + 1).some(({ gate }) => gate !== null)) return;
    if (layer.name === null || !pointsOn(graph, layer).has(start)) return;
    add({ from: id(start, 0), to: id(start, at), name: '', on: 'apron', oneWay: true }, -1);
  });
  const layered = graphFrom({
    nodes: layers.flatMap((_, at) => nodes.map((node) => ({ ...node, id: id(node.id, at) }))),
    edges: plan,
  });
  const weights = Float64Array.from(source, (index, at) => {
    if (index < 0) return 0;
    const lengthM = layered.lengthM[at] ?? 0;
    const isOpen = (allowed[index] ?? 0) < Number.POSITIVE_INFINITY;
    // A taxiway that was not said is a last resort.
    const isUnsaid = plan[at]?.on === 'taxiway' && isApronLayer(layers, plan[at]?.from ?? '');
    return isOpen ? lengthM * (isUnsaid ? RUNWAY_WEIGHT : 1) : Number.POSITIVE_INFINITY;
  });
  const from = indexOf.get(start) ?? 0;
  const search = searchFrom(layered, from, weights);
  const costOf = (node: NodeId, layer: number) =>
    search.cost[layered.indexOf.get(id(node, layer)) ?? -1] ?? Number.POSITIVE_INFINITY;
  return {
    /** The way to the nearest of some points in the last layer; null if there is none. */
    to: (targets: readonly NodeId[]) => {
      const last = layers.length - 1;
      const target = targets
        .filter((node) => costOf(node, last) < Number.POSITIVE_INFINITY)
        .sort((a, b) => costOf(a, last) - costOf(b, last))[0];
      if (target === undefined) return null;
      const path = edgesTo(search, layered.indexOf.get(id(target, last)) ?? 0) ?? [];
      const arcs = path.flatMap((arc): DirectedEdge[] => {
        const of = source[edgeOf(arc)] ?? -1;
        return of < 0 ? [] : [2 * of + Number(isReversed(arc))];
      });
      return { arcs, target };
    },
    /** Whether any point of a layer can be reached. */
    reaches: (layer: number) =>
      nodes.some((node) => costOf(node.id, layer) < Number.POSITIVE_INFINITY),
  };
}

/** Whether a stretch belongs to a part of the route. */
const isOf = (edge: TaxiEdge, { name, on }: Layer): boolean =>
  edge.on === on &&
  (on === 'apron' || (on === 'runway' ? sameRunway(edge.name) : edge.name) === name);

/** A taxiway one may get to the first one said by, without anybody saying so. */
const isQuiet = ({ on, crosses }: TaxiEdge): boolean => on === 'taxiway' && crosses === undefined;

const isApronLayer = (layers: readonly Layer[], id: string): boolean =>
  layers[Number(id.split(' ', 1)[0])]?.name === null;
