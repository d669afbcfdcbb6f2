/**
 * The last speed to stop from.
 *
 * The speed holds for two seconds before the brakes bite, the distance that 14 CFR 25.109(a)(1)(iv)
 * adds. Meanwhile the throttle comes back and any reheat dies away; after that the engines idle.
 */

import { KT_PER_MPS } from '../units';
import { indicatedKt, trueMps } from './aerodynamics';
import type { Aircraft } from './aircraft';
import type { RollConditions } from './conditions';
import { stopMotion } from './forces';
import type { StopPlan } from './performance';
import { atRest, endOf, type Roll, rollMomentAt, speedUp } from './roll';
import { zeroBetween } from './solve';
import type { Stop, StopBound, TakeoffSpeeds } from './takeoffAnswer';

/** How long the speed holds before the brakes bite, s. 14 CFR 25.109(a)(1)(iv). */
export const HELD_S = 2;

/** Precision of the last speed, m/s. */
const NEAR_MPS = 0.005;

/** Stopping: the roll backwards, from rest up to rotation. */
interface Stopping {
  readonly roll: Roll;
  readonly parachute: boolean;
}

/** Distance and brake energy from the start of a stop. */
const begunAt = ({ roll }: Stopping, airMps: number) => {
  const braking = rollMomentAt(roll, airMps);
  const heldM = HELD_S * Math.max(airMps - roll.headwindMps, 0);
  return { m: heldM + braking.m, brakingM: braking.m, brakeJ: braking.gained };
};

/** The last speed to stop from, and what a stop takes. */
export interface LastStop {
  readonly stop: Stop;
  /** From the start of a stop to rest, m, by true airspeed in m/s up to rotation. */
  readonly fromM: (airMps: number) => number;
}

/**
 * The last speed that stops within an ASDA, metres from the start of the roll; null if none does.
 */
export function lastStop(
  conditions: RollConditions,
  { limits }: Aircraft,
  speeds: TakeoffSpeeds,
  run: Roll,
  asdaM: number,
  asked?: StopPlan,
): LastStop | null {
  const { performance, densityRatio, headwindMps } = conditions;
  const rotateMps = trueMps(speeds.rotateKt, densityRatio);
  const tyreMps =
    limits.tyreKt === undefined
      ? Number.POSITIVE_INFINITY
      : limits.tyreKt / KT_PER_MPS + headwindMps;
  const chuteMps =
    performance.parachute === undefined
      ? Number.POSITIVE_INFINITY
      : trueMps(performance.parachute.maxKt, densityRatio);

  /** What field and brakes allow in one way of stopping. */
  const allowed = (parachute: boolean) => {
    const top = Math.max(rotateMps, headwindMps);
    const motion = stopMotion(conditions, 'ground', parachute);
    // A step ends where the parachute opens, because the deceleration jumps there.
    const roll = speedUp(
      speedUp(atRest(headwindMps), motion, Math.min(chuteMps, top)),
      motion,
      top,
    );
    const stopping = { roll, parachute };
    const maxJ = (performance.brakes.maxMJ ?? Number.POSITIVE_INFINITY) * 1e6;
    return {
      stopping,
      stops: endOf(roll).airMps >= top - 1e-9,
      field: highest(
        headwindMps,
        top,
        (v) => rollMomentAt(run, v).m + begunAt(stopping, v).m - asdaM,
      ),
      energy: highest(headwindMps, top, (v) => begunAt(stopping, v).brakeJ - maxJ),
    };
  };

  const bare = allowed(false);
  const opened = performance.parachute === undefined ? null : allowed(true);
  if (!bare.stops && !opened?.stops) return null;
  const bareMps = bare.stops ? Math.min(bare.field, bare.energy) : headwindMps;
  const openedMps = opened?.stops ? Math.min(opened.field, opened.energy, chuteMps) : headwindMps;
  const better = opened?.stops === true && (!bare.stops || openedMps > bareMps);
  const withParachute = opened !== null && (asked?.parachute ?? better);
  const { stopping, field, energy, stops } = withParachute ? opened : bare;
  if (!stops) return null;

  const bounds: readonly (readonly [StopBound, number])[] = [
    ['rotation', rotateMps],
    ['field', field],
    ['brake-energy', energy],
    ['tyres', tyreMps],
    ['parachute', withParachute ? chuteMps : Number.POSITIVE_INFINITY],
  ];
  const [boundBy, lastMps] = bounds.reduce((least, bound) => (bound[1] < least[1] ? bound : least));
  const allows = (mps: number) =>
    mps === Number.POSITIVE_INFINITY ? null : Math.max(indicatedKt(mps, densityRatio), 0);
  const fromMps =
    asked === undefined ? lastMps : Math.min(trueMps(asked.fromKt, densityRatio), lastMps);
  const begun = begunAt(stopping, fromMps);
  const allowsKt = (one: typeof bare, chuteKt: number | null) => ({
    field: allows(one.field),
    'brake-energy': performance.brakes.maxMJ === undefined ? null : allows(one.energy),
    tyres: allows(tyreMps),
    parachute: chuteKt,
    rotation: speeds.rotateKt,
  });
  const bareLastKt = allows(Math.min(bareMps, tyreMps, rotateMps)) ?? 0;
  const stop: Stop = {
    lastKt: allows(lastMps) ?? 0,
    boundBy,
    allowsKt: allowsKt(withParachute ? opened : bare, withParachute ? allows(chuteMps) : null),
    withParachute,
    bare: opened === null ? null : { lastKt: bareLastKt, allowsKt: allowsKt(bare, null) },
    heldS: HELD_S,
    fromKt: indicatedKt(fromMps, densityRatio),
    distanceM: rollMomentAt(run, fromMps).m + begun.m,
    toSpeedM: rollMomentAt(run, fromMps).m,
    brakingM: begun.brakingM,
    groundKt: Math.max(fromMps - headwindMps, 0) * KT_PER_MPS,
    brakeMJ: begun.brakeJ / 1e6,
  };
  return { stop, fromM: (airMps) => begunAt(stopping, airMps).m };
}

/** The highest speed where a rising `over` is not above zero; Infinity if it never is. */
function highest(lowMps: number, highMps: number, over: (airMps: number) => number): number {
  if (over(highMps) <= 0) return Number.POSITIVE_INFINITY;
  if (over(lowMps) >= 0) return lowMps;
  // On the near side, so that a stop from there fits.
  return Math.max(zeroBetween(over, lowMps, highMps, NEAR_MPS) - NEAR_MPS, lowMps);
}
