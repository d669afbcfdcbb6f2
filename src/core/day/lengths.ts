/** Second stage: the lengths that are needed, and how far it is to each end. */

import type { Aircraft } from '../aircraft/aircraft';
import { endsOf } from '../airfield/ends';
import type { Field } from '../airfield/field';
import type { EndsQuestion, LengthNeeded, Purpose } from '../runway/question';
import type { NodeId } from '../taxi/graph';
import type { TaxiRules } from '../taxi/rules';
import type { LateParts } from './sources';

/** The length that is needed on an end, for each purpose. */
export type LengthsNeeded = Readonly<Record<Purpose, LengthNeeded>>;

/**
 * The runs that the aircraft's document gives, on any end and in any wind: less than that no end may
 * offer.
 */
export function bookRuns({ takeoff, landing }: Aircraft): LengthsNeeded {
  return { 'take-off': () => takeoff.runM, landing: () => landing.runM };
}

/** How far it is from where the aircraft stands to the beginning of an end's run. */
export function taxiDistance(
  { taxiDistances }: LateParts['taxi'],
  field: Field,
  from: NodeId,
  rules: TaxiRules,
): NonNullable<EndsQuestion['taxiDistanceM']> {
  const ends = endsOf(field).map(({ designator }) => designator);
  const distances = taxiDistances(field, from, ends, rules);
  return (end) => distances.get(end) ?? null;
}
