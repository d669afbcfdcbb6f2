/** Variation, the sun, the air, distances. */

export { type FieldModel, type FieldModelName, fieldModelFor } from './fieldModel';
export { lineBetween } from './geodesic';
export type { LowSun } from './lowSun';
export type { Place } from './place';
export { readCoordinate } from './readCoordinate';
export type { Spell, SunDay } from './sun';
export { variationDeg } from './variation';
export type { VariationTable } from './variationTable';
