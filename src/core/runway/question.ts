/** What is asked about the ends of a field's runways, and what is answered. */

import type { North } from '../angle';
import type { Designator, Field, Surface } from '../airfield/field';
import type { Wind } from '../weather/report';

/** What the runway is wanted for. */
export type Purpose = 'take-off' | 'landing';

/** The limits to keep, knots, gusts included. The caller takes the smaller of aircraft's and pilot's. */
export interface WindLimits {
  readonly crosswindKt: number;
  readonly tailwindKt: number;
}

/** Everything the judgement of the ends depends on. */
export interface EndsQuestion {
  readonly field: Field;
  readonly wind: Wind;
  /** Which north `wind` is given to. */
  readonly north: North;
  /** When, for what depends on the date. */
  readonly at: Date;
  readonly limits: WindLimits;
  readonly surface: Surface;
  readonly purpose: Purpose;
  /** Length needed on an end today, metres; null where it cannot be known. Left out: length never decides. */
  readonly lengthNeededM?: (end: Designator) => number | null;
  /** Taxi distance to an end, metres; null where it cannot be known. */
  readonly taxiDistanceM?: (end: Designator) => number | null;
  /** Magnetic variation at the field, east positive, degrees. */
  readonly variationDeg: number;
}

/** Why an end is not within the limits given. */
export type Shortfall =
  | { readonly code: 'closed'; readonly why: string }
  | {
      readonly code: 'crosswind';
      readonly worstKt: number;
      readonly limitKt: number;
      readonly gust: boolean;
    }
  | {
      readonly code: 'tailwind';
      readonly worstKt: number;
      readonly limitKt: number;
      readonly gust: boolean;
    }
  | { readonly code: 'length'; readonly neededM: number; readonly availableM: number }
  /** A speed is only known to be above a number, so nothing can be called within limits. */
  | { readonly code: 'speed-unbounded' };

/** Which rule put an end above the one that follows it. */
export type Reason =
  | { readonly code: 'only-one-within-limits' }
  | { readonly code: 'calm-wind-end' }
  | { readonly code: 'most-headwind'; readonly headwindKt: number; readonly nextKt: number }
  | { readonly code: 'least-crosswind-share'; readonly share: number; readonly nextShare: number }
  | { readonly code: 'most-runway-left'; readonly leftM: number; readonly nextM: number }
  | { readonly code: 'shortest-taxi'; readonly taxiM: number; readonly nextM: number }
  | { readonly code: 'fails-least' }
  /** No rule separates it from the next: the order of their numbers. */
  | { readonly code: 'alike' };

/** One end, judged in the wind asked about. */
export interface RankedEnd {
  readonly designator: Designator;
  readonly headingTrueDeg: number;
  readonly headingMagneticDeg: number;
  /** Steady wind at the reported direction, along the runway, kt; negative is a tailwind. Null when the direction or speed is not known. */
  readonly headwindKt: number | null;
  /** The least headwind anywhere in the envelope with the steady wind, kt; for performance credit. Null when the speed is not known. */
  readonly headwindLeastKt: number | null;
  /** Steady wind at the reported direction, across the runway, kt; positive from the right. Null as `headwindKt`. */
  readonly crosswindKt: number | null;
  /** Greatest crosswind in the envelope, gust included, kt; never negative. Null when the speed is not known. */
  readonly crosswindWorstKt: number | null;
  /** Greatest tailwind in the envelope, gust included, kt; 0 when there is none. Null when the speed is not known. */
  readonly tailwindWorstKt: number | null;
  readonly withinLimits: boolean;
  readonly shortfalls: readonly Shortfall[];
  /** Why it stands above the next one in the list; empty for the last. */
  readonly reasons: readonly Reason[];
  /** What is available for the purpose: TORA for take-off, LDA for landing, metres. */
  readonly availableM: number;
}

/** How far the wind can turn before the best end changes, on one side. */
export type HoldsTo =
  /** Turned all the way round, the same end stays best. */
  | 'never'
  /** The last whole-degree turn at which it is still best, as a direction of the wind's own north, and what is best one degree further: an end, or none. */
  | { readonly lastDeg: number; readonly spareDeg: number; readonly then: Designator | null };

/** How firm the choice is. */
export interface HoldsUntil {
  /** Wind turning anticlockwise (backing). */
  readonly left: HoldsTo;
  /** Wind turning clockwise (veering). */
  readonly right: HoldsTo;
  /** The steady speed, kt, gust scaled with it, at which today's direction first breaks a limit on this end; null when none does. */
  readonly speedKt: number | null;
  /** 5° or less to spare on a side: reports are rounded to 10°. */
  readonly close: boolean;
}

/** The ends of a field, best first, and how firm that is. */
export interface RankedEnds {
  /** The first end, when it is within every limit; null when none is, or the wind is not known. */
  readonly best: RankedEnd | null;
  readonly ends: readonly RankedEnd[];
  /** Null where there is no best, in light wind, and in wind without a direction. */
  readonly holdsUntil: HoldsUntil | null;
  /** Steady and gust are both below 5 kt. */
  readonly light: boolean;
}
