/** What a landing comes to. Speeds are indicated, in knots, unless the name says ground. */

import type { Cannot } from './performance';

/** Forces along a stop, the mean of each over the way, N: m V² / 2 = (brakes + drag + slope − thrust) × way. */
export interface StopForcesN {
  readonly brakesN: number;
  /** Of the parachute too. */
  readonly dragN: number;
  /** The weight's part along the slope, positive uphill. */
  readonly slopeN: number;
  /** Idle. */
  readonly thrustN: number;
}

export interface Landing {
  readonly kind: 'landing';
  readonly given: {
    readonly massKg: number;
    readonly densityRatio: number;
    readonly headwindKt: number;
    /** Of the direction reported, which the speed goes by. */
    readonly reportedHeadwindKt: number;
    /** Over the stall, and the share of the approach speed left at touch-down. */
    readonly referenceFactor: number;
    readonly touchdownShare: number;
    /** Of the path to the threshold. */
    readonly pathDeg: number;
    /** Planned over worked-out distance: the aircraft's factor, and 1.15 more where it is not dry. */
    readonly ldaFactor: number;
  };
  readonly speeds: {
    /** Flaps for landing, engines giving nothing. */
    readonly stallKt: number;
    readonly referenceKt: number;
    /** What the wind adds. */
    readonly additiveKt: number;
    readonly approachKt: number;
    readonly approachGroundKt: number;
    readonly touchdownKt: number;
    readonly touchdownGroundKt: number;
  };
  /** Down the aircraft's own path at the ground speed of the approach: on 3°, 5.3 ft/min a knot. */
  readonly sinkFtMin: number;
  /** From 50 ft over the threshold to touch-down, m. */
  readonly airM: number;
  /** True airspeeds, kt, that it is worked out at: down the path, and in the flare the mean of that and touch-down's. */
  readonly airTrueKt: {
    readonly approach: number;
    readonly flare: number;
    readonly touchdown: number;
  };
  /** What slows it in the flare, N, with idle thrust. */
  readonly flareN: { readonly dragN: number; readonly thrustN: number };
  /** From touch-down to rest, m. */
  readonly runM: number;
  /** How long of it the speed stays as it is before the brakes bite, s; and the forces from there on. */
  readonly heldS: number;
  readonly forcesN: StopForcesN;
  /** The run without the parachute; null where none is counted on. */
  readonly bare: { readonly runM: number; readonly forcesN: StopForcesN } | null;
  /** Air distance and run, m. */
  readonly neededM: number;
  /** What is needed times the factor, m. */
  readonly plannedM: number;
  readonly brakes: {
    readonly energyMJ: number;
    readonly within: boolean;
  };
  /** Null where none is counted on. */
  readonly parachute: {
    /** It may be opened at touch-down; if not, it is counted on from its limit down. */
    readonly within: boolean;
  } | null;
  /** Null where the aircraft has no such limit. */
  readonly tyre: { readonly limitKt: number; readonly leftKt: number } | null;
  /** Climb away again at the approach speed, gear and flaps as they are, full thrust, per cent; and what that comes from. */
  readonly goAroundPercent: number;
  readonly goAround: { readonly thrustN: number; readonly dragN: number; readonly weightN: number };
}

/** A landing, or why there is none. */
export type LandingAnswer = Landing | Cannot;
