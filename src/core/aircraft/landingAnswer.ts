/** What a landing comes to. Speeds are indicated, in knots, unless the name says ground. */

import type { Cannot } from './performance';

/** A landing. */
export interface Landing {
  readonly kind: 'landing';
  readonly given: {
    readonly massKg: number;
    readonly densityRatio: number;
    readonly headwindKt: number;
    /** Of the direction reported, which the speed goes by. */
    readonly reportedHeadwindKt: number;
    /** Of the path to the threshold. */
    readonly pathDeg: number;
    readonly slopePercent: number;
    readonly brakingFriction: number;
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
  /** From touch-down to rest, m. */
  readonly runM: number;
  readonly runS: number;
  /** The same without the parachute; null where none is counted on. */
  readonly runWithoutParachuteM: number | null;
  /** Air distance and run, m. */
  readonly neededM: number;
  /** LDA less that, m; negative where it does not fit. */
  readonly leftM: number;
  /** What is needed times the factor, m. */
  readonly plannedM: number;
  readonly leftPlannedM: number;
  readonly brakes: {
    readonly energyMJ: number;
    /** Null where the aircraft has no such limit. */
    readonly limitMJ: number | null;
    readonly within: boolean;
  };
  /** Null where none is counted on. */
  readonly parachute: {
    readonly limitKt: number;
    readonly touchdownKt: number;
    /** It may be opened at touch-down; if not, it is counted on from its limit down. */
    readonly within: boolean;
  } | null;
  /** Null where the aircraft has no such limit. */
  readonly tyre: { readonly limitKt: number; readonly leftKt: number } | null;
  /** Climb away again at the approach speed, gear and flaps as they are, full thrust, per cent. */
  readonly goAroundPercent: number;
}

/** A landing, or why there is none. */
export type LandingAnswer = Landing | Cannot;
