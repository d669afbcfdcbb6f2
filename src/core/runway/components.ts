/**
 * Wind along and across a runway.
 *
 * α is how far the wind's direction lies clockwise of the runway's heading: 0 is a pure headwind,
 * 90° a pure crosswind from the right. Headwind = V cos α, crosswind = V sin α: FAA-H-8083-25B,
 * ch. 11. The ring asks this for every end at every degree, so directions are taken as cosine and
 * sine once, and those of α follow by the difference formulas.
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
 * The least headwind that a wind of 1 kt has in a sector: cos(β + h), β the angle between the
 * runway and the sector's middle, h half the sector's width; −1 where the sector holds the opposite
 * direction, β + h ≥ 180°.
 */
export function leastAlong(middle: Bearing, half: Bearing, runway: Bearing): number {
  const cos = along(middle, runway);
  const sin = Math.abs(across(middle, runway));
  return cos <= -half.cos ? -1 : cos * half.cos - sin * half.sin;
}

/**
 * The greatest crosswind, from either side, that a wind of 1 kt has in a sector: the greater of
 * |sin(β ± h)|; 1 where the sector holds a direction straight across, |90° − β| ≤ h.
 */
export function mostAcross(middle: Bearing, half: Bearing, runway: Bearing): number {
  const cos = Math.abs(along(middle, runway));
  const sin = Math.abs(across(middle, runway));
  return sin >= half.cos ? 1 : sin * half.cos + cos * half.sin;
}
