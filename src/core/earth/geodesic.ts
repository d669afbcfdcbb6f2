/**
 * Distances and directions over the WGS 84 ellipsoid.
 *
 * T. Vincenty, "Direct and inverse solutions of geodesics on the ellipsoid with application of
 * nested equations", Survey Review XXIII (176), April 1975: the inverse formula, equations 3 and 4
 * and 13 to 21. Good to a millimetre wherever it settles, which is everywhere but between points
 * nearly opposite each other on the globe.
 */

import { type TrueDeg, trueDeg, wrapDeg } from '../angle';
import {
  arcCorrection,
  arcSeries,
  F,
  longitudeSeries,
  RADIANS_PER_DEGREE,
  reducedLatitude,
} from './ellipsoid';
import type { Place } from './place';

/** The shortest line from one place to another. */
export interface Line {
  readonly distanceM: number;
  /** The direction in which it sets out; null where both places are the same. */
  readonly azimuth: TrueDeg | null;
}

/** A change of longitude below this, radians, no longer moves the answer by a micrometre. */
const SETTLED = 1e-13;
/** Short lines settle within five rounds; what has not after this many never will. */
const MOST_ROUNDS = 100;

/**
 * The shortest line between two places: its length in metres and the direction in which it sets
 * out. Null where the places lie so nearly opposite each other that the iteration does not settle.
 */
export function lineBetween(from: Place, to: Place): Line | null {
  // The shorter way round, so that a line may cross the date line.
  const L = (180 - wrapDeg(180 - (to.lonDeg - from.lonDeg))) * RADIANS_PER_DEGREE;
  const [sinU1, cosU1] = reducedLatitude(from.latDeg);
  const [sinU2, cosU2] = reducedLatitude(to.latDeg);

  let lambda = L;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const sinLambda = Math.sin(lambda);
    const cosLambda = Math.cos(lambda);
    // The two sides of the auxiliary triangle: their ratio is the azimuth's tangent (20).
    const across = cosU2 * sinLambda;
    const along = cosU1 * sinU2 - sinU1 * cosU2 * cosLambda;
    const sinSigma = Math.hypot(across, along); // (14)
    if (sinSigma === 0) return { distanceM: 0, azimuth: null };
    const cosSigma = sinU1 * sinU2 + cosU1 * cosU2 * cosLambda; // (15)
    const sigma = Math.atan2(sinSigma, cosSigma); // (16)
    const sinAlpha = (cosU1 * across) / sinSigma; // (17)
    const cosSqAlpha = 1 - sinAlpha ** 2;
    // (18); a line along the equator has no vertex to measure from, and the term vanishes.
    const cos2SigmaM = cosSqAlpha === 0 ? 0 : cosSigma - (2 * sinU1 * sinU2) / cosSqAlpha;
    const C = longitudeSeries(cosSqAlpha); // (10)
    const before = lambda;
    lambda =
      L +
      (1 - C) *
        F *
        sinAlpha *
        (sigma + C * sinSigma * (cos2SigmaM + C * cosSigma * (2 * cos2SigmaM ** 2 - 1))); // (11)
    // Past the opposite meridian it would settle on a line that is not the shortest.
    if (Math.abs(lambda) > Math.PI + SETTLED) return null;
    if (Math.abs(lambda - before) < SETTLED) {
      const [metresPerRadian, k] = arcSeries(cosSqAlpha); // (3), (4)
      const deltaSigma = arcCorrection(k, sinSigma, cosSigma, cos2SigmaM); // (6)
      return {
        distanceM: metresPerRadian * (sigma - deltaSigma), // (19)
        azimuth: trueDeg(Math.atan2(across, along) / RADIANS_PER_DEGREE),
      };
    }
  }
  return null;
}
