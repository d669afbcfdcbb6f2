/**
 * Magnetic variation: how far magnetic north lies east of true north.
 *
 * Computed from published coefficients; `fieldModel.ts` says which model covers which date.
 */

import { RADIANS_PER_DEGREE } from '../units';
import type { FieldModel } from './fieldModel';
import { type FieldVector, fieldAtGeocentric, type Geocentric } from './harmonics';
import type { Place } from './place';

/** A place and its height. */
export interface ElevatedPlace extends Place {
  /**
   * Metres above sea level, 0 if absent. Used in place of the height above the ellipsoid, which
   * differs by up to 110 m: less than 0.001° of variation except close to the magnetic poles.
   */
  readonly elevationM?: number;
}

/** The magnetic field at a place and a moment. */
export interface MagneticField extends FieldVector {
  /** √(north² + east²), nT: what turns a compass. */
  readonly horizontalNt: number;
  /** Angle from true north to magnetic north, degrees, east positive, −180 to 180. */
  readonly variationDeg: number;
}

/** How far a compass, and so a variation, can be trusted. */
export type CompassZone = 'usable' | 'caution' | 'blackout';

/**
 * Magnetic variation, degrees, east positive, −180 to 180: magnetic = true − variation.
 *
 * Always finite, even at the poles, where "north" is the direction of the meridian given by
 * `lonDeg`. Close to a magnetic pole it means little; check {@link magneticField} for the
 * horizontal field. Throws RangeError for a date outside the span of `tables`, for a latitude
 * beyond a pole, and for a number that isn't finite.
 */
export function variationDeg(place: ElevatedPlace, at: Date, tables: FieldModel): number {
  return magneticField(place, at, tables).variationDeg;
}

/** The magnetic field at a place and a moment, along geodetic north, east and down. Throws as {@link variationDeg}. */
export function magneticField(place: ElevatedPlace, at: Date, tables: FieldModel): MagneticField {
  const { latDeg, lonDeg, elevationM = 0 } = place;
  if (!(Math.abs(latDeg) <= 90 && Number.isFinite(lonDeg) && Number.isFinite(elevationM))) {
    throw new RangeError(`not a place: ${latDeg}, ${lonDeg}, ${elevationM} m`);
  }
  const sinLat = Math.sin(latDeg * RADIANS_PER_DEGREE);
  const cosLat = Math.cos(latDeg * RADIANS_PER_DEGREE);
  const point = geocentric(sinLat, cosLat, lonDeg, elevationM / 1000);
  const towardsCentre = fieldAtGeocentric(tables.coefficientsAt(at), point);

  // Rotate from geocentric to geodetic down. WMM2025 Technical Report.
  const sinTurn = point.sinLat * cosLat - point.cosLat * sinLat;
  const cosTurn = point.cosLat * cosLat + point.sinLat * sinLat;
  const northNt = towardsCentre.northNt * cosTurn - towardsCentre.downNt * sinTurn;
  const downNt = towardsCentre.northNt * sinTurn + towardsCentre.downNt * cosTurn;
  const { eastNt } = towardsCentre;
  return {
    northNt,
    eastNt,
    downNt,
    horizontalNt: Math.sqrt(northNt ** 2 + eastNt ** 2),
    variationDeg: Math.atan2(eastNt, northNt) / RADIANS_PER_DEGREE,
  };
}

/**
 * Whether a compass can be trusted in a horizontal field: not below 2000 nT, with caution below
 * 6000 nT. The blackout and caution zones of NOAA and BGS, State of the Geomagnetic Field.
 */
export function compassZone(horizontalNt: number): CompassZone {
  if (horizontalNt < 2000) return 'blackout';
  return horizontalNt < 6000 ? 'caution' : 'usable';
}

/** WGS 84 semi-major axis, km. NGA.STND.0036. */
const EQUATORIAL_RADIUS_KM = 6378.137;
/** WGS 84 flattening. NGA.STND.0036. */
const FLATTENING = 1 / 298.257223563;
const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);

/** Geodetic to geocentric. WMM2025 Technical Report. */
function geocentric(sinLat: number, cosLat: number, lonDeg: number, heightKm: number): Geocentric {
  // Radius of curvature in the prime vertical.
  const curvatureKm = EQUATORIAL_RADIUS_KM / Math.sqrt(1 - ECCENTRICITY_SQUARED * sinLat ** 2);
  const fromAxisKm = (curvatureKm + heightKm) * cosLat;
  const fromEquatorKm = (curvatureKm * (1 - ECCENTRICITY_SQUARED) + heightKm) * sinLat;
  const radiusKm = Math.sqrt(fromAxisKm ** 2 + fromEquatorKm ** 2);
  return { sinLat: fromEquatorKm / radiusKm, cosLat: fromAxisKm / radiusKm, lonDeg, radiusKm };
}
