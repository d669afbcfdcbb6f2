/** What points and stretches of the taxi plan are called: by what is painted there, or else by what meets there. */

import type { TaxiEdge, TaxiNode } from '../../core';

interface Plan {
  readonly nodes: readonly TaxiNode[];
  readonly edges: readonly TaxiEdge[];
}

const edgesAt = ({ id }: TaxiNode, edges: readonly TaxiEdge[]) =>
  edges.filter(({ from, to }) => from === id || to === id);

const namesOf = (edges: readonly TaxiEdge[]) => [...new Set(edges.map(({ name }) => name))];

/** The names of what meets at a point, each once, in the order of the plan. */
export const meetingAt = (node: TaxiNode, edges: readonly TaxiEdge[]): readonly string[] =>
  namesOf(edgesAt(node, edges));

/** What joins the names of what meets at a point. */
const MEETS = '/';

/**
 * A point by its own name; else by the runway ends that begin there, by what else than `along` meets
 * there, or by the stand beside it. Its name in the document is the last resort: it stands on no chart.
 */
export function pointCalled(node: TaxiNode, plan: Plan, along = ''): string {
  const { id, name, kind, ends = [] } = node;
  if (name !== undefined) return name;
  if (kind === 'runway' && ends.length > 0) return ends.join(MEETS);
  const others = edgesAt(node, plan.edges).filter((edge) => edge.name !== along);
  const painted = namesOf(others.filter(({ on }) => on !== 'apron'));
  if (painted.length > 0) return painted.join(MEETS);
  return standBeside(node, plan) ?? others[0]?.name ?? id;
}

/** The name of the stand that a point of the apron leads to; undefined where it leads to none. */
function standBeside(node: TaxiNode, { nodes, edges }: Plan): string | undefined {
  const next = edgesAt(node, edges).flatMap(({ from, to }) => [from, to]);
  return nodes.find((one) => one !== node && one.kind === 'stand' && next.includes(one.id))?.name;
}

/** A point by itself: one that is known by a stand is beside it, and not the stand. */
export function pointAlone(node: TaxiNode, plan: Plan, beside: (stand: string) => string): string {
  const called = pointCalled(node, plan);
  const isBeside = node.name === undefined && called === standBeside(node, plan);
  return isBeside ? beside(called) : called;
}

/** A stretch by the points at its ends: those of its own taxiway are told apart by what else meets there. */
export function endsCalled({ name, from, to }: TaxiEdge, plan: Plan): readonly [string, string] {
  const called = (id: string) => {
    const node = plan.nodes.find((one) => one.id === id);
    return node === undefined ? id : pointCalled(node, plan, name);
  };
  return [called(from), called(to)];
}
