/**
 * The magnetic field as a sum of spherical harmonics: the one synthesis behind every model.
 *
 * Sources: WMM2025 Technical Report (NOAA/BGS 2025), relevant model equations; Alken et al. 2021,
 * doi 10.1186/s40623-020-01288-x, equation 1. Both use Schmidt semi-normalised functions and the
 * reference radius 6371.2 km.
 */

import { RADIANS_PER_DEGREE } from '../units';

/** Geomagnetic reference radius a, km. Alken et al. 2021. */
const REFERENCE_RADIUS_KM = 6371.2;

/** A point by its direction from the earth's centre. */
export interface Geocentric {
  readonly sinLat: number;
  /** Never negative. */
  readonly cosLat: number;
  readonly lonDeg: number;
  readonly radiusKm: number;
}

/** A magnetic field in nanotesla. */
export interface FieldVector {
  readonly northNt: number;
  readonly eastNt: number;
  readonly downNt: number;
}

/** The index of g(n, 0) in g10, g11, h11, g20, ...; g(n, m) is 2m − 1 further, h(n, m) 2m. */
const zonalIndex = (n: number) => n * n - 1;

/**
 * The field at a geocentric point; north, east and down are geocentric too, so that down points at
 * the earth's centre.
 *
 * `coefficients` holds g10, g11, h11, g20, ... in nT up to some degree N, N (N + 2) numbers.
 *
 * With θ the colatitude, P(n, m) is carried as Q = P / sin θ for m ≥ 1. Q obeys the same recursion,
 * the east component and dP/dθ need Q itself, and nothing is divided by sin θ: the poles need no
 * special case.
 */
export function fieldAtGeocentric(coefficients: Float64Array, point: Geocentric): FieldVector {
  const degree = Math.round(Math.sqrt(coefficients.length + 1)) - 1;
  const cos = point.sinLat; // cos θ
  const sin = point.cosLat; // sin θ
  const ratio = REFERENCE_RADIUS_KM / point.radiusKm;
  let north = 0;
  let east = 0;
  let up = 0;

  // m = 0: P(n) and dP(n)/dθ by Bonnet's recursion and its derivative.
  let power = ratio * ratio; // (a / r)^(n + 2)
  let p = 1;
  let pBefore = 0;
  let slope = 0;
  let slopeBefore = 0;
  for (let n = 1; n <= degree; n++) {
    const pNext = ((2 * n - 1) * cos * p - (n - 1) * pBefore) / n;
    const slopeNext = ((2 * n - 1) * (cos * slope - sin * p) - (n - 1) * slopeBefore) / n;
    pBefore = p;
    p = pNext;
    slopeBefore = slope;
    slope = slopeNext;
    power *= ratio;
    const g = power * (coefficients[zonalIndex(n)] ?? 0);
    north += g * slope;
    up += g * (n + 1) * p;
  }

  // m ≥ 1, one column of the triangle at a time, from n = m downwards.
  const cosLon = Math.cos(point.lonDeg * RADIANS_PER_DEGREE);
  const sinLon = Math.sin(point.lonDeg * RADIANS_PER_DEGREE);
  let cosM = 1; // cos mλ
  let sinM = 0; // sin mλ
  let sectoral = 1; // Q(m, m)
  let sectoralPower = ratio * ratio; // (a / r)^(m + 2)
  for (let m = 1; m <= degree; m++) {
    const cosMBefore = cosM;
    cosM = cosMBefore * cosLon - sinM * sinLon;
    sinM = cosMBefore * sinLon + sinM * cosLon;
    if (m > 1) sectoral *= Math.sqrt((2 * m - 1) / (2 * m)) * sin;
    sectoralPower *= ratio;

    power = sectoralPower;
    let q = sectoral;
    let qBefore = 0;
    let root = 0; // √(n² − m²)
    for (let n = m; n <= degree; n++) {
      if (n > m) {
        const rootNext = Math.sqrt(n * n - m * m);
        const qNext = ((2 * n - 1) * cos * q - root * qBefore) / rootNext;
        qBefore = q;
        q = qNext;
        root = rootNext;
        power *= ratio;
      }
      const at = zonalIndex(n) + 2 * m;
      const g = coefficients[at - 1] ?? 0;
      const h = coefficients[at] ?? 0;
      const along = power * (g * cosM + h * sinM);
      north += along * (n * cos * q - root * qBefore);
      east += power * m * (g * sinM - h * cosM) * q;
      up += along * (n + 1) * sin * q;
    }
  }
  return { northNt: north, eastNt: east, downNt: -up };
}
