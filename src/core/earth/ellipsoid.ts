/** The WGS 84 ellipsoid, and what both of Vincenty's formulas share. */

/** Semi-major axis, metres. NIMA TR8350.2, table 3.1. */
export const A = 6378137;
/** Flattening. NIMA TR8350.2, table 3.1. */
export const F = 1 / 298.257223563;
/** Semi-minor axis, metres: a (1 − f). */
export const B = A * (1 - F);

export const RADIANS_PER_DEGREE = Math.PI / 180;

/** Sine and cosine of the latitude on the auxiliary sphere: tan U = (1 − f) tan φ. */
export function reducedLatitude(latDeg: number): readonly [sin: number, cos: number] {
  const U = Math.atan((1 - F) * Math.tan(latDeg * RADIANS_PER_DEGREE));
  return [Math.sin(U), Math.cos(U)];
}

/** How an arc on the auxiliary sphere is scaled to metres along the line, b A, and B: Vincenty (3) and (4). */
export function arcSeries(cosSqAlpha: number): readonly [metresPerRadian: number, k: number] {
  const uSq = (cosSqAlpha * (A ** 2 - B ** 2)) / B ** 2;
  const scale = 1 + (uSq / 16384) * (4096 + uSq * (-768 + uSq * (320 - 175 * uSq))); // (3)
  const k = (uSq / 1024) * (256 + uSq * (-128 + uSq * (74 - 47 * uSq))); // (4)
  return [B * scale, k];
}

/** Δσ, what the arc differs by from its first guess: Vincenty (6). */
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

/** How longitude on the sphere and on the ellipsoid differ, C: Vincenty (10). */
export const longitudeSeries = (cosSqAlpha: number): number =>
  (F / 16) * cosSqAlpha * (4 + F * (4 - 3 * cosSqAlpha));
