/**
 * Where a line over the WGS 84 ellipsoid leads.
 *
 * T. Vincenty, "Direct and inverse solutions of geodesics on the ellipsoid with application of
 * nested equations", Survey Review XXIII (176), April 1975: the direct formula, equations 1 to 11.
 */

import { degreesOf, type TrueDeg, wrapDeg } from '../angle';
import { RADIANS_PER_DEGREE } from '../units';
import { arcCorrection, arcSeries, F, longitudeSeries, reducedLatitude } from './geodesic';
import type { Place } from './place';

/** A change of the arc below this, radians, no longer moves the answer by a micrometre. */
const SETTLED = 1e-13;
const MOST_ROUNDS = 20;

/**
 * The place a distance in metres from another, setting out in a direction, along the shortest line.
 * Longitude is −180 to 180.
 */
export function destination(from: Place, azimuth: TrueDeg, distanceM: number): Place {
  const alpha1 = degreesOf(azimuth) * RADIANS_PER_DEGREE;
  const [sinAlpha1, cosAlpha1] = [Math.sin(alpha1), Math.cos(alpha1)];
  const [sinU1, cosU1] = reducedLatitude(from.latDeg);
  const sigma1 = Math.atan2(sinU1, cosU1 * cosAlpha1); // (1)
  const sinAlpha = cosU1 * sinAlpha1; // (2)
  const cosSqAlpha = 1 - sinAlpha ** 2;
  const [metresPerRadian, k] = arcSeries(cosSqAlpha); // (3), (4)

  const guess = distanceM / metresPerRadian;
  let sigma = guess;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const cos2SigmaM = Math.cos(2 * sigma1 + sigma); // (5)
    const next = guess + arcCorrection(k, Math.sin(sigma), Math.cos(sigma), cos2SigmaM); // (6), (7)
    const isSettled = Math.abs(next - sigma) < SETTLED;
    sigma = next;
    if (isSettled) break;
  }

  const [sinSigma, cosSigma] = [Math.sin(sigma), Math.cos(sigma)];
  const cos2SigmaM = Math.cos(2 * sigma1 + sigma);
  const along = sinU1 * sinSigma - cosU1 * cosSigma * cosAlpha1;
  const latitude = Math.atan2(
    sinU1 * cosSigma + cosU1 * sinSigma * cosAlpha1,
    (1 - F) * Math.hypot(sinAlpha, along),
  ); // (8)
  const lambda = Math.atan2(sinSigma * sinAlpha1, cosU1 * cosSigma - sinU1 * sinSigma * cosAlpha1); // (9)
  const C = longitudeSeries(cosSqAlpha); // (10)
  const L =
    lambda -
    (1 - C) *
      F *
      sinAlpha *
      (sigma + C * sinSigma * (cos2SigmaM + C * cosSigma * (2 * cos2SigmaM ** 2 - 1))); // (11)
  return {
    latDeg: latitude / RADIANS_PER_DEGREE,
    lonDeg: wrapDeg(from.lonDeg + L / RADIANS_PER_DEGREE + 180) - 180,
  };
}
