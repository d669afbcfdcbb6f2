/**
 * Distances and directions over the WGS 84 ellipsoid.
 *
 * T. Vincenty, "Direct and inverse solutions of geodesics on the ellipsoid with application of
 * nested equations", Survey Review XXIII (176), April 1975: the inverse formula, equations 3 and 4
 * and 13 to 21. Accurate to a millimetre wherever it converges, which is everywhere except between
 * nearly antipodal points.
 */

import { type TrueDeg, trueDeg, wrapDeg } from '../angle';
import { RADIANS_PER_DEGREE } from '../units';
import type { Place } from './place';

/** The shortest line from one place to another. */
export interface GeodesicLine {
  readonly distanceM: number;
  /** The direction in which it sets out; null if both places are the same. */
  readonly azimuth: TrueDeg | null;
}

/** Semi-major axis, metres. NIMA TR8350.2, table 3.1. */
const A = 6378137;
/** Flattening. NIMA TR8350.2, table 3.1. */
export const F = 1 / 298.257223563;
/** Semi-minor axis, metres: a (1 − f). */
const B = A * (1 - F);

/** A change of longitude below this, radians, no longer moves the answer by a micrometre. */
const SETTLED = 1e-13;
/** Short lines converge within five rounds; what hasn't after this many never will. */
const MOST_ROUNDS = 100;

/**
 * The shortest line between two places: its length in metres and the direction in which it sets
 * out. Null if the places are so nearly antipodal that the iteration doesn't converge.
 */
export function lineBetween(from: Place, to: Place): GeodesicLine | null {
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
    // Past the opposite meridian it would converge to a line that isn't the shortest.
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

/** Sine and cosine of the latitude on the auxiliary sphere: tan U = (1 − f) tan φ. */
export function reducedLatitude(latDeg: number): readonly [sin: number, cos: number] {
  const U = Math.atan((1 - F) * Math.tan(latDeg * RADIANS_PER_DEGREE));
  return [Math.sin(U), Math.cos(U)];
}

/**
 * How an arc on the auxiliary sphere scales to metres along the line, b A, and B: Vincenty (3) and
 * (4).
 */
export function arcSeries(cosSqAlpha: number): readonly [metresPerRadian: number, k: number] {
  const uSq = (cosSqAlpha * (A ** 2 - B ** 2)) / B ** 2;
  const scale = 1 + (uSq / 16384) * (4096 + uSq * (-768 + uSq * (320 - 175 * uSq))); // (3)
  const k = (uSq / 1024) * (256 + uSq * (-128 + uSq * (74 - 47 * uSq))); // (4)
  return [B * scale, k];
}

/** Δσ, the arc's correction: Vincenty (6). */
export const arcCorrection = (
  k: number,
  sinSigma: number,
  cosSigma: number,
  cos2SigmaM: number,
): number =>
  k *
  sinSigma *
  (cos2SigmaM +
    (k / 4) *
      (cosSigma * (2 * cos2SigmaM ** 2 - 1) -
        (k / 6) * cos2SigmaM * (4 * sinSigma ** 2 - 3) * (4 * cos2SigmaM ** 2 - 3)));

/** The difference between longitude on the sphere and on the ellipsoid, C: Vincenty (10). */
export const longitudeSeries = (cosSqAlpha: number): number =>
  (F / 16) * cosSqAlpha * (4 + F * (4 - 3 * cosSqAlpha));
