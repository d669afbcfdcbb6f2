/** Laying the taxi plan of one field over another: a map's over the runways that are there already. */

import { turnDeg } from '../angle';
import { lineBetween } from '../earth/geodesic';
import type { Place } from '../earth/place';
import { decimetre, type PlanPoint, planPoint } from '../earth/planPoint';
import { type RunwayStrip, seenFrom, stripsOf } from '../taxi/runwayStrip';
import type { Designator, Field } from './field';

/** Why a plan can't be laid over a field. */
export type PlanMisfit =
  /** The plan has a runway that the field doesn't. */
  | { readonly kind: 'runway-missing'; readonly runway: string }
  /** The field has it, but so far beside where the plan has it that ways would miss it, metres. */
  | { readonly kind: 'runway-beside'; readonly runway: string; readonly offM: number };

/** The field with the plan, or why it can't have it. */
export type WithPlan =
  | { readonly field: Field; readonly misfit: null }
  | { readonly field: null; readonly misfit: PlanMisfit };

/** Two fields nearer than this may be one, metres. */
const NEAR_M = 3000;

/** Whether two fields may be the same one: they have one code, or lie within 3 km. */
export function mayBeOne(
  one: { readonly code: string; readonly place: Place },
  other: { readonly code: string; readonly place: Place },
): boolean {
  const apartM = lineBetween(one.place, other.place)?.distanceM ?? Number.POSITIVE_INFINITY;
  // A code is used twice in the world, and a plan from the other end of it is of no use.
  return apartM <= NEAR_M || (one.code === other.code && apartM <= 3 * NEAR_M);
}

/** Runways whose directions differ by less than this are one if they lie on each other, degrees. */
const ALIKE_DEG = 5;

/** Further than this beside each other they are two runways, metres: half the least of parallels. */
const BESIDE_M = 100;

/** A way counts as leading on to a runway within this of its edge, metres. */
const REACH_M = 10;

/**
 * A field with the taxi plan of another. Its runways, radio and everything else stay as they are;
 * what the plan says of runway ends is said in the field's numbers, which may be newer or older.
 */
export function withPlan(field: Field, planned: Field): WithPlan {
  const shift = planPoint(field.place, planned.place) ?? { eastM: 0, northM: 0 };
  const designators = new Map<Designator, Designator>();
  const names = new Map<string, string>();
  for (const strip of stripsOf(planned)) {
    const there = stripsOf(field).flatMap((own) => {
      const offM = besideM(own, strip, shift);
      return offM === null ? [] : [{ own, offM }];
    });
    const [nearest] = there.sort((a, b) => a.offM - b.offM);
    if (nearest === undefined) {
      return { field: null, misfit: { kind: 'runway-missing', runway: strip.name } };
    }
    const { own, offM } = nearest;
    if (offM > own.widthM / 2 + REACH_M) {
      return { field: null, misfit: { kind: 'runway-beside', runway: own.name, offM } };
    }
    for (const end of strip.ends) {
      const same = own.ends.find(
        (one) => Math.abs(turnDeg(one.headingTrueDeg - end.headingTrueDeg)) < 90,
      );
      if (same !== undefined) designators.set(end.designator, same.designator);
    }
    const [one, other] = strip.ends.map(({ designator }) => designator);
    names.set(`${one}/${other}`, own.name).set(`${other}/${one}`, own.name);
  }
  const { nodes, edges, hotSpots } = planned.taxi;
  const moved = <T extends { xM: number; yM: number }>(point: T): T => ({
    ...point,
    xM: decimetre(point.xM + shift.eastM),
    yM: decimetre(point.yM + shift.northM),
  });
  const taxi: Field['taxi'] = {
    ...planned.taxi,
    nodes: nodes.map((node) => ({
      ...moved(node),
      ...(node.ends && { ends: node.ends.map((end) => designators.get(end) ?? end) }),
    })),
    edges: edges.map((edge) => ({
      ...edge,
      ...(edge.on === 'runway' && { name: names.get(edge.name) ?? edge.name }),
      ...(edge.crosses !== undefined && { crosses: names.get(edge.crosses) ?? edge.crosses }),
    })),
    ...(hotSpots && { hotSpots: hotSpots.map(moved) }),
  };
  return { field: { ...field, taxi }, misfit: null };
}

/**
 * How far beside a runway another lies, at the worse of its ends, metres; null if they point
 * elsewhere, lie further apart than parallels do, or one lies wholly beyond the other.
 */
function besideM(own: RunwayStrip, other: RunwayStrip, shift: PlanPoint): number | null {
  const [from] = own.ends;
  const [one] = other.ends;
  const turn = Math.abs(turnDeg(from.headingTrueDeg - one.headingTrueDeg));
  if (Math.min(turn, 180 - turn) > ALIKE_DEG) return null;
  const seen = other.ends.map(({ at }) =>
    seenFrom(own, from.designator, {
      eastM: at.eastM + shift.eastM,
      northM: at.northM + shift.northM,
    }),
  );
  const along = seen.map(({ alongM }) => alongM);
  if (Math.max(...along) < 0 || Math.min(...along) > own.lengthM) return null;
  const offM = Math.max(...seen.map(({ rightM }) => Math.abs(rightM)));
  return offM > BESIDE_M ? null : offM;
}
