/** What is asked of an aircraft's physics, and what cannot be asked of it. */

import type { InferOutput } from 'valibot';
import type { Runway, Surface } from '../airfield/field';
import type { Aircraft } from './aircraft';
import type { FactorChoice } from './factors';
import type { performanceShape } from './performance.schema';

/** The physics of an aircraft, as its document gives it. */
export type Performance = InferOutput<typeof performanceShape>;

/** What the runway is made of. */
export type GroundSurface = Runway['surface'];

/** The air over the field. */
export interface Air {
  readonly pressureAltitudeFt: number;
  /** Outside air temperature, °C. */
  readonly temperatureC: number;
  /** Where it is known, °C: moist air is thinner. Left out or null, the air counts as dry. */
  readonly dewPointC?: number | null;
}

/** What take-off and landing ask alike. */
export interface GroundQuestion {
  readonly aircraft: Aircraft;
  readonly massKg: number;
  readonly air: Air;
  /** Steady wind along the runway, kt; negative is a tailwind. Give `plannedHeadwindKt` of it for planning. */
  readonly headwindKt: number;
  /** Rise over run in the direction of the roll, per cent. */
  readonly slopePercent: number;
  readonly surface: Surface;
  readonly ground: GroundSurface;
}

/** What is asked about a take-off. */
export interface TakeoffQuestion extends GroundQuestion {
  readonly runway: { readonly toraM: number; readonly todaM: number; readonly asdaM: number };
  /** Where the roll begins, metres from where TORA is counted: line-up allowance or intersection. */
  readonly rollsFromM: number;
  /** Usable fuel, kg, where it is known. */
  readonly fuelKg?: number;
  /** Indicated speeds to be told the time and distance of; rotation and lift-off are told anyway. */
  readonly gatesKt?: readonly number[];
  /** A mark beside the runway, metres from where TORA is counted. */
  readonly checkMark?: {
    readonly atM: number;
    /** The last speed that will be stopped from, indicated, kt; left out, the last that there is. */
    readonly stopFromKt?: number;
    /** The speed expected at it in the wind as it is, indicated, kt; left out, that of this question. */
    readonly expectedKt?: number;
    /** The least speed at it in the wind as it is, indicated, kt; left out, 5 kt less than expected. */
    readonly leastKt?: number;
  };
  /** The stop whose length is told; left out, that from the last speed to stop from. */
  readonly stop?: StopPlan;
  /** False to leave the reheat out; of no effect without one. */
  readonly reheat?: boolean;
}

/** A stop that was planned in one wind, to be made in another. */
export interface StopPlan {
  /** Indicated, kt; above the last speed to stop from, it counts as that. */
  readonly fromKt: number;
  /** With the parachute, where the aircraft has one. */
  readonly parachute: boolean;
}

/** What is asked about a landing. */
export interface LandingQuestion extends GroundQuestion {
  /**
   * Steady headwind in the direction reported, kt, for the speed to fly: neither halved for planning
   * nor lowered by a swing, or it would be another than the one that is flown. Left out, `headwindKt`.
   */
  readonly reportedHeadwindKt?: number;
  /** The gust over the steady wind, kt; 0 without one. */
  readonly gustSpreadKt: number;
  /** Whose factor the planned distance has; left out, the document's. */
  readonly factors?: FactorChoice;
  /** False to leave the parachute in; of no effect without one. */
  readonly parachute?: boolean;
}

/** Why there is no number at all. The first that applies, in this order. */
export type CannotCode =
  /** The document has plain figures only. */
  | 'no-performance'
  /** A number of the question is not finite, or a length is negative. */
  | 'not-a-number'
  /** Lighter than the empty aircraft. */
  | 'under-empty'
  /** Heavier than the greatest mass for take-off, or for landing. */
  | 'over-mass'
  /** There is nothing in the tanks. */
  | 'no-fuel'
  /** Steeper than 10 %. */
  | 'slope-unreasonable'
  /** More than 80 kt along the runway. */
  | 'wind-unreasonable'
  /** Outside −1 500 to 20 000 ft or −80 to 60 °C. */
  | 'air-unreasonable'
  /** It stops gaining speed before it flies, or would need more than 10 km. */
  | 'never-lifts-off'
  /** It does not slow down, as on ice downhill. */
  | 'never-stops';

/** No number, and why. */
export interface Cannot {
  readonly kind: 'cannot';
  readonly because: CannotCode;
}
