/**
 * Names of points and stretches of the taxi plan: what is painted there, or else what meets there.
 */

import type { TaxiEdge, TaxiNode } from '../../core';

interface Plan {
  readonly nodes: readonly TaxiNode[];
  readonly edges: readonly TaxiEdge[];
}

const edgesAt = ({ id }: TaxiNode, edges: readonly TaxiEdge[]) =>
  edges.filter(({ from, to }) => from === id || to === id);

const namesOf = (edges: readonly TaxiEdge[]) => [...new Set(edges.map(({ name }) => name))];

/** The names of what meets at a point, each once, in plan order. */
export const meetingAt = (node: TaxiNode, edges: readonly TaxiEdge[]): readonly string[] =>
  namesOf(edgesAt(node, edges));

/** The separator between names of what meets at a point. */
const MEETS = '/';

/** The runway ends that begin at a point; undefined if none does. */
const endsAt = ({ kind, ends = [] }: TaxiNode): string | undefined =>
  kind === 'runway' && ends.length > 0 ? ends.join(MEETS) : undefined;

/**
 * The name of the stand a stretch leads to from here, else of another point, else of the nearest.
 */
function nameNear(node: TaxiNode, { nodes, edges }: Plan): string | undefined {
  const next = edgesAt(node, edges).flatMap(({ from, to }) => [from, to]);
  const rank = ({ id, kind }: TaxiNode) => (!next.includes(id) ? 2 : kind === 'stand' ? 0 : 1);
  const farM = ({ xM, yM }: TaxiNode) => Math.hypot(xM - node.xM, yM - node.yM);
  const named = nodes.filter(({ name }) => name !== undefined);
  return named.sort((a, b) => rank(a) - rank(b) || farM(a) - farM(b))[0]?.name;
}

/** Words for points with nothing painted. */
export interface PointWords {
  /** What meets there, such as "C" or "apron", and the name of what is near. */
  readonly by: (what: string, near: string | undefined) => string;
  readonly runway: (ends: string) => string;
  /** A point of one taxiway, where nothing else meets. */
  readonly bend: string;
}

/**
 * A point by its own name; else by the runway ends that begin there, by the taxiways that meet
 * there, or by the one it is on and what is near. Its id in the document stands on no chart.
 */
export function pointCalled(node: TaxiNode, plan: Plan, words: PointWords): string {
  if (node.name !== undefined) return node.name;
  const ends = endsAt(node);
  if (ends !== undefined) return words.runway(ends);
  const here = edgesAt(node, plan.edges);
  const painted = namesOf(here.filter(({ on }) => on !== 'apron'));
  if (painted.length > 1) return painted.join(MEETS);
  return words.by(painted[0] ?? here[0]?.name ?? node.id, nameNear(node, plan));
}

/**
 * A stretch by its end points: those of its own taxiway are distinguished by what else meets there.
 */
export function endsCalled(
  { name, from, to, on }: TaxiEdge,
  plan: Plan,
  words: PointWords,
): readonly [string, string] {
  const called = (id: string): string => {
    const node = plan.nodes.find((one) => one.id === id);
    if (node === undefined) return id;
    const own = node.name ?? endsAt(node);
    if (own !== undefined) return own;
    const others = edgesAt(node, plan.edges).filter((edge) => edge.name !== name);
    const painted = namesOf(others.filter((edge) => edge.on !== 'apron'));
    if (painted.length > 0) return painted.join(MEETS);
    // On the apron everything has one name: only the stands tell its points apart.
    const apart = on === 'apron' ? nameNear(node, plan) : others[0]?.name;
    return apart ?? words.bend;
  };
  return [called(from), called(to)];
}
