/** What is asked about the ends of a field's runways, and what is answered. */

import type { Designator, Field, Surface } from '../airfield/field';
import type { North } from '../angle';
import type { Wind } from '../weather/report';
import type { Declared, Needs, NoLength, NoNeeds } from './needs';

/** What the runway is wanted for. */
export type Purpose = 'take-off' | 'landing';

/** Limits, knots, gusts included: the smaller of the aircraft's and the pilot's. */
export interface WindLimits {
  readonly crosswindKt: number;
  readonly tailwindKt: number;
  /** How much the gust may exceed the steady wind. Absent: by any amount. */
  readonly gustSpreadKt?: number;
}

/** Ends a field prefers whatever the wind, to spare its neighbours the noise. */
export interface PreferredEnds {
  /** The most preferred first. */
  readonly ends: readonly Designator[];
  /** On an end with more than this, kt, gusts included, the preference doesn't count. */
  readonly maxCrosswindKt: number;
  readonly maxTailwindKt: number;
  /** Everything but the wind allows the preference; `preferenceApplies` says so. */
  readonly applies: boolean;
}

/**
 * What an end needs: metres of each declared length, or of TORA for a take-off and LDA for a
 * landing; or that no length is enough; null only if too little of the wind is known. It is called
 * with the least headwind there, kt, negative for a tailwind, null if the speed is unknown; with
 * the steady headwind in the reported direction, null if that is unknown; and with the gust over
 * the wind. The ring and the turning of the wind call it for other winds than today's, some
 * thousand times, so answer from a table: `needsByWind` makes one of a slow function.
 */
export type LengthNeeded = (
  end: Designator,
  headwindLeastKt: number | null,
  headwindKt?: number | null,
  gustSpreadKt?: number,
) => Needs | NoNeeds | number | null;

/** Everything the judgement of the ends depends on. */
export interface EndsQuestion {
  readonly field: Field;
  readonly wind: Wind;
  /** The north `wind` is measured from. */
  readonly north: North;
  /** When, for what depends on the date. */
  readonly at: Date;
  readonly limits: WindLimits;
  readonly surface: Surface;
  readonly purpose: Purpose;
  /** Absent: no end falls short of length, and the longer runway stands for the more left over. */
  readonly lengthNeededM?: LengthNeeded;
  /** Taxi distance to an end, metres; null if unknown. */
  readonly taxiDistanceM?: (end: Designator) => number | null;
  /** Magnetic variation at the field, east positive, degrees. */
  readonly variationDeg: number;
  /** Ends the pilot knows to be closed today, work in progress. */
  readonly closedToday?: readonly Designator[];
  /** Ends the report says are closed. */
  readonly closedByReport?: readonly Designator[];
  /** The least width the aircraft's document allows, m; absent: any. */
  readonly leastWidthM?: number;
  /** It is night: a runway without lights is no choice. */
  readonly night?: boolean;
  /** Ends put before others within limits. Pass the same object while nothing in it changes. */
  readonly preferred?: PreferredEnds;
  /**
   * Metres, above 0, to where a landing on that end must hold short of another runway; it lowers
   * the LDA. Like `preferred`, pass the same object.
   */
  readonly holdShortM?: Readonly<Record<Designator, number>>;
}

/** For a declared length: what is needed and what is available, metres. */
export interface LengthAsked {
  readonly of: Declared;
  readonly neededM: number;
  readonly availableM: number;
}

/** Why an end isn't within the limits given. */
export type Shortfall =
  | { readonly code: 'closed'; readonly why: string }
  /** The pilot said so for today. */
  | { readonly code: 'closed-today' }
  /** The report says so. */
  | { readonly code: 'closed-by-report' }
  /** Narrower than the aircraft's document allows. */
  | { readonly code: 'narrow'; readonly widthM: number; readonly limitM: number }
  /** Night, and no runway lights. */
  | { readonly code: 'no-lights' }
  /** Nothing is declared for this purpose: a TORA or LDA of 0. */
  | { readonly code: 'not-for-purpose'; readonly purpose: Purpose }
  | {
      readonly code: 'crosswind';
      readonly worstKt: number;
      readonly limitKt: number;
      /** The gust is what fails: the steady wind alone would keep the limit. */
      readonly gust: boolean;
    }
  | {
      readonly code: 'tailwind';
      readonly worstKt: number;
      readonly limitKt: number;
      /** As for crosswind. */
      readonly gust: boolean;
    }
  /** The gust exceeds the steady wind by too much; the same on every end. */
  | { readonly code: 'gust-spread'; readonly spreadKt: number; readonly limitKt: number }
  /** Of a declared length. */
  | ({ readonly code: 'length' } & LengthAsked)
  /** No length is enough: too heavy, or it never flies, climbs or stops. */
  | { readonly code: 'no-length'; readonly because: NoLength }
  /** Faster over the ground at lift-off or touch-down than the tyres allow. */
  | { readonly code: 'tyres'; readonly groundKt: number; readonly limitKt: number }
  /** A landing gives the brakes more to take up than they may. */
  | { readonly code: 'brake-energy'; readonly energyMJ: number; readonly limitMJ: number }
  /** Between these, a failure allows neither stopping nor going on; null if it never can go on. */
  | { readonly code: 'go-on'; readonly lowestKt: number | null; readonly stopKt: number }
  /** A speed is only known to be above a number, so nothing can be called within limits. */
  | { readonly code: 'speed-unbounded' }
  /** No speed was reported, so there is no wind to compare with a limit. */
  | { readonly code: 'speed-not-known' };

/** Which rule put an end above the next one. `next…` are that one's numbers. */
export type Reason =
  /** The one end within every limit. */
  | { readonly code: 'only-one-within-limits' }
  /** Within every limit, unlike the next one. */
  | { readonly code: 'within-limits' }
  /** Its place among the field's preferred, from 1; null if the next has none in this wind. */
  | { readonly code: 'preferred'; readonly place: number; readonly nextPlace: number | null }
  | { readonly code: 'calm-wind-end' }
  | { readonly code: 'most-headwind'; readonly headwindKt: number; readonly nextKt: number }
  /** Of the crosswind limit, 0 to 1, gust and swing included. */
  | { readonly code: 'least-crosswind-share'; readonly share: number; readonly nextShare: number }
  /** `nextM` is null if the next one's need is unknown. */
  | {
      readonly code: 'most-runway-left';
      readonly leftM: number;
      readonly nextM: number | null;
    }
  /** Neither need is known: what is available decides. */
  | { readonly code: 'longest-runway'; readonly availableM: number; readonly nextM: number }
  | { readonly code: 'shortest-taxi'; readonly taxiM: number; readonly nextM: number | null }
  /** By the smaller share beyond what is allowed; null if the next one is unusable. */
  | { readonly code: 'fails-least'; readonly share: number; readonly nextShare: number | null }
  /** Without a speed, the one that points nearest to where the wind comes from. */
  | { readonly code: 'most-aligned'; readonly offDeg: number; readonly nextDeg: number }
  /** No rule separates it from the next: the order of their designators. */
  | { readonly code: 'alike' };

/** One end, judged in the wind asked about. */
export interface RankedEnd {
  readonly designator: Designator;
  readonly headingTrueDeg: number;
  readonly headingMagneticDeg: number;
  /** Steady wind along, in the reported direction, kt, negative from behind; null if unknown. */
  readonly headwindKt: number | null;
  /** Least steady headwind in the envelope, kt, for performance; null without a speed. */
  readonly headwindLeastKt: number | null;
  /** Steady wind across, kt, positive from the right; null as `headwindKt`. */
  readonly crosswindKt: number | null;
  /** Greatest crosswind in the envelope, gust included, kt, from 0; null without a speed. */
  readonly crosswindWorstKt: number | null;
  /** Greatest tailwind in the envelope, gust included, kt, from 0; null without a speed. */
  readonly tailwindWorstKt: number | null;
  /** True exactly when there are no shortfalls. */
  readonly withinLimits: boolean;
  readonly shortfalls: readonly Shortfall[];
  /** Why it stands above the next one in the list; empty for the last. */
  readonly reasons: readonly Reason[];
  /** TORA for take-off; LDA, or what holding short leaves of it, for landing; metres. */
  readonly availableM: number;
  /** The declared length with the least to spare today; null if unknown or none is enough. */
  readonly tightest: LengthAsked | null;
  /** What remains of it, metres; negative if too short, null like it. */
  readonly leftM: number | null;
}

/** How far the wind can turn before the best end changes, on one side. */
export type HoldsTo =
  /** Turned all the way round, the same end stays best. */
  | 'never'
  | {
      /** The last whole degree at which it is still best, 1 to 360, from the wind's own north. */
      readonly lastDeg: number;
      /** How many degrees that is from the wind asked about. */
      readonly spareDeg: number;
      /** What is best one degree further: another end, or none. */
      readonly then: Designator | null;
    };

/** How firm the choice is. */
export interface HoldsUntil {
  /** Wind turning anticlockwise (backing). */
  readonly left: HoldsTo;
  /** Wind turning clockwise (veering). */
  readonly right: HoldsTo;
  /**
   * The steady speed, kt, gust scaled with it, at which today's direction reaches a wind limit on
   * this end; null if it reaches none.
   */
  readonly speedKt: number | null;
  /** The limit it reaches; null when none. */
  readonly limit: 'crosswind' | 'tailwind' | 'gust-spread' | null;
  /** The report's own swing goes beyond where the best end changes. */
  readonly swings: boolean;
  /** 5° or less to spare on one side, as reports are rounded to 10°, or the swing goes beyond. */
  readonly close: boolean;
}

/** Why no end is best. */
export type NoBestReason =
  /** No speed was reported; a direction alone is not enough to judge by. */
  | 'speed-not-known'
  /** The speed or gust is only known to be above a number. */
  | 'speed-unbounded'
  /** Every end falls short; the shortfalls say of what. */
  | 'none-within-limits';

/** The ends of a field, best first, and how firm that is. */
export interface RankedEnds {
  /** The first end, if it is within every limit; null if none is, or the wind is unknown. */
  readonly best: RankedEnd | null;
  /** Why there is no best; null if there is one. */
  readonly because: NoBestReason | null;
  /** All ends, closed ones included, in order. */
  readonly ends: readonly RankedEnd[];
  /** Null if there is no best, in light wind, and in wind without a direction. */
  readonly holdsUntil: HoldsUntil | null;
  /** Steady and gust are both known to be below 5 kt. */
  readonly light: boolean;
}
