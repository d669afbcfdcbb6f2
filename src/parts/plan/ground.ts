/**
 * What lies on the ground, prepared once for a field and not for every look at it: a large field
 * has thousands of stretches, and a plan is looked at many times.
 */

import type { TaxiEdge, TaxiNode } from '../../core';
import type { GroundPoint } from './projection';

/** The ground as lines of an SVG path in metres east and north, and what carries a name. */
export interface Ground {
  readonly byId: ReadonlyMap<string, TaxiNode>;
  readonly apron: string;
  readonly taxiway: string;
  readonly closed: string;
  /** A dot for each stand: a line of no length. */
  readonly stands: string;
  readonly holds: readonly Hold[];
  /** Stands and holding points. */
  readonly named: readonly TaxiNode[];
  /** How far apart neighbouring stands lie, metres: their median; infinite if there is only one. */
  readonly standsApartM: number;
}

/** A holding point, and the direction of the taxiway it lies on: a point further along it. */
export interface Hold {
  readonly at: GroundPoint;
  readonly towards: GroundPoint;
  /** Nobody surveyed it: it is put where one is usually painted. */
  readonly assumed: boolean;
}

export const groundAt = ({ xM, yM }: Pick<TaxiNode, 'xM' | 'yM'>): GroundPoint => ({
  eastM: xM,
  northM: yM,
});

/** To a centimetre. */
const write = ({ xM, yM }: TaxiNode): string => [xM, yM].map((along) => along.toFixed(2)).join(' ');

/** Prepares a field's plan. */
export function groundOf(
  nodes: readonly TaxiNode[],
  edges: readonly TaxiEdge[],
  isClosed: (edge: TaxiEdge) => boolean,
): Ground {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const lines = { apron: '', taxiway: '', closed: '' };
  const neighbours = new Map<string, TaxiNode>();
  for (const edge of edges) {
    const [from, to] = [byId.get(edge.from), byId.get(edge.to)];
    if (from === undefined || to === undefined) continue;
    if (!neighbours.has(from.id)) neighbours.set(from.id, to);
    if (!neighbours.has(to.id)) neighbours.set(to.id, from);
    const line = `M${write(from)}L${write(to)}`;
    if (isClosed(edge)) lines.closed += line;
    else if (edge.on !== 'runway') lines[edge.on] += line;
  }
  const stands = nodes.filter(({ kind }) => kind === 'stand');
  return {
    byId,
    ...lines,
    stands: stands.map((node) => `M${write(node)}h.01`).join(''),
    holds: nodes.flatMap((node) => {
      const other = node.kind === 'hold' ? neighbours.get(node.id) : undefined;
      if (other === undefined) return [];
      const assumed = node.assumed === true;
      return [{ at: groundAt(node), towards: groundAt(other), assumed }];
    }),
    named: nodes.filter(({ kind }) => kind === 'stand' || kind === 'hold'),
    standsApartM: apartM(stands),
  };
}

function apartM(nodes: readonly TaxiNode[]): number {
  const least = nodes.map((one) =>
    nodes.reduce(
      (nearest, other) =>
        other === one
          ? nearest
          : Math.min(nearest, Math.hypot(other.xM - one.xM, other.yM - one.yM)),
      Number.POSITIVE_INFINITY,
    ),
  );
  return least.sort((a, b) => a - b)[Math.floor(least.length / 2)] ?? Number.POSITIVE_INFINITY;
}
