/** A way over the field, and what one meets on it. */

import type { Field } from '../airfield/field';
import type { PlanPoint } from '../earth/planPoint';
import { pointOf } from './entries';
import {
  type Arc,
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

/** What is rolled on under one name. */
export interface Leg {
  /** The taxiway's letter, `apron`, or the runway's name. */
  readonly name: string;
  readonly on: TaxiEdge['on'];
  /** Where one comes on to it. */
  readonly from: NodeId;
  readonly lengthM: number;
}

/** A runway that the way crosses. */
export interface Crossing {
  /** `01/19`. */
  readonly runway: string;
  /** From the beginning of the way to its centreline, metres. */
  readonly atM: number;
  readonly at: PlanPoint;
  /** Which way one goes across, degrees true. */
  readonly headingTrueDeg: number;
  /** Where one holds before it: the holding point last passed on the same taxiway, if the plan has one. */
  readonly hold: NodeId | null;
  /** How many legs lie before it, the one it is on not counted. */
  readonly leg: number;
}

/** A point of the way that has a name, so that it can be said that it is passed. */
export interface Mark {
  readonly node: NodeId;
  readonly atM: number;
  readonly kind: TaxiNode['kind'];
  /** As painted or spoken; null where one taxiway goes over into another. */
  readonly name: string | null;
  /** The names of what one comes from and goes on to; alike where they do not change. */
  readonly between: readonly [string, string];
}

/** A corner of the way. */
export interface Corner {
  readonly node: NodeId;
  readonly atM: number;
  /** How far the way turns, degrees, to the right positive. */
  readonly turnDeg: number;
  /** The shorter of the stretches that meet here, metres. */
  readonly stretchM: number;
  /** The narrower of them, metres; null where a width is not known. */
  readonly widthM: number | null;
  /** What one turns on to. */
  readonly onto: string;
}

/** A way over the field. */
export interface Route {
  readonly nodes: readonly NodeId[];
  readonly points: readonly PlanPoint[];
  readonly lengthM: number;
  /** Of it on runways. */
  readonly runwayM: number;
  readonly legs: readonly Leg[];
  readonly crossings: readonly Crossing[];
  readonly marks: readonly Mark[];
  readonly corners: readonly Corner[];
}

/** One stretch of the way, in the direction it is rolled. */
interface Stretch {
  readonly edge: TaxiEdge;
  readonly from: TaxiNode;
  readonly to: TaxiNode;
  readonly fromM: number;
  readonly lengthM: number;
}

/** The way along some arcs, which follow one another; null for none at all. */
export function routeAlong(field: Field, arcs: readonly Arc[]): Route | null {
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

function stretchesOf(graph: TaxiGraph, arcs: readonly Arc[]): readonly Stretch[] {
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
 * Runways crossed: as the plan says, as it lies, and where a taxiway goes on beyond a point on a
 * runway. Rolling along a runway is a leg of its own, and no crossing of that runway.
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
      if (!crosses && !across) continue;
      const atShare = across && !crosses ? 1 : (share ?? 0.5);
      crossings.push({
        runway: strip.name,
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

/** `19/01` and `01/19` are one runway. */
function sameRunway(name: string | undefined): string | null {
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

function marksOf(stretches: readonly Stretch[]): readonly Mark[] {
  const marks: Mark[] = [];
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

const markAt = (node: TaxiNode, atM: number, before: string, after: string): Mark => ({
  node: node.id,
  atM,
  kind: node.kind,
  name: node.name ?? null,
  between: [before, after],
});

function cornersOf(stretches: readonly Stretch[]): readonly Corner[] {
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
