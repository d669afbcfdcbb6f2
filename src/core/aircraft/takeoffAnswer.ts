/** A take-off's answer. Speeds are indicated, in knots, unless named ground. */

import type { Cannot } from './performance';

/** A number, or why there is none. */
export type OrCause<Cause extends string> =
  | { readonly value: number; readonly because: null }
  | { readonly value: null; readonly because: Cause };

/** A moment of the roll or of the climb-out. */
export interface Gate {
  /** Indicated airspeed. */
  readonly speedKt: number;
  /** From brake release, s. */
  readonly s: number;
  /** Along the ground from the start of the roll, m. */
  readonly distanceM: number;
  readonly groundKt: number;
}

/** A moment after lift-off, and its ground distance from there, m. */
export interface GateAloft extends Gate {
  readonly airM: number;
}

/** Speeds by mass, each with its root. */
export interface TakeoffSpeeds {
  /** Take-off flaps, no thrust. */
  readonly stallKt: number;
  readonly rotateKt: number;
  readonly liftOffKt: number;
  /** For 50 ft: 1.2 of the stall, at least the lift-off speed. Former 14 CFR 23.53. */
  readonly safetyKt: number;
}

/** Mean forces along a roll, N: m V² / 2 = (thrust − drag − friction − slope) × distance. */
export interface RunForcesN {
  readonly thrustN: number;
  readonly dragN: number;
  readonly frictionN: number;
  /** The weight's part along the slope, positive uphill. */
  readonly slopeN: number;
}

/** From brake release to lift-off. */
export interface TakeoffRun {
  readonly runM: number;
  readonly runS: number;
}

/** What limits the last speed to stop from. */
export type StopBound = 'field' | 'brake-energy' | 'tyres' | 'parachute' | 'rotation';

/** The last speed to stop from. */
export interface Stop {
  readonly lastKt: number;
  readonly boundBy: StopBound;
  /** What each bound alone would allow, kt; null without such a bound. */
  readonly allowsKt: Readonly<Record<StopBound, number | null>>;
  /** The parachute is counted on. */
  readonly withParachute: boolean;
  /** Last speed without it, and what each bound alone would then allow; null if there is none. */
  readonly bare: {
    readonly lastKt: number;
    readonly allowsKt: Readonly<Record<StopBound, number | null>>;
  } | null;
  /** How long the speed is taken to hold before the brakes bite, s. 14 CFR 25.109. */
  readonly heldS: number;
  /** The speed of the distances: `lastKt`, or a lower one asked for. */
  readonly fromKt: number;
  /** From the start of the roll to rest, stopped at that speed, m. */
  readonly distanceM: number;
  /** Of it, up to that speed and after the brakes bite, m; between, `heldS` at `groundKt`. */
  readonly toSpeedM: number;
  readonly groundKt: number;
  readonly brakingM: number;
  readonly brakeMJ: number;
}

/** What raises the lowest speed to go on from, indicated. */
export interface GoOnBound {
  /** Below this the rudder can't offset a dead engine. */
  readonly minimumControlKt: number;
  /** What the wind alone shows before the roll. */
  readonly standingKt: number;
  /** Room to lift-off, and how much of it passes after the failure; null if a speed above binds. */
  readonly field: { readonly withinM: number; readonly onwardM: number } | null;
}

/** A twin losing an engine. */
export interface GoOn {
  /** Lowest speed to go on from, run inside TORA and 50 ft inside TODA; or why none. */
  readonly lowest:
    | { readonly value: number; readonly because: null; readonly bound: GoOnBound }
    | { readonly value: null; readonly because: 'cannot-climb' | 'runway-too-short' };
  /** The last speed to stop from is below it, or it doesn't exist: in between, neither fits. */
  readonly aboveStop: boolean;
  /** Climb at safety speed on one engine, gear up, per cent. */
  readonly gradientPercent: number;
  /** The same gear down, as it is up to 50 ft: at 0 or below it doesn't get there. */
  readonly gearDownPercent: number;
}

export interface Check {
  /** From the start of the roll, m. */
  readonly distanceM: number;
  readonly expectedKt: number;
  /** The greatest of the three below, by `boundBy`; under the last speed to stop from. */
  readonly leastKt: number;
  readonly boundBy: 'tora' | 'asda' | 'expected';
  /**
   * In the actual wind: 5 kt below expected (common practice, no published source) or, if higher,
   * what just fits in that wind.
   */
  readonly leastInWindKt: number;
  /** At the mark, with just enough thrust for the run to fit TORA. */
  readonly leastForRunKt: number;
  /** At the mark, with just enough thrust for a stop from the last speed to fit ASDA. */
  readonly leastForStopKt: number;
}

/** Why the mark asks for nothing. */
export type NoCheck =
  | 'no-mark'
  /** It lies at or before the start of the roll. */
  | 'mark-behind'
  /** Too fast there to stop. */
  | 'mark-beyond-stop'
  /** The aircraft flies before it. */
  | 'mark-beyond-run'
  /** The run or the stop doesn't fit even with full thrust. */
  | 'runway-too-short';

/** A limit speed reached after lift-off. */
export interface LimitAhead {
  readonly limitKt: number;
  /** From lift-off until then, s; null if not reached by climb speed. */
  readonly fromLiftOffS: number | null;
}

/** Limits on the way. */
export interface TakeoffLimits {
  /** Null without one. */
  readonly tyre: {
    readonly limitKt: number;
    readonly liftOffGroundKt: number;
    readonly leftKt: number;
  } | null;
  readonly gear: LimitAhead | null;
  readonly flaps: LimitAhead;
}

export interface ClimbGate extends Gate {
  readonly what: 'gear-up' | 'flaps-up' | 'reheat-off' | 'climb';
  readonly fromLiftOffS: number;
  /** Height gained since lift-off, ft. */
  readonly heightFt: number;
}

/** The climb, gear and flaps up, reheat off. */
export interface Climb {
  readonly speedKt: number;
  /** As true airspeed, compressibility counted. */
  readonly trueKt: number;
  /** Nose above the horizon, degrees. */
  readonly pitchDeg: number;
  /** Through the air. */
  readonly gradientPercent: number;
  /** Over the ground, in the question's wind; null if the wind takes all of it. */
  readonly groundGradientPercent: number | null;
  readonly rateFtMin: number;
  /** The cost of gaining true airspeed with height: {@link accelerationFactor}. */
  readonly accelerationFactor: number;
  /** Behind the pitch, and the gradient: 100 × (thrust − drag) / weight / factor. */
  readonly thrustN: number;
  readonly dragN: number;
  readonly weightN: number;
  readonly alphaDeg: number;
}

export interface TakeoffGiven {
  readonly massKg: number;
  readonly densityRatio: number;
  readonly headwindKt: number;
  /** What heat takes of thrust beyond density is counted; always so for a piston. */
  readonly heatCounted: boolean;
  readonly staticThrustN: number;
}

export interface Takeoff {
  readonly kind: 'takeoff';
  readonly given: TakeoffGiven;
  readonly speeds: TakeoffSpeeds;
  readonly run: TakeoffRun;
  /** Along the run, up to the mark, and up to a failure at the lowest go-on speed, if any. */
  readonly forcesN: {
    readonly toLiftOff: RunForcesN;
    readonly toMark: RunForcesN | null;
    readonly toFailure: RunForcesN | null;
  };
  /** From the start of the roll to 50 ft, m. */
  readonly to50ftM: OrCause<'cannot-climb'>;
  /** There, at safety speed or above; null if it doesn't climb that far. */
  readonly at50ft: GateAloft | null;
  /** Rotation, lift-off and the gates asked for up to it, in order. */
  readonly gates: readonly Gate[];
  readonly rotation: Gate;
  readonly liftOff: Gate;
  /** Negative if it doesn't fit. ASDA is what the stop leaves. */
  readonly left: {
    readonly toraM: number;
    readonly todaM: OrCause<'cannot-climb'>;
    readonly asdaM: number;
  };
  readonly stop: Stop;
  /** Null with one engine. */
  readonly goOn: GoOn | null;
  readonly check:
    | { readonly check: Check; readonly because: null }
    | { readonly check: null; readonly because: NoCheck };
  readonly limits: TakeoffLimits;
  /** Climb-out gates in order; one that is never reached is missing. */
  readonly climbOut: readonly ClimbGate[];
  readonly climb: Climb;
}

export type TakeoffAnswer = Takeoff | Cannot;
