/** Snapping: a point placed near something belongs on it. */

import { degreesOf, trueDeg } from '../angle';
import { decimetre } from '../earth/planPoint';
import type { NodeId, TaxiNode } from '../taxi/graph';
import { type StretchId, stretchId } from '../taxi/rules';
import { type RunwayStrip, seenFrom } from '../taxi/runwayStrip';
import { draftStrips, groundOf } from './editStrips';
import type { Field } from './field';

/** A point of the plan, metres east and north of the reference point. */
export interface PlanSpot {
  readonly xM: number;
  readonly yM: number;
}

/** A point that was placed, and what it snapped to. */
export type Snapped =
  | ({ readonly on: 'node'; readonly id: NodeId } & PlanSpot)
  | ({ readonly on: 'centreline'; readonly runway: string } & PlanSpot)
  | ({ readonly on: 'stretch'; readonly id: StretchId } & PlanSpot)
  /**
   * In line with a runway, or at a multiple of 15° to it, as seen from the point it is drawn from.
   */
  | ({ readonly on: 'direction' } & PlanSpot)
  | ({ readonly on: 'ground' } & PlanSpot);

export interface SnapOptions {
  /** The point the new one is drawn from; null if it stands alone. */
  readonly from?: NodeId | null;
  /** Points to ignore: those being moved. */
  readonly except?: NodeId | null;
  /** The snapping distance, metres. */
  readonly reachM?: number;
}

/** Anything nearer than this is meant, metres. */
export const SNAP_M = 15;

/** Directions snap to multiples of 15° within this, degrees. */
const DIRECTION_DEG = 15;
const DIRECTION_REACH_DEG = 4;

const distanceM = (one: PlanSpot, other: PlanSpot): number =>
  Math.hypot(one.xM - other.xM, one.yM - other.yM);

/** A spot as a plan is drawn. */
export const asDrawn = ({ xM, yM }: PlanSpot): PlanSpot => ({
  xM: decimetre(xM),
  yM: decimetre(yM),
});

/**
 * What a placed point snaps to: a point of the plan first, then a centreline, a stretch, a
 * direction.
 */
export function snap(field: Field, spot: PlanSpot, options: SnapOptions = {}): Snapped {
  const { from = null, except = null, reachM = SNAP_M } = options;
  const { nodes } = field.taxi;
  const node = nearest(
    nodes.filter(({ id }) => id !== except),
    (one) => distanceM(one, spot),
    reachM,
  );
  if (node !== null) return { on: 'node', id: node.id, xM: node.xM, yM: node.yM };
  const start = nodes.find(({ id }) => id === from) ?? null;
  const lined = start === null ? null : inDirection(field, start, spot);
  const onRunway = onCentreline(field, lined ?? spot, spot, reachM);
  if (onRunway !== null) return onRunway;
  const onStretch = onNearestStretch(field, spot, except, reachM);
  if (onStretch !== null) return onStretch;
  if (lined !== null) return { on: 'direction', ...asDrawn(lined) };
  return { on: 'ground', ...asDrawn(spot) };
}

function nearest<T>(of: readonly T[], far: (one: T) => number, reachM: number): T | null {
  let best: T | null = null;
  let bestM = reachM;
  for (const one of of) {
    const metres = far(one);
    if (metres <= bestM) [best, bestM] = [one, metres];
  }
  return best;
}

/** The nearest spot on the centreline of a runway whose pavement is within reach. */
function onCentreline(
  field: Field,
  lined: PlanSpot,
  spot: PlanSpot,
  reachM: number,
): Snapped | null {
  const found = nearest(draftStrips(field), (strip) => besideM(strip, spot), reachM);
  if (found === null) return null;
  const [one] = found.ends;
  const { alongM } = seenFrom(found, one.designator, groundOf(lined));
  const along = Math.min(found.lengthM, Math.max(0, alongM));
  const [, other] = found.ends;
  const share = along / found.lengthM;
  const at = asDrawn({
    xM: one.at.eastM + share * (other.at.eastM - one.at.eastM),
    yM: one.at.northM + share * (other.at.northM - one.at.northM),
  });
  return { on: 'centreline', runway: found.name, ...at };
}

/** How far a spot lies from a runway's centreline, metres; infinite beyond its ends. */
function besideM(strip: RunwayStrip, spot: PlanSpot): number {
  const { alongM, rightM } = seenFrom(strip, strip.ends[0].designator, groundOf(spot));
  const isBeside = alongM >= -SNAP_M && alongM <= strip.lengthM + SNAP_M;
  return isBeside ? Math.abs(rightM) : Number.POSITIVE_INFINITY;
}

function onNearestStretch(
  field: Field,
  spot: PlanSpot,
  except: NodeId | null,
  reachM: number,
): Snapped | null {
  const byId = new Map(field.taxi.nodes.map((node) => [node.id, node]));
  const feet = field.taxi.edges.flatMap((edge) => {
    const [a, b] = [byId.get(edge.from), byId.get(edge.to)];
    if (!a || !b || edge.from === except || edge.to === except) return [];
    const foot = footOn(a, b, spot);
    return foot === null ? [] : [{ id: stretchId(edge), foot }];
  });
  const found = nearest(feet, ({ foot }) => distanceM(foot, spot), reachM);
  return found === null ? null : { on: 'stretch', id: found.id, ...asDrawn(found.foot) };
}

/** The foot of the perpendicular on a stretch; null if it lies beyond its ends. */
function footOn(a: TaxiNode, b: TaxiNode, spot: PlanSpot): PlanSpot | null {
  const [x, y] = [b.xM - a.xM, b.yM - a.yM];
  const share = ((spot.xM - a.xM) * x + (spot.yM - a.yM) * y) / (x * x + y * y);
  return share > 0 && share < 1 ? { xM: a.xM + share * x, yM: a.yM + share * y } : null;
}

/**
 * The spot rotated about a point to the nearest multiple of 15° to the nearest runway; null if none
 * is near.
 */
function inDirection(field: Field, start: TaxiNode, spot: PlanSpot): PlanSpot | null {
  const lengthM = distanceM(start, spot);
  if (lengthM === 0) return null;
  const strip = nearest(draftStrips(field), (one) => besideM(one, start), Number.MAX_VALUE);
  const baseDeg = strip?.ends[0].headingTrueDeg ?? 0;
  const toDeg = (Math.atan2(spot.xM - start.xM, spot.yM - start.yM) * 180) / Math.PI;
  const off = degreesOf(trueDeg(toDeg - baseDeg));
  const kept = Math.round(off / DIRECTION_DEG) * DIRECTION_DEG;
  if (Math.abs(kept - off) > DIRECTION_REACH_DEG) return null;
  const angle = ((baseDeg + kept) * Math.PI) / 180;
  // The foot on that line, so that what is drawn stays under the finger.
  const along = lengthM * Math.cos(((kept - off) * Math.PI) / 180);
  return { xM: start.xM + along * Math.sin(angle), yM: start.yM + along * Math.cos(angle) };
}
