/**
 * The directions a wind may come from: its envelope.
 *
 * A mean direction is a ten-minute average rounded to 10°; the swing beside it is what happened
 * around that average. The worst crosswind and tailwind are taken over all of it.
 */

import { wrapDeg } from '../angle';
import type { Wind } from './report';

/** The directions a wind may come from. Its kind determines what can be said about a runway. */
export type WindEnvelope =
  /** No wind: every component is zero in any direction. */
  | { readonly kind: 'calm' }
  /**
   * From `fromDeg` (0 inclusive to 360 exclusive) clockwise through `widthDeg` (0 inclusive to 360
   * exclusive), both ends included. A width of 0 is one direction. Measured from the wind's own
   * north.
   */
  | { readonly kind: 'sector'; readonly fromDeg: number; readonly widthDeg: number }
  /** The whole circle: `VRB`, or a speed without a direction. */
  | { readonly kind: 'any' }
  /** No speed was reported, so there is no wind to judge a runway by, at most a direction. */
  | { readonly kind: 'speed-unknown' };

/** How far clockwise it is from one direction to another, 0 inclusive to 360 exclusive, degrees. */
export const clockwiseDeg = (fromDeg: number, toDeg: number): number => wrapDeg(toDeg - fromDeg);

/** Whether a direction lies in a swing, ends included. WMO-No. 306 Vol. I.1, FM 15, 15.5. */
export function isInSwing(deg: number, [first, second]: readonly [number, number]): boolean {
  return clockwiseDeg(first, deg) <= clockwiseDeg(first, second);
}

/**
 * The envelope of a wind: the smallest clockwise sector that contains its swing and its mean.
 *
 * - A mean outside its swing widens the sector on the side that needs least.
 * - A swing beside `VRB` or a missing direction doesn't narrow the circle: the station didn't trust
 *   any direction, and the circle is the cautious answer.
 * - A speed of zero is calm unless there is a gust, or the speed is only a minimum (`P00KT`).
 */
export function envelopeOf(wind: Wind): WindEnvelope {
  if (wind.speedKt === null) return { kind: 'speed-unknown' };
  const unbounded = wind.speedIsMinimum || wind.gustIsMinimum;
  if (wind.speedKt === 0 && !wind.gustKt && !unbounded) return { kind: 'calm' };
  // A gust out of a calm written 000 has no direction: north would be an invention.
  if (wind.variable || wind.fromDeg === null || wind.fromDeg === 0) return { kind: 'any' };

  const mean = wrapDeg(wind.fromDeg);
  if (wind.sectorDeg === null) return { kind: 'sector', fromDeg: mean, widthDeg: 0 };

  const [first, second] = wind.sectorDeg;
  if (isInSwing(mean, wind.sectorDeg)) return sectorFrom(first, second);
  const on = sectorFrom(first, mean);
  const back = sectorFrom(mean, second);
  return on.widthDeg <= back.widthDeg ? on : back;
}

/** The sector from one direction clockwise to another. */
function sectorFrom(fromDeg: number, toDeg: number) {
  return {
    kind: 'sector',
    fromDeg: wrapDeg(fromDeg),
    widthDeg: clockwiseDeg(fromDeg, toDeg),
  } as const;
}
