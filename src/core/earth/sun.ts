/**
 * Where the sun stands, and the two facts that depend on it: night and lights.
 *
 * Positions and times are suncalc's, after Meeus, Astronomical Algorithms. The facts follow from
 * the sun's altitude rather than from clock times, so that they also hold where it never rises or
 * never sets. The horizon is level and at the observer's height; hills are unknown.
 */

import { getPosition, getTimes } from 'suncalc';
import { relativeDeg, type TrueDeg, trueDeg } from '../angle';
import type { Place } from './place';

/** Where the sun stands. */
export interface SunPosition {
  readonly azimuth: TrueDeg;
  /**
   * Of the sun's centre as seen, refraction included, degrees above the horizon; negative below.
   */
  readonly altitudeDeg: number;
}

/** A state, and how long it lasts. */
export interface Spell {
  readonly holds: boolean;
  /** When it first changes, to a second; null if not within 24 h. */
  readonly until: Date | null;
}

/** What the sun determines at a place and a moment. */
export interface SunFacts {
  readonly position: SunPosition;
  /** The sun is more than 6° below the horizon: after evening and before morning civil twilight. 14 CFR 1.1. */
  readonly night: Spell;
  /** The sun is down: position lights are shown from sunset to sunrise. 14 CFR 91.209. */
  readonly lights: Spell;
}

/** When, in a day, the sun is above an altitude. */
export type Above =
  | { readonly kind: 'between'; readonly from: Date; readonly until: Date }
  | { readonly kind: 'always' }
  | { readonly kind: 'never' };

/** The day from one lowest sun to the next. */
export interface SunDay {
  /** The sun at its highest. */
  readonly noon: Date;
  /** Its upper edge above the horizon: from sunrise until sunset. */
  readonly sunUp: Above;
  /** Its centre less than 6° below: from the beginning of morning until the end of evening civil twilight. */
  readonly civil: Above;
}

/**
 * Where the sun stands. Close to the horizon the altitude is accurate to about 0.1°, since the air
 * varies. Throws RangeError for an invalid date and for a place that isn't two finite numbers.
 */
export function sunPosition({ latDeg, lonDeg }: Place, at: Date): SunPosition {
  const { azimuth, altitude } = getPosition(at, latDeg, lonDeg);
  if (!Number.isFinite(altitude)) throw new RangeError('no sun for this place and date');
  return { azimuth: trueDeg(azimuth), altitudeDeg: altitude };
}

/** The sun's position, night and lights, each with how long it lasts. Throws as {@link sunPosition}. */
export function sunFacts(place: Place, at: Date): SunFacts {
  return {
    position: sunPosition(place, at),
    night: spell(place, at, CIVIL_DEG),
    lights: spell(place, at, HORIZON_DEG),
  };
}

/**
 * Sunrise, sunset and civil twilight of the day whose solar noon is nearest to `at`. Throws as
 * {@link sunPosition}.
 */
export function sunDay(place: Place, at: Date): SunDay {
  const times = getTimes(at, place.latDeg, place.lonDeg);
  const noonDeg = sunPosition(place, times.solarNoon).altitudeDeg;
  return {
    noon: times.solarNoon,
    sunUp: above(times.sunrise, times.sunset, noonDeg > HORIZON_DEG),
    civil: above(times.dawn, times.dusk, noonDeg > CIVIL_DEG),
  };
}

/** Whether the sun is low in the eyes on a heading: within 25° of it, 0 to 15° high. Common practice, no published source. */
export function isSunLowAhead({ azimuth, altitudeDeg }: SunPosition, heading: TrueDeg): boolean {
  return altitudeDeg >= 0 && altitudeDeg <= 15 && Math.abs(relativeDeg(azimuth, heading)) <= 25;
}

/**
 * Refraction that suncalc adds for a sun on or below the horizon: 29′. Meeus, formula 16.4 at 0°.
 *
 * The altitudes that define sunset and twilight exclude refraction and suncalc's include it, so the
 * thresholds are shifted by as much.
 */
const REFRACTION_DEG = 1.02 / 60 / Math.tan((10.26 / 5.1) * (Math.PI / 180));

/** Sunrise and sunset: centre 50′ below, 34′ of refraction and 16′ of radius. USNO, Rise, Set, and Twilight Definitions. */
const HORIZON_DEG = -0.833 + REFRACTION_DEG;

/** Civil twilight: centre 6° below. USNO, Rise, Set, and Twilight Definitions. */
const CIVIL_DEG = -6 + REFRACTION_DEG;

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;

/**
 * In the ten minutes between two samples, a sun that crosses a line and comes back goes no further
 * than 0.014° beyond it (1 − cos 1.25°, for 15° an hour), less than the air moves it.
 */
const LOOK_MS = 10 * MINUTE_MS;

/** Whether the sun is below an altitude, refraction included, and until when. */
function spell(place: Place, at: Date, altitudeDeg: number): Spell {
  const isBelow = (ms: number) =>
    getPosition(new Date(ms), place.latDeg, place.lonDeg).altitude < altitudeDeg;
  const startMs = at.getTime();
  const holds = isBelow(startMs);
  for (let ms = startMs + LOOK_MS; ms <= startMs + DAY_MS; ms += LOOK_MS) {
    if (isBelow(ms) !== holds) {
      return { holds, until: firstChange(ms - LOOK_MS, ms, (t) => isBelow(t) !== holds) };
    }
  }
  return { holds, until: null };
}

/**
 * The first moment, to a second, at which `changed` is true; it is false at `beforeMs` and true at
 * `afterMs`.
 */
function firstChange(beforeMs: number, afterMs: number, changed: (ms: number) => boolean): Date {
  let before = beforeMs;
  let after = afterMs;
  while (after - before > 1000) {
    const middle = Math.round((before + after) / 2);
    if (changed(middle)) after = middle;
    else before = middle;
  }
  return new Date(after);
}

/** suncalc gives no times if the altitude isn't crossed that day. */
function above(from: Date | null, until: Date | null, atNoon: boolean): Above {
  if (from && until) return { kind: 'between', from, until };
  return { kind: atNoon ? 'always' : 'never' };
}
