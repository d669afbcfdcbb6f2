/**
 * Wind along and across a runway.
 *
 * α is how far the wind's direction lies clockwise of the runway's heading: 0 is a pure headwind,
 * 90° a pure crosswind from the right. Headwind = V cos α, crosswind = V sin α: FAA-H-8083-25B, ch.
 * 11. The ring needs this for every end at every degree, so the cosine and sine of each direction
 * are taken once, and those of α follow from the difference formulas.
 */

import { cosDeg, degreesOf, sinDeg, type TrueDeg } from '../angle';

/** A direction from true north, as its cosine and sine. */
export interface Bearing {
  readonly cos: number;
  readonly sin: number;
}

/** A direction as its cosine and sine. */
export const bearingOf = (direction: TrueDeg): Bearing => ({
  cos: cosDeg(degreesOf(direction)),
  sin: sinDeg(degreesOf(direction)),
});

/** cos α: the headwind in a wind of 1 kt; negative is a tailwind. */
export const along = (wind: Bearing, runway: Bearing): number =>
  wind.cos * runway.cos + wind.sin * runway.sin;

/** sin α: the crosswind in a wind of 1 kt; positive from the right. */
export const across = (wind: Bearing, runway: Bearing): number =>
  wind.sin * runway.cos - wind.cos * runway.sin;

/**
 * The least headwind of a 1 kt wind in a sector, from the headwind and crosswind at the sector's
 * middle: cos(β + h), with β the angle between runway and middle and h half the sector's width; −1
 * if the sector contains the opposite direction, β + h ≥ 180°.
 */
export const leastAlong = (alongMiddle: number, acrossMiddle: number, half: Bearing): number =>
  alongMiddle <= -half.cos ? -1 : alongMiddle * half.cos - Math.abs(acrossMiddle) * half.sin;

/**
 * The greatest crosswind, from either side, of a 1 kt wind in a sector, from the same inputs: the
 * greater of |sin(β ± h)|; 1 if the sector contains a direction straight across, |90° − β| ≤ h.
 */
export function mostAcross(alongMiddle: number, acrossMiddle: number, half: Bearing): number {
  const sin = Math.abs(acrossMiddle);
  return sin >= half.cos ? 1 : sin * half.cos + Math.abs(alongMiddle) * half.sin;
}
