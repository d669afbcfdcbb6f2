/** A field's runways in the frame of its taxi plan: metres east and north of the reference point. */

import { drawnWidthM } from '../airfield/drawnWidth';
import { type End, endsOf } from '../airfield/ends';
import type { Designator, Field } from '../airfield/field';
import { degreesOf } from '../angle';
import { type PlanPoint, planPoint } from '../earth/planPoint';

/** One end of a runway on the plan. */
export interface StripEnd {
  readonly designator: Designator;
  /** Where its pavement begins, and TORA with it. */
  readonly at: PlanPoint;
  readonly headingTrueDeg: number;
  readonly displacedM: number;
  readonly toraM: number;
}

/** A runway on the plan. */
export interface RunwayStrip {
  /** Lower number first: `10/28`. */
  readonly name: string;
  readonly ends: readonly [StripEnd, StripEnd];
  readonly lengthM: number;
  readonly widthM: number;
}

const strips = new WeakMap<Field, readonly RunwayStrip[]>();

/** The runways of a field, in document order. Computed once per field. */
export function stripsOf(field: Field): readonly RunwayStrip[] {
  const before = strips.get(field);
  if (before !== undefined) return before;
  const ends = endsOf(field);
  const laid = field.runways.flatMap((runway): RunwayStrip[] => {
    const one = ends.find(({ given }) => given === runway.ends[0]);
    const other = ends.find(({ given }) => given === runway.ends[1]);
    const [from, to] = [one && stripEnd(field, one), other && stripEnd(field, other)];
    if (!one || !from || !to) return [];
    const lengthM = Math.hypot(to.at.eastM - from.at.eastM, to.at.northM - from.at.northM);
    return [{ name: one.runwayName, ends: [from, to], lengthM, widthM: drawnWidthM(runway) }];
  });
  strips.set(field, laid);
  return laid;
}

function stripEnd(field: Field, { designator, given, heading }: End): StripEnd | null {
  const at = planPoint(field.place, given.at);
  if (at === null) return null;
  const { displacedM, toraM } = given;
  return { designator, at, headingTrueDeg: degreesOf(heading), displacedM, toraM };
}

/**
 * A point relative to a runway's end: along the runway from the start of its pavement, and to its
 * right, metres.
 */
export function seenFrom(strip: RunwayStrip, end: Designator, point: PlanPoint) {
  const [from, to] = strip.ends[0].designator === end ? strip.ends : [strip.ends[1], strip.ends[0]];
  const east = (to.at.eastM - from.at.eastM) / strip.lengthM;
  const north = (to.at.northM - from.at.northM) / strip.lengthM;
  const [x, y] = [point.eastM - from.at.eastM, point.northM - from.at.northM];
  return { alongM: x * east + y * north, rightM: x * north - y * east };
}

/** A point this far beside a runway's edge, or beyond its end, still counts as on it, metres. */
const BESIDE_M = 10;

/** Whether a point lies on a runway. */
export function isOn(strip: RunwayStrip, point: PlanPoint): boolean {
  const { alongM, rightM } = seenFrom(strip, strip.ends[0].designator, point);
  return (
    Math.abs(rightM) <= strip.widthM / 2 + BESIDE_M &&
    alongM >= -BESIDE_M &&
    alongM <= strip.lengthM + BESIDE_M
  );
}

/**
 * How far along the way from one point to another a runway's centreline is crossed, 0 to 1; null if
 * it isn't.
 */
export function crossedAt(strip: RunwayStrip, from: PlanPoint, to: PlanPoint): number | null {
  const first = seenFrom(strip, strip.ends[0].designator, from);
  const last = seenFrom(strip, strip.ends[0].designator, to);
  if (first.rightM * last.rightM >= 0) return null;
  const share = first.rightM / (first.rightM - last.rightM);
  const alongM = first.alongM + share * (last.alongM - first.alongM);
  return alongM >= 0 && alongM <= strip.lengthM ? share : null;
}
