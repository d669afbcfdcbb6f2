/** Variation, the sun, the air, distances. */

export { degreesWritten } from './degreesWritten';
export { type FieldModel, type FieldModelName, fieldModelFor } from './fieldModel';
export { lineBetween } from './geodesic';
export type { LowSun } from './lowSun';
export type { Place } from './place';
export { LONGEST_PLACES, type PlaceProblem, readPlaces } from './readPlaces';
export type { Spell, SunDay } from './sun';
export { variationDeg } from './variation';
export type { VariationTable } from './variationTable';
