/**
 * Directions, each tied to the north it is measured from.
 *
 * A direction is a plain number at run time but an opaque type at compile time: neither `-` nor `<`
 * nor a function that expects the other north accepts it, so a magnetic heading can never be
 * subtracted from a true wind by accident. The only subtraction is {@link relativeDeg}.
 *
 * At run time north is 0, and so falsy: compare a direction that may be missing with `null`.
 */

import { RADIANS_PER_DEGREE } from './units';

declare const north: unique symbol;

/** A direction from true north, 0 inclusive to 360 exclusive, clockwise, in degrees. */
export interface TrueDeg {
  readonly [north]: 'true';
}

/** A direction from magnetic north, 0 inclusive to 360 exclusive, clockwise, in degrees. */
export interface MagneticDeg {
  readonly [north]: 'magnetic';
}

/** Which north a direction is measured from. */
export type North = 'true' | 'magnetic';

/** Normalises degrees to 0 inclusive to 360 exclusive. */
export function wrapDeg(deg: number): number {
  // The second remainder catches −1e-15, which plus 360 is exactly 360 in floating point.
  return ((deg % 360) + 360) % 360;
}

/** Normalises degrees to −180 exclusive to 180 inclusive: a turn, clockwise positive. */
export const turnDeg = (deg: number): number => 180 - wrapDeg(180 - deg);

/** A direction from true north, given in degrees; any number is wrapped. */
export function trueDeg(deg: number): TrueDeg {
  return wrapDeg(deg) as unknown as TrueDeg;
}

/** A direction from magnetic north, given in degrees; any number is wrapped. */
export function magneticDeg(deg: number): MagneticDeg {
  return wrapDeg(deg) as unknown as MagneticDeg;
}

/** The number of degrees in a direction, 0 inclusive to 360 exclusive. */
export function degreesOf(direction: TrueDeg | MagneticDeg): number {
  return direction as unknown as number;
}

/**
 * How far `a` lies clockwise of `b`, in degrees, −180 exclusive to 180 inclusive; negative if it
 * lies anticlockwise. Both must be measured from the same north.
 */
export function relativeDeg(a: TrueDeg, b: TrueDeg): number;
export function relativeDeg(a: MagneticDeg, b: MagneticDeg): number;
export function relativeDeg(a: TrueDeg | MagneticDeg, b: TrueDeg | MagneticDeg): number {
  return turnDeg(degreesOf(a) - degreesOf(b));
}

/** Magnetic = true − variation, variation east positive. ICAO Annex 4; FAA-H-8083-25, ch. 16. */
export function toMagnetic(direction: TrueDeg, variationDeg: number): MagneticDeg {
  return magneticDeg(degreesOf(direction) - variationDeg);
}

/** True = magnetic + variation, variation east positive. ICAO Annex 4; FAA-H-8083-25, ch. 16. */
export function toTrue(direction: MagneticDeg, variationDeg: number): TrueDeg {
  return trueDeg(degreesOf(direction) + variationDeg);
}

/** Cosine of an angle in degrees. */
export const cosDeg = (deg: number): number => Math.cos(deg * RADIANS_PER_DEGREE);

/** Sine of an angle in degrees. */
export const sinDeg = (deg: number): number => Math.sin(deg * RADIANS_PER_DEGREE);
