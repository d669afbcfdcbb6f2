/** What a take-off comes to. Speeds are indicated, in knots, unless the name says ground. */

import type { Cannot } from './performance';

/** A number, or the cause that there is none. */
export type OrCause<Cause extends string> =
  | { readonly value: number; readonly because: null }
  | { readonly value: null; readonly because: Cause };

/** A moment of the roll or of the climb-out. */
export interface Gate {
  /** Indicated airspeed. */
  readonly speedKt: number;
  /** From brake release, s. */
  readonly s: number;
  /** From where the roll begins, along the ground, m. */
  readonly distanceM: number;
  readonly groundKt: number;
}

/** A moment after lift-off, and how far over the ground that is from there, m. */
export interface GateAloft extends Gate {
  readonly airM: number;
}

/** Speeds for the mass, each going with its root. */
export interface TakeoffSpeeds {
  /** Flaps for take-off, engines giving nothing. */
  readonly stallKt: number;
  readonly rotateKt: number;
  readonly liftOffKt: number;
  /** To have at 50 ft: 1.2 of the stall, and no less than at lift-off. 14 CFR 23.53 as it was. */
  readonly safetyKt: number;
}

/** Forces along a roll, the mean of each over the way, N: m V² / 2 = (thrust − drag − friction − slope) × way. */
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

/** What holds the last speed to stop from down. */
export type StopBound = 'field' | 'brake-energy' | 'tyres' | 'parachute' | 'rotation';

/** The last speed to stop from. */
export interface Stop {
  readonly lastKt: number;
  readonly boundBy: StopBound;
  /** What each bound alone would allow, kt; null where the aircraft has no such bound. */
  readonly allowsKt: Readonly<Record<StopBound, number | null>>;
  /** The parachute is counted on. */
  readonly withParachute: boolean;
  /** The last speed without it, and what each bound alone would allow then; null where there is none. */
  readonly bare: {
    readonly lastKt: number;
    readonly allowsKt: Readonly<Record<StopBound, number | null>>;
  } | null;
  /** How long the speed is taken to stay as it is before the brakes bite, s. 14 CFR 25.109. */
  readonly heldS: number;
  /** The speed that the distances are for: `lastKt`, or the lower one that was asked for. */
  readonly fromKt: number;
  /** From where the roll begins to rest, when stopped from it, m. */
  readonly distanceM: number;
  /** Of which up to that speed, and after the brakes bite, m; in between, `heldS` at `groundKt`. */
  readonly toSpeedM: number;
  readonly groundKt: number;
  readonly brakingM: number;
  readonly brakeMJ: number;
}

/** What holds the lowest speed to go on from up, indicated. */
export interface GoOnBound {
  /** Below it the rudder can't hold a dead engine straight. */
  readonly minimumControlKt: number;
  /** What the wind alone shows before the roll. */
  readonly standingKt: number;
  /** Of what the field gives to lift-off, so much goes by after the failure; null where the speeds above bind. */
  readonly field: { readonly withinM: number; readonly onwardM: number } | null;
}

/** A twin that loses an engine. */
export interface GoOn {
  /** The lowest speed to go on from, run inside TORA and 50 ft inside TODA; or why there is none. */
  readonly lowest:
    | { readonly value: number; readonly because: null; readonly bound: GoOnBound }
    | { readonly value: null; readonly because: 'cannot-climb' | 'runway-too-short' };
  /** The last speed to stop from lies below it, or there is none: in between neither stopping nor going on fits. */
  readonly aboveStop: boolean;
  /** Climb at the safety speed on one engine, gear up, per cent. */
  readonly gradientPercent: number;
  /** The same with the gear still down, as it is up to 50 ft: where this is not above 0, it does not get there. */
  readonly gearDownPercent: number;
}

/** What the mark asks for. */
export interface Check {
  /** From where the roll begins, m. */
  readonly distanceM: number;
  readonly expectedKt: number;
  /** The greatest of the three below; boundBy says which. It lies below the last speed to stop from. */
  readonly leastKt: number;
  readonly boundBy: 'tora' | 'asda' | 'expected';
  /**
   * In the wind as it is: what is expected there less 5 kt (common practice, no published source), or
   * what just fits in that wind, where that is more.
   */
  readonly leastInWindKt: number;
  /** At the mark, with so little thrust that the run just fits TORA. */
  readonly leastForRunKt: number;
  /** At the mark, with so little thrust that a stop from the last speed to stop from just fits ASDA. */
  readonly leastForStopKt: number;
}

/** Why the mark asks for nothing. */
export type NoCheck =
  | 'no-mark'
  /** It lies at or before where the roll begins. */
  | 'mark-behind'
  /** Faster there than it can be stopped from. */
  | 'mark-beyond-stop'
  /** The aircraft flies before it. */
  | 'mark-beyond-run'
  /** The run or the stop does not fit even with all the thrust. */
  | 'runway-too-short';

/** A limit speed that comes after lift-off. */
export interface LimitAhead {
  readonly limitKt: number;
  /** From lift-off until it is reached, s; null when it is not reached on the way to climb speed. */
  readonly fromLiftOffS: number | null;
}

/** Limits on the way. */
export interface TakeoffLimits {
  /** Null where the aircraft has none. */
  readonly tyre: {
    readonly limitKt: number;
    readonly liftOffGroundKt: number;
    readonly leftKt: number;
  } | null;
  readonly gear: LimitAhead | null;
  readonly flaps: LimitAhead;
}

/** A step of the climb-out. */
export interface ClimbGate extends Gate {
  readonly what: 'gear-up' | 'flaps-up' | 'reheat-off' | 'climb';
  readonly fromLiftOffS: number;
  /** Height gained since lift-off, ft. */
  readonly heightFt: number;
}

/** The climb, gear and flaps up, reheat out. */
export interface Climb {
  readonly speedKt: number;
  /** The same as true airspeed, compressibility counted. */
  readonly trueKt: number;
  /** Nose above the horizon, degrees. */
  readonly pitchDeg: number;
  /** Through the air: of the way flown. */
  readonly gradientPercent: number;
  /** Of the way over the ground, in the wind of the question; null where the wind takes all of it. */
  readonly groundGradientPercent: number | null;
  readonly rateFtMin: number;
  /** What gaining true airspeed with height costs: {@link accelerationFactor}. */
  readonly accelerationFactor: number;
  /** What the gradient comes from, 100 × (thrust − drag) / weight / factor, and the pitch: its angle and alpha. */
  readonly thrustN: number;
  readonly dragN: number;
  readonly weightN: number;
  readonly alphaDeg: number;
}

/** What it was worked out with. */
export interface TakeoffGiven {
  readonly massKg: number;
  readonly densityRatio: number;
  readonly headwindKt: number;
  /** The document says what heat takes of the thrust beyond what density does; always so of a piston. */
  readonly heatCounted: boolean;
  readonly staticThrustN: number;
}

/** A take-off. */
export interface Takeoff {
  readonly kind: 'takeoff';
  readonly given: TakeoffGiven;
  readonly speeds: TakeoffSpeeds;
  readonly run: TakeoffRun;
  /** Along the run; up to the mark, and up to an engine's failure at the lowest speed to go on from, where there is one. */
  readonly forcesN: {
    readonly toLiftOff: RunForcesN;
    readonly toMark: RunForcesN | null;
    readonly toFailure: RunForcesN | null;
  };
  /** From where the roll begins to 50 ft, m. */
  readonly to50ftM: OrCause<'cannot-climb'>;
  /** There, no slower than the safety speed; null where it does not climb so far. */
  readonly at50ft: GateAloft | null;
  /** Rotation, lift-off and those asked for up to lift-off, in the order they come. */
  readonly gates: readonly Gate[];
  readonly rotation: Gate;
  readonly liftOff: Gate;
  /** Negative where it does not fit. ASDA is what is left after the stop. */
  readonly left: {
    readonly toraM: number;
    readonly todaM: OrCause<'cannot-climb'>;
    readonly asdaM: number;
  };
  readonly stop: Stop;
  /** Null for one engine. */
  readonly goOn: GoOn | null;
  readonly check:
    | { readonly check: Check; readonly because: null }
    | { readonly check: null; readonly because: NoCheck };
  readonly limits: TakeoffLimits;
  /** What of the climb-out is reached, in the order it comes; a gate that is never reached is missing. */
  readonly climbOut: readonly ClimbGate[];
  readonly climb: Climb;
}

/** A take-off, or why there is none. */
export type TakeoffAnswer = Takeoff | Cannot;
