/** First stage: what the day is like at the field. Times are held, never ages. */

import type { Designator, Field, Surface } from '../airfield/field';
import type { LowSun } from '../earth/lowSun';
import type { SunFacts } from '../earth/sun';
import type { VariationTable } from '../earth/variationTable';
import { type Figure, known, unknown } from '../figure';
import { M_PER_FT } from '../units';
import type { AirBrief } from './air';
import type { WeatherBrief } from './weather';

/** What the day is like. */
export interface Conditions {
  readonly surface: Surface;
  /** Magnetic variation at the field, east positive. */
  readonly variation: Figure<'deg'>;
  /** Null while the sun is on its way, or without a field. */
  readonly sun: SunFacts | null;
  /** For each end, a low sun ahead; empty until that is worked out. */
  readonly lowSunOn: ReadonlyMap<Designator, LowSun>;
  /** Whether someone controls the field; null without a field. */
  readonly controlled: boolean | null;
  /** What the report in use says of the day; null without one. */
  readonly weather: WeatherBrief | null;
  /** When that report was issued, by the sortie's clock, ms; null where it is not known. */
  readonly issuedMs: number | null;
  /** Null without a field, and before the physics is there. */
  readonly air: AirBrief | null;
}

/** Variation as the pilot wants it, else by the model of the date. */
export function variationFigure(
  own: number | null,
  field: Field | null,
  at: Date,
  model: VariationTable | null,
): Figure<'deg'> {
  if (own !== null) {
    return known(own, 'deg', { formula: 'as-set', inputs: { set: own }, source: 'pilot' });
  }
  if (field === null) return unknown('no-field');
  if (model === null || !(at >= model.from && at <= model.until)) {
    return unknown('no-magnetic-model');
  }
  // Taken at the beginning of the day, so that the date that is shown gives the figure that is shown.
  const date = at.toISOString().slice(0, 10);
  const { latDeg, lonDeg, elevationFt } = field.place;
  const elevationM = elevationFt * M_PER_FT;
  return known(model.variationDeg({ latDeg, lonDeg, elevationM }, new Date(date)), 'deg', {
    formula: 'variation',
    inputs: { latDeg, lonDeg, elevationM, date },
    source: model.name,
  });
}

/** Whether someone controls the field: it has a tower or a ground station. */
export const isControlled = ({ radio }: Field): boolean =>
  radio.some(({ service }) => service === 'tower' || service === 'ground');
