/** Changes to a field's taxi plan: its points and the stretches between them. */

import type { NodeId, TaxiEdge, TaxiNode } from '../taxi/graph';
import { type StretchId, stretchId } from '../taxi/rules';
import { seenFrom } from '../taxi/runwayStrip';
import { freeId, holdEnds, holdName, runwayPointEnds, standName } from './editNames';
import type { PlanSpot, Snapped } from './editSnap';
import { crossedBy, groundOf, stripUnder } from './editStrips';
import type { Field } from './field';

/** What a stretch is drawn as. */
export interface LaidAs {
  readonly on: 'taxiway' | 'apron';
  readonly name: string;
}

/** The settable properties of a point; null removes one. */
export interface NodeSetting {
  readonly name?: string | null;
  readonly kind?: TaxiNode['kind'];
  readonly ends?: readonly string[] | null;
  readonly at?: PlanSpot;
}

/** The settable properties of a stretch; null removes one. */
export interface EdgeSetting {
  readonly name?: string;
  readonly on?: TaxiEdge['on'];
  readonly widthM?: number | null;
  /** Both ways, or only from one of its two points. */
  readonly onlyFrom?: NodeId | null;
  readonly crosses?: string | null;
}

type Plan = Field['taxi'];

const withPlan = (field: Field, plan: Partial<Plan>): Field => ({
  ...field,
  taxi: { ...field.taxi, ...plan },
});

const nodeOf = (field: Field, id: NodeId): TaxiNode | undefined =>
  field.taxi.nodes.find((node) => node.id === id);

/**
 * Places a stand, a holding point or a junction; on a stretch it splits it. An existing point there
 * is converted.
 */
export function pointPlaced(field: Field, what: 'stand' | 'hold' | 'junction', at: Snapped): Field {
  if (at.on === 'node')
    return nodeSet(field, at.id, { kind: what, ...newlyNamed(field, what, at) });
  const kind = at.on === 'centreline' && what !== 'hold' ? 'runway' : what;
  return withPoint(field, kind, at)[0];
}

/** The default name of a point of that kind, and the ends it gives on to. */
function newlyNamed(field: Field, kind: TaxiNode['kind'], at: Snapped): NodeSetting {
  if (kind === 'stand') return { name: standName(field), ends: null };
  if (kind === 'hold') return { name: holdName(field, at), ends: holdEnds(field, at) };
  if (kind === 'runway') return { ends: runwayPointEnds(field, at) };
  return { name: null, ends: null };
}

/** The field with a point of that kind there, and the point. */
function withPoint(field: Field, kind: TaxiNode['kind'], at: Snapped): readonly [Field, NodeId] {
  const id = freeId(field, kind);
  const bare: TaxiNode = { id, xM: at.xM, yM: at.yM, kind };
  const node = settled(bare, newlyNamed(field, kind, at));
  const nodes = [...field.taxi.nodes, node];
  if (at.on === 'stretch') return [divided(withPlan(field, { nodes }), at.id, node), id];
  if (kind === 'runway') return [alongRunway(withPlan(field, { nodes }), node), id];
  return [withPlan(field, { nodes }), id];
}

/** Splits a stretch at a point. */
function divided(field: Field, id: StretchId, node: TaxiNode): Field {
  const edges = field.taxi.edges.flatMap((edge) =>
    stretchId(edge) === id
      ? [
          { ...edge, to: node.id },
          { ...edge, from: node.id },
        ]
      : [edge],
  );
  return crossingsAnew(withPlan(field, { edges }), node.id);
}

/** Joins a new point of a runway to its neighbours along it, so that one can backtrack. */
function alongRunway(field: Field, node: TaxiNode): Field {
  const strip = stripUnder(field, node);
  if (strip === null) return field;
  const along = (one: TaxiNode) => seenFrom(strip, strip.ends[0].designator, groundOf(one)).alongM;
  const others = field.taxi.nodes
    .filter((one) => one.kind === 'runway' && one.id !== node.id)
    .filter((one) => stripUnder(field, one)?.name === strip.name)
    .sort((a, b) => along(a) - along(b));
  const before = others.filter((one) => along(one) <= along(node)).at(-1);
  const after = others.find((one) => along(one) > along(node));
  const isBetween = ({ on, from, to }: TaxiEdge) =>
    on === 'runway' &&
    [from, to].every((id) => id === before?.id || id === after?.id) &&
    from !== to;
  const edges = [
    ...field.taxi.edges.filter((edge) => !isBetween(edge)),
    ...[before, after].flatMap((other): TaxiEdge[] =>
      other ? [{ from: other.id, to: node.id, name: strip.name, on: 'runway' }] : [],
    ),
  ];
  return crossingsAnew(withPlan(field, { edges }), node.id);
}

/** Updates, for each stretch at a point, which runway it crosses as it now lies. */
function crossingsAnew(field: Field, id: NodeId): Field {
  const byId = new Map(field.taxi.nodes.map((node) => [node.id, node]));
  const edges = field.taxi.edges.map((edge) => {
    const [from, to] = [byId.get(edge.from), byId.get(edge.to)];
    if ((edge.from !== id && edge.to !== id) || !from || !to) return edge;
    const { crosses: _, ...rest } = edge;
    const [crossed] = crossedBy(field, from, to, edge);
    return crossed === undefined ? rest : { ...rest, crosses: crossed };
  });
  return withPlan(field, { edges });
}

/** Draws a taxiway from a point to another, which is created if missing. */
export function laid(field: Field, from: NodeId | null, at: Snapped, as: LaidAs): Field {
  const [there, to] =
    at.on === 'node'
      ? ([field, at.id] as const)
      : withPoint(field, at.on === 'centreline' ? 'runway' : 'junction', at);
  if (from === null || nodeOf(there, from) === undefined) return there;
  return joined(there, from, to, as);
}

function joined(field: Field, from: NodeId, to: NodeId, { on, name }: LaidAs): Field {
  const id = stretchId({ from, to });
  const isThere = field.taxi.edges.some((edge) => stretchId(edge) === id);
  if (from === to || isThere || nodeOf(field, to) === undefined) return field;
  const edge: TaxiEdge = { from, to, name, on };
  const joins = withPlan(field, { edges: [...field.taxi.edges, edge] });
  return crossingsAnew(joins, to);
}

/** A point with a property set. */
function settled(node: TaxiNode, { name, ends, kind, at }: NodeSetting): TaxiNode {
  const { name: wasName, ends: wasEnds, ...rest } = node;
  const newName = name === undefined ? wasName : (name ?? undefined);
  const newEnds = ends === undefined ? wasEnds : (ends ?? undefined);
  return {
    ...rest,
    ...(kind === undefined ? {} : { kind }),
    ...(at === undefined ? {} : { xM: at.xM, yM: at.yM }),
    ...(newName === undefined ? {} : { name: newName }),
    ...(newEnds === undefined || newEnds.length === 0 ? {} : { ends: [...newEnds] }),
  };
}

/** Sets a property of a point. If it moves, its stretches follow. */
export function nodeSet(field: Field, id: NodeId, set: NodeSetting): Field {
  const nodes = field.taxi.nodes.map((node) => (node.id === id ? settled(node, set) : node));
  const there = withPlan(field, { nodes });
  return set.at === undefined && set.kind === undefined ? there : crossingsAnew(there, id);
}

/** Removes a point with its stretches. If it joined two of one name, they merge. */
export function nodeRemoved(field: Field, id: NodeId): Field {
  const nodes = field.taxi.nodes.filter((node) => node.id !== id);
  const [one, other, ...more] = field.taxi.edges.filter(({ from, to }) => from === id || to === id);
  const edges = field.taxi.edges.filter(({ from, to }) => from !== id && to !== id);
  const without = withPlan(field, { nodes, edges });
  if (!one || !other || more.length > 0) return without;
  if (one.name !== other.name || one.on !== other.on || one.oneWay || other.oneWay) return without;
  const from = one.from === id ? one.to : one.from;
  const to = other.from === id ? other.to : other.from;
  const isThere = edges.some((edge) => stretchId(edge) === stretchId({ from, to }));
  if (isThere || from === to) return without;
  const { crosses: _, ...kept } = one;
  return crossingsAnew(withPlan(without, { edges: [...edges, { ...kept, from, to }] }), to);
}

export function stretchSet(field: Field, id: StretchId, set: EdgeSetting): Field {
  const edges = field.taxi.edges.map((edge) => {
    if (stretchId(edge) !== id) return edge;
    const { widthM: wasWidthM, oneWay: wasOneWay, crosses: wasCrosses, ...rest } = edge;
    const widthM = set.widthM === undefined ? wasWidthM : (set.widthM ?? undefined);
    const crosses = set.crosses === undefined ? wasCrosses : (set.crosses ?? undefined);
    const isTurned = set.onlyFrom === edge.to;
    const oneWay = set.onlyFrom === undefined ? wasOneWay : set.onlyFrom !== null;
    return {
      ...rest,
      ...(isTurned ? { from: edge.to, to: edge.from } : {}),
      ...(set.name === undefined ? {} : { name: set.name }),
      ...(set.on === undefined ? {} : { on: set.on }),
      ...(widthM === undefined ? {} : { widthM }),
      ...(oneWay ? { oneWay: true } : {}),
      ...(crosses === undefined ? {} : { crosses }),
    };
  });
  return withPlan(field, { edges });
}

/** Removes a stretch; its points stay. */
export const stretchRemoved = (field: Field, id: StretchId): Field =>
  withPlan(field, { edges: field.taxi.edges.filter((edge) => stretchId(edge) !== id) });
