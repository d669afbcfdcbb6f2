/**
 * The sun in the eyes on a runway: whether it is low ahead now or soon, and for how long.
 *
 * A landing faces the same way as a take-off from the same end, so one answer serves both.
 */

import { relativeDeg, type TrueDeg } from '../angle';
import type { Place } from './place';
import { isSunLowAhead, sunPosition } from './sun';

/** A low sun ahead, or none. */
export type LowSun =
  /** Neither now nor within the next 3 hours. */
  | { readonly kind: 'none' }
  | {
      readonly kind: 'now' | 'later';
      /** The moment asked about, or the first whole minute at which it is low ahead. */
      readonly from: Date;
      /** The first whole minute, UTC, at which it no longer is. */
      readonly until: Date;
      /**
       * Where it stands at `from`, clockwise of the heading, degrees: −25 to 25, right positive.
       */
      readonly relativeDeg: number;
      /** How high it stands at `from`, refraction included, degrees: 0 to 15. */
      readonly altitudeDeg: number;
    };

/** How far ahead to look for the sun. Common practice, no published source. */
const AHEAD_MIN = 180;

const MINUTE_MS = 60_000;

/**
 * Whether the sun is low ahead on a heading at a moment: within 25° of it, 0 to 15° high, common
 * practice, no published source. If not, whether it will be within 3 hours.
 *
 * Checks every whole minute: in the far north or south the sun can stay low all day and cut a
 * corner of that window, which a longer stride would step over. Throws as {@link sunPosition}.
 */
export function lowSunAhead(place: Place, heading: TrueDeg, at: Date): LowSun {
  const isLow = (when: Date) => isSunLowAhead(sunPosition(place, when), heading);
  const startMs = at.getTime();
  if (isLow(at)) return spell('now', place, heading, at);
  for (let ms = wholeMinuteAfter(startMs); ms <= startMs + AHEAD_MIN * MINUTE_MS; ms += MINUTE_MS) {
    const when = new Date(ms);
    if (isLow(when)) return spell('later', place, heading, when);
  }
  return { kind: 'none' };
}

/** The spell that began at `from`. */
function spell(kind: 'now' | 'later', place: Place, heading: TrueDeg, from: Date): LowSun {
  const sun = sunPosition(place, from);
  let until = from;
  // It ends: within a day the sun goes all the way round, or rises and sets.
  while (isSunLowAhead(sunPosition(place, until), heading)) {
    until = new Date(wholeMinuteAfter(until.getTime()));
  }
  return {
    kind,
    from,
    until,
    relativeDeg: relativeDeg(sun.azimuth, heading),
    altitudeDeg: sun.altitudeDeg,
  };
}

const wholeMinuteAfter = (ms: number): number => (Math.floor(ms / MINUTE_MS) + 1) * MINUTE_MS;
