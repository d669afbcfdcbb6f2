/**
 * Wind along and across a runway.
 *
 * Angles here are how far the wind's direction lies clockwise of the runway's heading, degrees:
 * 0 is a pure headwind, 90 a pure crosswind from the right.
 */

import { cosDeg, sinDeg } from '../angle';

// Adding 0 turns the −0 of a calm into 0, which would be shown with its sign.

/** Headwind, kt; negative is a tailwind. FAA-H-8083-25B, ch. 11: V cos α. */
export const headwindKt = (speedKt: number, angleDeg: number): number =>
  speedKt * cosDeg(angleDeg) + 0;

/** Crosswind, kt; positive from the right. FAA-H-8083-25B, ch. 11: V sin α. */
export const crosswindKt = (speedKt: number, angleDeg: number): number =>
  speedKt * sinDeg(angleDeg) + 0;

/**
 * The least cosine over the angles within `halfDeg` of `middleDeg`: the runway component of 1 kt
 * where it helps least. `middleDeg` 0 to 180, as cosine does not tell left from right.
 */
export const leastAlong = (middleDeg: number, halfDeg: number): number =>
  // Cosine falls all the way to 180, so the least is at the far side of the sector, or at 180.
  cosDeg(Math.min(180, middleDeg + halfDeg));

/**
 * The greatest sine, either way, over the angles within `halfDeg` of `middleDeg`: the cross
 * component of 1 kt where it pushes most. `middleDeg` 0 to 180, as for {@link leastAlong}.
 */
export function mostAcross(middleDeg: number, halfDeg: number): number {
  const first = middleDeg - halfDeg;
  const last = middleDeg + halfDeg;
  // A peak at 90 (or at 270 or −90, round the back) may lie inside the sector.
  if ((first <= 90 && last >= 90) || last >= 270 || first <= -90) return 1;
  return Math.max(Math.abs(sinDeg(first)), Math.abs(sinDeg(last)));
}
