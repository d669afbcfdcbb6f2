/** Second stage: lengths needed, and taxi distances. */

import type { Aircraft } from '../aircraft/aircraft';
import { endsOf } from '../airfield/ends';
import type { Field } from '../airfield/field';
import type { EndsQuestion, LengthNeeded, Purpose } from '../runway/question';
import type { NodeId } from '../taxi/graph';
import type { TaxiRules } from '../taxi/rules';
import type { LateParts } from './sources';

/** The length needed on an end, by purpose. */
export type LengthsNeeded = Readonly<Record<Purpose, LengthNeeded>>;

/**
 * The book's runs, on any end and in any wind: the least any end must offer. Where the document has
 * neither run nor physics no end is long enough, for what is unknown never fits.
 */
export function bookRuns({ takeoff, landing, performance }: Aircraft): LengthsNeeded {
  const needed = (runM: number | undefined) =>
    runM ?? (performance === undefined ? ({ cannot: 'no-performance' } as const) : null);
  return { 'take-off': () => needed(takeoff.runM), landing: () => needed(landing.runM) };
}

/** Taxi distance from the aircraft to the start of an end's run. */
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
