/** Magnetic variation with its model loaded, as the day takes it. */

import { type FieldModel, fieldModelFor } from './fieldModel';
import { type ElevatedPlace, variationDeg } from './variation';

/** A model with its tables loaded, valid for its own span of dates. */
export interface VariationTable extends Pick<FieldModel, 'name' | 'from' | 'until'> {
  /** Degrees, east positive. Throws RangeError outside the span, as {@link variationDeg}. */
  variationDeg(place: ElevatedPlace, at: Date): number;
}

/** The table for a moment. Rejects as {@link fieldModelFor}. */
export async function variationTableFor(at: Date): Promise<VariationTable> {
  const model = await fieldModelFor(at);
  const { name, from, until } = model;
  return { name, from, until, variationDeg: (place, when) => variationDeg(place, when, model) };
}
