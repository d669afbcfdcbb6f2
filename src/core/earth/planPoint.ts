/** Places on a flat plan. */

import { cosDeg, degreesOf, sinDeg } from '../angle';
import { lineBetween } from './geodesic';
import type { Place } from './place';

/** A position on a flat plan around a reference point, metres. */
export interface PlanPoint {
  readonly eastM: number;
  readonly northM: number;
}

/** A plan is drawn to a tenth of a metre; −0 becomes 0, because a file wouldn't preserve it. */
export const decimetre = (metres: number): number => Math.round(metres * 10) / 10 + 0;

/**
 * A place on a flat plan around `reference`, metres east and north: the azimuthal equidistant
 * projection, which preserves distance and direction from the reference. Between any two points
 * within 10 km of it, lengths are true to a centimetre. J. P. Snyder, Map Projections: A Working
 * Manual, USGS PP 1395 (1987), ch. 25. Null if {@link lineBetween} has no answer.
 */
export function planPoint(reference: Place, place: Place): PlanPoint | null {
  const line = lineBetween(reference, place);
  if (line === null) return null;
  if (line.azimuth === null) return { eastM: 0, northM: 0 };
  return {
    eastM: line.distanceM * sinDeg(degreesOf(line.azimuth)),
    northM: line.distanceM * cosDeg(degreesOf(line.azimuth)),
  };
}
