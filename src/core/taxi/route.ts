/** A route over the field, and what it meets. */

import type { Field } from '../airfield/field';
import type { PlanPoint } from '../earth/planPoint';
import { pointOf } from './entries';
import {
  type DirectedEdge,
  distanceM,
  edgeOf,
  type NodeId,
  reverseOf,
  type TaxiEdge,
  type TaxiGraph,
  type TaxiNode,
  taxiGraph,
} from './graph';
import { crossedAt, isOn, stripsOf } from './runwayStrip';

/** A part of the route under one name. */
export interface Leg {
  /** The taxiway's letter, `apron`, or the runway's name. */
  readonly name: string;
  readonly on: TaxiEdge['on'];
  /** Where one joins it. */
  readonly from: NodeId;
  readonly lengthM: number;
}

/** A runway the route crosses, or enters to go along it. */
export interface Crossing {
  /** `01/19`. */
  readonly runway: string;
  /** How far the route goes along it, metres; 0 if it goes straight across. */
  readonly alongM: number;
  /** From the start of the route to its centreline, metres. */
  readonly atM: number;
  readonly at: PlanPoint;
  /** The pilot was told to cross it, and entered that. */
  readonly told: boolean;
  /** The direction of crossing, degrees true. */
  readonly headingTrueDeg: number;
  /** The holding point before it: the last one passed on the same taxiway, if the plan has one. */
  readonly hold: NodeId | null;
  /** How many legs come before it, not counting the present one. */
  readonly leg: number;
}

/** A point of the route that has a name, so that passing it can be reported. */
export interface RouteMark {
  readonly node: NodeId;
  readonly atM: number;
  readonly kind: TaxiNode['kind'];
  /** As painted or spoken; null where one taxiway merges into another. */
  readonly name: string | null;
  /** The names of the taxiways before and after it; equal if they don't change. */
  readonly between: readonly [string, string];
}

export interface RouteCorner {
  readonly node: NodeId;
  readonly atM: number;
  /** How far the route turns, degrees, right positive. */
  readonly turnDeg: number;
  /** The shorter of the stretches meeting here, metres. */
  readonly stretchM: number;
  /** The narrower width of the two, metres; null if one is unknown. */
  readonly widthM: number | null;
  /** What one turns on to. */
  readonly onto: string;
}

/** A route over the field. */
export interface Route {
  readonly nodes: readonly NodeId[];
  readonly points: readonly PlanPoint[];
  readonly lengthM: number;
  /** The part of it on runways, metres. */
  readonly runwayM: number;
  readonly legs: readonly Leg[];
  readonly crossings: readonly Crossing[];
  readonly marks: readonly RouteMark[];
  readonly corners: readonly RouteCorner[];
}

/** One stretch of the route, in the direction of travel. */
interface Stretch {
  readonly edge: TaxiEdge;
  readonly from: TaxiNode;
  readonly to: TaxiNode;
  readonly fromM: number;
  readonly lengthM: number;
}

/** The route along consecutive arcs; null if there are none. */
export function routeAlong(field: Field, arcs: readonly DirectedEdge[]): Route | null {
  const stretches = stretchesOf(taxiGraph(field), arcs);
  const first = stretches[0];
  const last = stretches.at(-1);
  if (first === undefined || last === undefined) return null;
  const nodes = [first.from, ...stretches.map(({ to }) => to)];
  return {
    nodes: nodes.map(({ id }) => id),
    points: nodes.map(pointOf),
    lengthM: last.fromM + last.lengthM,
    runwayM: stretches.reduce((sum, s) => sum + (s.edge.on === 'runway' ? s.lengthM : 0), 0),
    legs: legsOf(stretches),
    crossings: crossingsOf(field, stretches),
    marks: marksOf(stretches),
    corners: cornersOf(stretches),
  };
}

function stretchesOf(graph: TaxiGraph, arcs: readonly DirectedEdge[]): readonly Stretch[] {
  let fromM = 0;
  return arcs.flatMap((arc): Stretch[] => {
    const edge = graph.edges[edgeOf(arc)];
    const from = graph.nodes[graph.target[reverseOf(arc)] ?? 0];
    const to = graph.nodes[graph.target[arc] ?? 0];
    if (!edge || !from || !to) return [];
    const stretch = { edge, from, to, fromM, lengthM: distanceM(from, to) };
    fromM += stretch.lengthM;
    return [stretch];
  });
}

function legsOf(stretches: readonly Stretch[]): readonly Leg[] {
  const legs: Leg[] = [];
  for (const { edge, from, lengthM } of stretches) {
    const before = legs.at(-1);
    if (before?.name === edge.name && before.on === edge.on) {
      legs[legs.length - 1] = { ...before, lengthM: before.lengthM + lengthM };
    } else legs.push({ name: edge.name, on: edge.on, from: from.id, lengthM });
  }
  return legs;
}

/** Which leg each stretch belongs to. */
const legOf = (stretches: readonly Stretch[], index: number): number =>
  legsOf(stretches.slice(0, index + 1)).length - 1;

const headingOf = ({ from, to }: Stretch): number =>
  ((Math.atan2(to.xM - from.xM, to.yM - from.yM) * 180) / Math.PI + 360) % 360;

/**
 * Runways crossed: by the plan's own statement, by geometry, and where a taxiway continues beyond a
 * point on a runway; and runways entered to go along them, where one holds as before a crossing.
 */
function crossingsOf(field: Field, stretches: readonly Stretch[]): readonly Crossing[] {
  const strips = stripsOf(field);
  const crossings: Crossing[] = [];
  stretches.forEach((stretch, index) => {
    const { edge, from, to } = stretch;
    const said = sameRunway(edge.crosses);
    for (const strip of strips) {
      const share = crossedAt(strip, pointOf(from), pointOf(to));
      const ends = [from, to].some((node) => node.kind === 'runway' && isOn(strip, pointOf(node)));
      const crosses = strip.name === said || (share !== null && !ends && edge.name !== strip.name);
      const next = stretches[index + 1];
      const across =
        next !== undefined &&
        to.kind === 'runway' &&
        edge.on !== 'runway' &&
        next.edge.on !== 'runway' &&
        isOn(strip, pointOf(to));
      const alongM =
        sameRunway(edge.name) === strip.name ? 0 : alongFrom(stretches, index + 1, strip.name);
      if (!crosses && !across && alongM === 0) continue;
      const atShare = !crosses ? 1 : (share ?? 0.5);
      crossings.push({
        runway: strip.name,
        alongM,
        told: false,
        atM: stretch.fromM + atShare * stretch.lengthM,
        at: {
          eastM: from.xM + atShare * (to.xM - from.xM),
          northM: from.yM + atShare * (to.yM - from.yM),
        },
        headingTrueDeg: headingOf(stretch),
        hold: holdBefore(stretches, index),
        leg: legOf(stretches, index),
      });
    }
  });
  return crossings.sort((a, b) => a.atM - b.atM);
}

/** How far a route goes along a runway from one of its stretches on, metres; 0 if it doesn't. */
function alongFrom(stretches: readonly Stretch[], index: number, runway: string): number {
  let alongM = 0;
  for (const { edge, lengthM } of stretches.slice(index)) {
    if (edge.on !== 'runway' || sameRunway(edge.name) !== runway) break;
    alongM += lengthM;
  }
  return alongM;
}

/** `19/01` and `01/19` are one runway. */
export function sameRunway(name: string | undefined): string | null {
  const [one, other] = name?.split('/') ?? [];
  if (one === undefined || other === undefined) return null;
  return one < other ? `${one}/${other}` : `${other}/${one}`;
}

function holdBefore(stretches: readonly Stretch[], index: number): NodeId | null {
  for (let i = index; i >= 0; i--) {
    const stretch = stretches[i];
    if (stretch === undefined || stretch.edge.name !== stretches[index]?.edge.name) return null;
    if (stretch.from.kind === 'hold') return stretch.from.id;
    if (stretch.from.kind === 'runway') return null;
  }
  return null;
}

function marksOf(stretches: readonly Stretch[]): readonly RouteMark[] {
  const marks: RouteMark[] = [];
  const last = stretches.length - 1;
  stretches.forEach(({ edge, from, to, fromM, lengthM }, index) => {
    const before = stretches[index - 1]?.edge.name ?? edge.name;
    if (index === 0 || from.name !== undefined || before !== edge.name) {
      marks.push(markAt(from, fromM, before, edge.name));
    }
    if (index === last) marks.push(markAt(to, fromM + lengthM, edge.name, edge.name));
  });
  return marks;
}

const markAt = (node: TaxiNode, atM: number, before: string, after: string): RouteMark => ({
  node: node.id,
  atM,
  kind: node.kind,
  name: node.name ?? null,
  between: [before, after],
});

function cornersOf(stretches: readonly Stretch[]): readonly RouteCorner[] {
  return stretches.slice(1).map((stretch, index) => {
    const before = stretches[index] ?? stretch;
    const turn = headingOf(stretch) - headingOf(before);
    const widths = [before.edge.widthM, stretch.edge.widthM];
    const known = widths.filter((width) => width !== undefined);
    return {
      node: stretch.from.id,
      atM: stretch.fromM,
      turnDeg: ((turn + 540) % 360) - 180,
      stretchM: Math.min(before.lengthM, stretch.lengthM),
      widthM: known.length < 2 ? null : Math.min(...known),
      onto: stretch.edge.name,
    };
  });
}
