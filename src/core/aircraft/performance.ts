/** Questions to an aircraft's physics, and why some have no answer. */

import type { InferOutput } from 'valibot';
import type { Runway, Surface } from '../airfield/field';
import type { Aircraft } from './aircraft';
import type { FactorChoice } from './factors';
import type { performanceShape } from './performance.schema';

/** An aircraft's physics, as its document gives it. */
export type Performance = InferOutput<typeof performanceShape>;

export type GroundSurface = Exclude<Runway['surface'], 'unknown'>;

/** The air over the field. */
export interface Air {
  readonly pressureAltitudeFt: number;
  /** Outside air temperature, °C. */
  readonly temperatureC: number;
  /** °C, if known: moist air is thinner. Absent or null, the air counts as dry. */
  readonly dewPointC?: number | null;
}

/** What both questions share. */
export interface GroundQuestion {
  readonly aircraft: Aircraft;
  readonly massKg: number;
  readonly air: Air;
  /** Steady wind along the runway, kt, negative from behind. To plan, pass `plannedHeadwindKt`. */
  readonly headwindKt: number;
  /** Rise over run in the direction of the roll, per cent. */
  readonly slopePercent: number;
  readonly surface: Surface;
  readonly ground: GroundSurface;
}

export interface TakeoffQuestion extends GroundQuestion {
  readonly runway: { readonly toraM: number; readonly todaM: number; readonly asdaM: number };
  /** Start of the roll, metres from where TORA starts: line-up allowance or intersection. */
  readonly rollsFromM: number;
  /** Usable fuel, kg, if known. */
  readonly fuelKg?: number;
  /** Indicated speeds, kt, to return as gates; rotation and lift-off always are. */
  readonly gatesKt?: readonly number[];
  /** A mark beside the runway, metres from where TORA starts. */
  readonly checkMark?: {
    readonly atM: number;
    /** The last speed that will be stopped from, indicated, kt; absent, the last possible. */
    readonly stopFromKt?: number;
    /** Expected there in the actual wind, indicated, kt; absent, as in this question. */
    readonly expectedKt?: number;
    /** Least there in the actual wind, indicated, kt; absent, 5 kt below expected. */
    readonly leastKt?: number;
  };
  /** The stop to measure; absent, from the last speed to stop from. */
  readonly stop?: StopPlan;
  /** False for no reheat; ignored without one. */
  readonly reheat?: boolean;
}

/** A stop planned in one wind, to be made in another. */
export interface StopPlan {
  /** Indicated, kt; capped at the last speed to stop from. */
  readonly fromKt: number;
  /** With the parachute, if there is one. */
  readonly parachute: boolean;
}

export interface LandingQuestion extends GroundQuestion {
  /**
   * Steady headwind in the reported direction, kt, for the speed to fly. Halving it for planning or
   * lowering it by a swing would give another speed than the one flown. Absent, `headwindKt`.
   */
  readonly reportedHeadwindKt?: number;
  /** Gust over the steady wind, kt; 0 without one. */
  readonly gustSpreadKt: number;
  /** Whose factor the planned distance has; absent, the document's. */
  readonly factors?: FactorChoice;
  /** False for no parachute; ignored without one. */
  readonly parachute?: boolean;
}

/** Why there is no number. The first that applies, in this order. */
export type CannotCode =
  /** The document has plain figures only. */
  | 'no-performance'
  /** A number in the question is not finite, or a length is negative. */
  | 'not-a-number'
  /** Lighter than the empty aircraft. */
  | 'under-empty'
  /** Above the maximum mass for take-off, or for landing. */
  | 'over-mass'
  /** The tanks are empty. */
  | 'no-fuel'
  /** Steeper than 10 %. */
  | 'slope-unreasonable'
  /** More than 80 kt along the runway. */
  | 'wind-unreasonable'
  /** Outside −1 500 to 20 000 ft or −80 to 60 °C. */
  | 'air-unreasonable'
  /** It stops accelerating before it flies, or would need more than 10 km. */
  | 'never-lifts-off'
  /** It doesn't decelerate, as on ice downhill. */
  | 'never-stops';

/** No number, and why. */
export interface Cannot {
  readonly kind: 'cannot';
  readonly because: CannotCode;
}
