/** The roll from brake release to lift-off. */

import { KT_PER_MPS, M_PER_FT } from '../units';
import { indicatedKt, trueMps } from './aerodynamics';
import type { RollConditions } from './conditions';
import { type Power, type RunForce, runMotion } from './forces';
import {
  atRest,
  endOf,
  momentAtM,
  type Roll,
  type RollMoment,
  reaches,
  speedUp,
  untilS,
} from './roll';
import type { Gate, RunForcesN, TakeoffSpeeds } from './takeoffAnswer';

/** What a run needs besides the conditions. */
export interface RunPlan {
  readonly speeds: TakeoffSpeeds;
  readonly reheat: boolean;
  /** Share of the thrust, 0 to 1. */
  readonly thrustShare: number;
  /** For testing the integrator's own error; m/s. */
  readonly stepMps?: number;
  /** The force whose work to count. */
  readonly counted?: RunForce;
}

/** Longer than any runway, m: beyond this it never lifts off. */
export const LONGEST_M = 10_000;

/** Height at the end of TODA, m: 50 ft. Former 14 CFR 23.59. */
export const SCREEN_M = 50 * M_PER_FT;

/** The roll to lift-off, or for as long as the aircraft accelerates. */
export function takeoffRoll(conditions: RollConditions, plan: RunPlan): Roll {
  const { speeds, thrustShare, stepMps, counted } = plan;
  const { densityRatio, headwindMps } = conditions;
  const rotateMps = trueMps(speeds.rotateKt, densityRatio);
  const liftOffMps = trueMps(speeds.liftOffKt, densityRatio);
  const motion = (setting: Power['setting']) =>
    runMotion(conditions, speeds, { setting, share: thrustShare, deadDragM2: 0 }, counted);
  const onFull = (roll: Roll, setting: Power['setting']) => {
    const power = motion(setting);
    return speedUp(speedUp(roll, power, rotateMps, stepMps), power, liftOffMps, stepMps);
  };
  const standing = atRest(Math.min(headwindMps, liftOffMps));
  if (!plan.reheat) return onFull(standing, 'full');
  const lightUpS = lightUp(conditions);
  if (lightUpS === 0) return onFull(standing, 'reheat');
  return onFull(untilS(onFull(standing, 'full'), lightUpS), 'reheat');
}

/** Seconds from brake release to reheat thrust. */
function lightUp({ performance: { thrust } }: RollConditions): number {
  return (thrust.kind === 'jet' ? thrust.lightUpS : undefined) ?? 0;
}

/** Mean forces over a distance from the start of the run, metres: work divided by distance. */
export function runForcesN(
  conditions: RollConditions,
  plan: RunPlan,
): (distanceM: number) => RunForcesN {
  const mean = (counted: RunForce) => {
    const roll = takeoffRoll(conditions, { ...plan, counted });
    return (m: number) => (m > 0 ? momentAtM(roll, m).gained / m : 0);
  };
  const [thrustN, dragN, frictionN] = [mean('thrust'), mean('drag'), mean('friction')];
  return (m) => ({
    thrustN: thrustN(m),
    dragN: dragN(m),
    frictionN: frictionN(m),
    slopeN: conditions.weightN * conditions.sin,
  });
}

/** Whether a roll lifted off within any plausible runway. */
export const liftsOff = (
  roll: Roll,
  { speeds }: RunPlan,
  { densityRatio }: RollConditions,
): boolean => reaches(roll, trueMps(speeds.liftOffKt, densityRatio)) && endOf(roll).m <= LONGEST_M;

/** A moment of a roll as a gate. */
export const gateAt = (
  { airMps, s, m }: RollMoment,
  { densityRatio, headwindMps }: RollConditions,
): Gate => ({
  speedKt: indicatedKt(airMps, densityRatio),
  s,
  distanceM: m,
  groundKt: (airMps - headwindMps) * KT_PER_MPS,
});
