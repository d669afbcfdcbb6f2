/** Where a runway lies, by its two ends, or by its middle, bearing and length. */

import { degreesOf, trueDeg } from '../angle';
import { destination } from '../earth/destination';
import { lineBetween } from '../earth/geodesic';
import type { Place } from '../earth/place';
import type { Runway } from './field';

/** A runway by its middle. The bearing is that at the middle, from the first end to the second. */
export interface ByCentre {
  readonly by: 'centre';
  readonly centre: Place;
  readonly bearingTrueDeg: number;
  readonly lengthM: number;
}

/** A runway by where the pavement of each end begins. */
export interface ByEnds {
  readonly by: 'ends';
  readonly ends: readonly [Place, Place];
}

export type RunwayLine = ByCentre | ByEnds;

/** A place to seven decimals of a degree, about a centimetre. */
export const centimetre = ({ latDeg, lonDeg }: Place): Place => ({
  latDeg: Math.round(latDeg * 1e7) / 1e7,
  lonDeg: Math.round(lonDeg * 1e7) / 1e7,
});

/** Where the two ends lie, to a centimetre. */
export function endPlaces(line: RunwayLine): readonly [Place, Place] {
  if (line.by === 'ends') return [centimetre(line.ends[0]), centimetre(line.ends[1])];
  const { centre, bearingTrueDeg, lengthM } = line;
  return [
    centimetre(destination(centre, trueDeg(bearingTrueDeg + 180), lengthM / 2)),
    centimetre(destination(centre, trueDeg(bearingTrueDeg), lengthM / 2)),
  ];
}

/** A runway's middle, its bearing there and its length; null if its ends coincide. */
export function centreOf({ ends: [one, other] }: Runway): ByCentre | null {
  const line = lineBetween(one.at, other.at);
  if (line === null || line.azimuth === null) return null;
  const centre = destination(one.at, line.azimuth, line.distanceM / 2);
  const onward = lineBetween(centre, other.at)?.azimuth ?? line.azimuth;
  return { by: 'centre', centre, bearingTrueDeg: degreesOf(onward), lengthM: line.distanceM };
}
