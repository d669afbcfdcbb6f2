/** A landing's answer. Speeds are indicated, in knots, unless named ground. */

import type { Cannot } from './performance';

/** Mean forces along a stop, N: m V² / 2 = (brakes + drag + slope − thrust) × distance. */
export interface StopForcesN {
  readonly brakesN: number;
  /** The parachute's too. */
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
    /** In the reported direction: the speed goes by it. */
    readonly reportedHeadwindKt: number;
    /** Over the stall, and the share of approach speed left at touch-down. */
    readonly referenceFactor: number;
    readonly touchdownShare: number;
    /** Of the path to the threshold. */
    readonly pathDeg: number;
    /** Planned over computed distance: the aircraft's factor, 1.15 more if not dry. */
    readonly ldaFactor: number;
  };
  readonly speeds: {
    /** Landing flaps, no thrust. */
    readonly stallKt: number;
    readonly referenceKt: number;
    /** What the wind adds. */
    readonly additiveKt: number;
    readonly approachKt: number;
    readonly approachGroundKt: number;
    readonly touchdownKt: number;
    readonly touchdownGroundKt: number;
  };
  /** Down the aircraft's own path at approach ground speed: 5.3 ft/min per knot at 3°. */
  readonly sinkFtMin: number;
  /** From 50 ft over the threshold to touch-down, m. */
  readonly airM: number;
  /** True airspeeds behind it, kt: on the path and, as the mean with touch-down, in the flare. */
  readonly airTrueKt: {
    readonly approach: number;
    readonly flare: number;
    readonly touchdown: number;
  };
  /** What slows it in the flare, N, at idle. */
  readonly flareN: { readonly dragN: number; readonly thrustN: number };
  /** From touch-down to rest, m. */
  readonly runM: number;
  /** How long the speed holds before the brakes bite, s, and the forces after that. */
  readonly heldS: number;
  readonly forcesN: StopForcesN;
  /** The run without the parachute; null if none is counted on. */
  readonly bare: { readonly runM: number; readonly forcesN: StopForcesN } | null;
  /** Air distance and run, m. */
  readonly neededM: number;
  /** The need times the factor, m. */
  readonly plannedM: number;
  readonly brakes: {
    readonly energyMJ: number;
    readonly within: boolean;
  };
  /** Null if none is counted on. */
  readonly parachute: {
    /** It may open at touch-down; otherwise it counts from its limit down. */
    readonly within: boolean;
  } | null;
  /** Null without such a limit. */
  readonly tyre: { readonly limitKt: number; readonly leftKt: number } | null;
  /** Going around at approach speed, full thrust, gear and flaps as they are, per cent; why. */
  readonly goAroundPercent: number;
  readonly goAround: { readonly thrustN: number; readonly dragN: number; readonly weightN: number };
}

export type LandingAnswer = Landing | Cannot;
