/** Where a field's runways lie on a flat plan, for drawing them. */

import { degreesOf } from '../angle';
import { planPoint } from '../earth/planPoint';
import { drawnWidthM } from './drawnWidth';
import { type End, endsOf } from './ends';
import type { Designator, Field } from './field';

export interface PlanRunway {
  readonly ends: readonly [PlanEnd, PlanEnd];
  /** Its middle, metres from the middle of all runways. */
  readonly eastM: number;
  readonly northM: number;
  readonly lengthM: number;
  readonly widthM: number;
}

export interface PlanEnd {
  readonly designator: Designator;
  readonly headingTrueDeg: number;
}

const plans = new WeakMap<Field, readonly PlanRunway[]>();

/** The runways of a field on a flat plan. Computed once per field. */
export function runwayPlan(field: Field): readonly PlanRunway[] {
  const before = plans.get(field);
  if (before !== undefined) return before;
  const ends = endsOf(field);
  const placed = field.runways.flatMap((runway) => {
    const one = ends.find((end) => end.given === runway.ends[0]);
    const other = ends.find((end) => end.given === runway.ends[1]);
    const from = planPoint(field.place, runway.ends[0].at);
    const to = planPoint(field.place, runway.ends[1].at);
    // Such a runway has no place on a plan; endsOf has already refused its field.
    if (!one || !other || !from || !to) return [];
    return {
      ends: [planEnd(one), planEnd(other)] as const,
      eastM: (from.eastM + to.eastM) / 2,
      northM: (from.northM + to.northM) / 2,
      lengthM: one.lengthM,
      widthM: drawnWidthM(runway),
    };
  });
  const mean = (of: 'eastM' | 'northM') =>
    placed.reduce((sum, runway) => sum + runway[of], 0) / placed.length;
  const [east, north] = [mean('eastM'), mean('northM')];
  const plan = placed.map((runway) => ({
    ...runway,
    eastM: runway.eastM - east,
    northM: runway.northM - north,
  }));
  plans.set(field, plan);
  return plan;
}

const planEnd = ({ designator, heading }: End): PlanEnd => ({
  designator,
  headingTrueDeg: degreesOf(heading),
});
