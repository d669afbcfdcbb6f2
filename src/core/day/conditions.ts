/** First stage: conditions at the field. It holds times, never ages. */

import type { Designator, Field, Surface } from '../airfield/field';
import type { LowSun } from '../earth/lowSun';
import type { SunFacts } from '../earth/sun';
import type { VariationTable } from '../earth/variationTable';
import { type Figure, known, unknown } from '../figure';
import { M_PER_FT } from '../units';
import type { AirBrief } from './air';
import type { WeatherBrief } from './weather';

export interface Conditions {
  readonly surface: Surface;
  /** Magnetic variation at the field, east positive. */
  readonly variation: Figure<'deg'>;
  /** Null while the sun's code is loading, or without a field. */
  readonly sun: SunFacts | null;
  /** Ends with a low sun ahead; empty until worked out. */
  readonly lowSunOn: ReadonlyMap<Designator, LowSun>;
  /** Null without a field. */
  readonly controlled: boolean | null;
  /** What the report in use says; null without one. */
  readonly weather: WeatherBrief | null;
  /** When that report was issued, by the sortie's clock, ms; null if unknown. */
  readonly issuedMs: number | null;
  /** Null without a field, and until the physics has loaded. */
  readonly air: AirBrief | null;
}

/** The pilot's own variation, else the model's for the date. */
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
  // At the start of the day, so that the date shown yields the figure shown.
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
