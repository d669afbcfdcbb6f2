/** Where a landing can leave the runway. */

import type { Designator, Field } from '../airfield/field';
import { pointOf, stripWith } from './entries';
import { type NodeId, type TaxiGraph, taxiGraph } from './graph';
import { isTaxiable, type TaxiRules, weightsOf } from './rules';
import { isOn, type RunwayStrip, seenFrom } from './runwayStrip';

/** Where to leave the runway. */
export interface Exit {
  readonly node: NodeId;
  /** The taxiway that leaves it. */
  readonly name: string;
  /** From the landing threshold, metres. */
  readonly fromThresholdM: number;
  /** Backtrack along the runway to it, metres; 0 for none. */
  readonly backtrackM: number;
}

/** Where a landing on an end can leave the runway, in the order of reaching them. */
export function exitsOf(
  field: Field,
  end: Designator,
  rules: TaxiRules,
): readonly Omit<Exit, 'backtrackM'>[] {
  const found = stripWith(field, end);
  if (found === null) return [];
  const [strip, { displacedM }] = found;
  const graph = taxiGraph(field);
  const weights = weightsOf(graph, rules);
  return graph.nodes
    .flatMap((node, index) => {
      if (node.kind !== 'runway' || !isOn(strip, pointOf(node))) return [];
      const name = leavingBy(graph, index, weights, strip);
      const { alongM } = seenFrom(strip, end, pointOf(node));
      return name === null ? [] : [{ node: node.id, name, fromThresholdM: alongM - displacedM }];
    })
    .sort((a, b) => a.fromThresholdM - b.fromThresholdM);
}

/** The name of a taxiway leaving a runway at a point; null if none does. */
function leavingBy(
  { edges, arcs, first, ...graph }: TaxiGraph,
  node: number,
  weights: Float64Array,
  strip: RunwayStrip,
): string | null {
  for (let slot = first[node] ?? 0; slot < (first[node + 1] ?? 0); slot++) {
    const arc = arcs[slot] ?? 0;
    const edge = edges[arc >> 1];
    if (edge === undefined || edge.on === 'runway' || edge.name === strip.name) continue;
    if (weights[arc >> 1] === Number.POSITIVE_INFINITY) continue;
    if (isTaxiable({ edges, arcs, first, ...graph }, arc)) return edge.name;
  }
  return null;
}
