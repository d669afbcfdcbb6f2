/**
 * The ends of a field's runways, with everything that follows from where an end and its opposite
 * lie.
 */

import type { TrueDeg } from '../angle';
import { lineBetween } from '../earth/geodesic';
import { M_PER_FT } from '../units';
import type { Designator, Field, Runway, RunwayEnd } from './field';

/** One end of a runway, seen from where it is entered. */
export interface End {
  readonly designator: Designator;
  /** The designator painted at the other end. */
  readonly opposite: Designator;
  /** The runway's name, lower number first: `10/28`. */
  readonly runwayName: string;
  readonly runway: Runway;
  /** From the document: place, elevation, declared distances, why it is closed. */
  readonly given: RunwayEnd;
  /** The direction of the roll, from this end to the other. */
  readonly heading: TrueDeg;
  /** From end to end of the pavement, metres. The declared distances say how much may be used. */
  readonly lengthM: number;
  /**
   * Rise over run towards the other end, per cent; negative is downhill. ICAO Annex 14, 3.1.13. Null if
   * an end's elevation isn't known.
   */
  readonly slopePercent: number | null;
}

/** Fields are immutable documents, so everything is derived once per field. */
const endsByField = new WeakMap<Field, readonly End[]>();

/**
 * All ends of a field, sorted by designator.
 *
 * Throws RangeError if both ends of a runway are at one place, because such a runway has no
 * heading; the field must be refused for it on the way in.
 */
export function endsOf(field: Field): readonly End[] {
  const before = endsByField.get(field);
  if (before) return before;
  const ends = field.runways
    .flatMap((runway) => [
      endOf(runway, runway.ends[0], runway.ends[1]),
      endOf(runway, runway.ends[1], runway.ends[0]),
    ])
    .sort((a, b) => (a.designator < b.designator ? -1 : 1));
  endsByField.set(field, ends);
  return ends;
}

function endOf(runway: Runway, given: RunwayEnd, far: RunwayEnd): End {
  const name = runwayName(given.designator, far.designator);
  const line = lineBetween(given.at, far.at);
  const heading = line?.azimuth ?? null;
  if (line === null || heading === null) {
    throw new RangeError(`Both ends of ${name} lie at the same place`);
  }
  return {
    designator: given.designator,
    opposite: far.designator,
    runwayName: name,
    runway,
    given,
    heading,
    lengthM: line.distanceM,
    slopePercent: slopeOf(given, far, line.distanceM),
  };
}

function slopeOf(given: RunwayEnd, far: RunwayEnd, lengthM: number): number | null {
  if (far.elevationFt === undefined || given.elevationFt === undefined) return null;
  return (100 * M_PER_FT * (far.elevationFt - given.elevationFt)) / lengthM;
}

/** The name of a runway from its two ends, lower number first: `10/28`. */
const runwayName = (one: Designator, other: Designator): string =>
  one < other ? `${one}/${other}` : `${other}/${one}`;
