/** A runway proposed from where its two ends lie. */

import { degreesOf, toMagnetic } from '../angle';
import { lineBetween } from '../earth/geodesic';
import type { Place } from '../earth/place';
import { oppositeOf, readDesignator, runwayNumbers } from './designator';
import type { Designator } from './field';

/** What two ends say of their runway. */
export interface RunwayBetween {
  readonly lengthM: number;
  /** From the first end to the second, at the first. */
  readonly headingTrueDeg: number;
  /** Null where no variation is known. */
  readonly headingMagneticDeg: number | null;
  /**
   * The number of each end by its heading, without a parallel's letter; null where it isn't known.
   */
  readonly numbers: readonly [Designator, Designator] | null;
}

/** Ends that make no runway. */
export type NoRunway = 'one-place' | 'too-far-apart';

/** No runway is longer than a document can say, metres; then one of the places is mistyped. */
const LONGEST_M = 10_000;

/** Nearer to each other than this, metres, both are one place. */
const SHORTEST_M = 30;

/**
 * The runway from one end to another. `variationDeg` is that of the place, east positive, 0 if
 * numbers are painted to true north, null if it isn't known. Numbers are the magnetic heading to the
 * nearest ten degrees: ICAO Annex 14 Vol. I, 5.2.2.4.
 */
export function runwayBetween(
  from: Place,
  to: Place,
  variationDeg: number | null,
): RunwayBetween | NoRunway {
  const line = lineBetween(from, to);
  // No line is found between places on opposite sides of the earth.
  if (line === null || line.distanceM > LONGEST_M) return 'too-far-apart';
  if (line.azimuth === null || line.distanceM < SHORTEST_M) return 'one-place';
  const magnetic = variationDeg === null ? null : toMagnetic(line.azimuth, variationDeg);
  const number = magnetic === null ? null : readDesignator(String(runwayNumbers(magnetic)[0]));
  return {
    lengthM: line.distanceM,
    headingTrueDeg: degreesOf(line.azimuth),
    headingMagneticDeg: magnetic === null ? null : degreesOf(magnetic),
    numbers: number === null ? null : [number, oppositeOf(number)],
  };
}
