/** Where a runway end can be entered, and how much run remains from there. */

import type { Designator, Field } from '../airfield/field';
import type { PlanPoint } from '../earth/planPoint';
import { distanceM, type NodeId, type TaxiGraph, type TaxiNode, taxiGraph } from './graph';
import { isTaxiable } from './rules';
import { isOn, type RunwayStrip, type StripEnd, seenFrom, stripsOf } from './runwayStrip';

/** A holding point from which an end is entered. */
export interface RunwayEntry {
  readonly hold: NodeId;
  /** As painted: `K2`; null if the plan doesn't name it. */
  readonly name: string | null;
  readonly end: Designator;
  /** From the holding point to where its taxiway meets the runway, metres. */
  readonly accessM: number;
  /** From the start of the end's pavement to where the roll begins, metres; 0 for the whole run. */
  readonly rollsFromM: number;
  /** TORA remaining from there, metres. */
  readonly runM: number;
  /** Backtrack along the runway to where the run begins, metres; 0 for none. */
  readonly backtrackM: number;
}

/**
 * Within this distance of the start, metres, the run counts as whole: lining up takes that much.
 */
const LINE_UP_M = 60;

/** With less TORA than this, a run can't sensibly begin there: it is the other end. */
const LEAST_SHARE = 0.25;

export const pointOf = ({ xM, yM }: TaxiNode): PlanPoint => ({ eastM: xM, northM: yM });

/** The runway of an end, with the end on the plan; null if the field has none of that name. */
export function stripWith(field: Field, end: Designator): readonly [RunwayStrip, StripEnd] | null {
  for (const strip of stripsOf(field)) {
    for (const one of strip.ends) if (one.designator === end) return [strip, one];
  }
  return null;
}

/**
 * All ways of entering an end. From each holding point that gives on to it: the whole run,
 * backtracking if necessary, and the run from the intersection, if that is shorter. `beside` adds
 * those from which the runway is entered without the plan saying so: a backtrack to this end.
 */
export function runwayEntriesOf(
  field: Field,
  end: Designator,
  beside = false,
): readonly RunwayEntry[] {
  const found = stripWith(field, end);
  if (found === null) return [];
  const [strip, { toraM }] = found;
  const graph = taxiGraph(field);
  return graph.nodes.flatMap((node, index): RunwayEntry[] => {
    if (node.kind !== 'hold') return [];
    const meets = onRunwayFrom(graph, index, strip);
    if (node.ends?.includes(end) !== true && (!beside || meets === null)) return [];
    const at = pointOf(meets ?? node);
    const alongM = Math.min(strip.lengthM, Math.max(0, seenFrom(strip, end, at).alongM));
    const isBeginning = alongM <= LINE_UP_M || meets?.ends?.includes(end) === true;
    const entry = {
      hold: node.id,
      name: node.name ?? null,
      end,
      accessM: meets ? distanceM(node, meets) : 0,
    };
    const whole = { ...entry, rollsFromM: 0, runM: toraM, backtrackM: isBeginning ? 0 : alongM };
    const runM = toraM - alongM;
    if (isBeginning || runM < LEAST_SHARE * toraM) return [whole];
    return [whole, { ...entry, rollsFromM: alongM, runM, backtrackM: 0 }];
  });
}

/**
 * The point of a runway a holding point leads straight to; the nearest of several, null if none.
 */
function onRunwayFrom(graph: TaxiGraph, hold: number, strip: RunwayStrip): TaxiNode | null {
  const { nodes, edges, first, arcs, target } = graph;
  let nearest: TaxiNode | null = null;
  for (let slot = first[hold] ?? 0; slot < (first[hold + 1] ?? 0); slot++) {
    const arc = arcs[slot] ?? 0;
    const node = nodes[target[arc] ?? 0];
    if (node?.kind !== 'runway' || edges[arc >> 1]?.on === 'runway') continue;
    if (!isTaxiable(graph, arc) || !isOn(strip, pointOf(node))) continue;
    const isNearer =
      nearest === null || distanceM(nodes[hold], node) < distanceM(nodes[hold], nearest);
    if (isNearer) nearest = node;
  }
  return nearest;
}
