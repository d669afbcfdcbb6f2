/** A twin losing an engine on the runway: the speed from which it can go on. */

import { indicatedKt, trueMps } from './aerodynamics';
import { flyToHeight } from './airborne';
import type { RollConditions } from './conditions';
import { climbSine, type Power, runMotion } from './forces';
import { type Roll, reaches, rollMomentAt, speedUp } from './roll';
import { zeroBetween } from './solve';
import type { GoOn, GoOnBound } from './takeoffAnswer';
import { type RunPlan, SCREEN_M } from './takeoffRoll';

/** Precision of the lowest speed, m/s. */
const NEAR_MPS = 0.005;

/**
 * The lowest speed to go on from with one engine, run inside TORA and 50 ft inside TODA, metres
 * from the start of the roll. Null for a single-engined aircraft.
 */
export function goOnFrom(
  conditions: RollConditions,
  { speeds, reheat }: RunPlan,
  run: Roll,
  lastStopKt: number,
  { toraM, todaM }: { readonly toraM: number; readonly todaM: number },
): GoOn | null {
  const { performance, densityRatio, headwindMps } = conditions;
  const { oneEngineOut } = performance;
  if (oneEngineOut === undefined) return null;
  const power: Power = {
    setting: reheat ? 'reheat' : 'full',
    share: 0.5,
    deadDragM2: oneEngineOut.dragAreaM2,
  };
  const safetyMps = trueMps(speeds.safetyKt, densityRatio);
  const percent = (gear: boolean) => {
    const sine = climbSine(conditions, safetyMps, power, { gear, flaps: true });
    return 100 * Math.tan(Math.asin(Math.max(sine, -1)));
  };
  const gradientPercent = percent(performance.wing.gearCd === undefined);
  const gearDownPercent = percent(true);
  const none = (because: 'cannot-climb' | 'runway-too-short'): GoOn => ({
    lowest: { value: null, because },
    aboveStop: true,
    gradientPercent,
    gearDownPercent,
  });

  const air = flyToHeight({ conditions, speeds, power }, SCREEN_M);
  if (air === null) return none('cannot-climb');
  const rotateMps = trueMps(speeds.rotateKt, densityRatio);
  const liftOffMps = trueMps(speeds.liftOffKt, densityRatio);
  const lowMps = Math.max(trueMps(oneEngineOut.minimumControlKt, densityRatio), headwindMps);
  if (lowMps > rotateMps) return none('runway-too-short');
  const start: Roll = { headwindMps, moments: [{ airMps: lowMps, s: 0, m: 0, gained: 0 }] };
  const motion = runMotion(conditions, speeds, power);
  const oneOut = speedUp(speedUp(start, motion, rotateMps), motion, liftOffMps);
  if (!reaches(oneOut, liftOffMps)) return none('cannot-climb');

  const withinM = Math.min(toraM, todaM - air.m);
  const onwardM = (airMps: number) =>
    rollMomentAt(oneOut, liftOffMps).m - rollMomentAt(oneOut, airMps).m;
  const over = (airMps: number) => rollMomentAt(run, airMps).m + onwardM(airMps) - withinM;
  if (over(rotateMps) > 0) return none('runway-too-short');
  const byControl = over(lowMps) <= 0;
  const lowestMps = byControl ? lowMps : zeroBetween(over, lowMps, rotateMps, NEAR_MPS);
  const bound: GoOnBound = {
    minimumControlKt: oneEngineOut.minimumControlKt,
    standingKt: indicatedKt(headwindMps, densityRatio),
    field: byControl ? null : { withinM, onwardM: onwardM(lowestMps) },
  };
  const lowestKt = indicatedKt(lowestMps, densityRatio);
  return {
    lowest: { value: lowestKt, because: null, bound },
    aboveStop: lowestKt > lastStopKt,
    gradientPercent,
    gearDownPercent,
  };
}
