/**
 * The airspeed to have at a mark beside the runway.
 *
 * The thrust is scaled down until the run just fits TORA, or until a stop from the last speed to
 * stop from just fits ASDA. The least acceptable speed at the mark is the one with that thrust or,
 * if higher, 5 kt below what today's wind leads one to expect. If the field limits the last speed,
 * the stop only fits with full thrust.
 */

import { indicatedKt, trueMps } from './aerodynamics';
import type { RollConditions } from './conditions';
import { endOf, momentAtM, type Roll, reaches, rollMomentAt } from './roll';
import { zeroBetween } from './solve';
import type { LastStop } from './stop';
import type { Check, NoCheck } from './takeoffAnswer';
import { type RunPlan, takeoffRoll } from './takeoffRoll';

/** Precision of the share of thrust. */
const NEAR_SHARE = 1e-4;

/** The mark and the lengths there are, metres from the start of the roll. */
interface Mark {
  readonly markM: number;
  readonly toraM: number;
  readonly asdaM: number;
  /** The last speed that will be stopped from, kt; capped at the last possible. */
  readonly stopFromKt: number;
  /** Expected there in the actual wind, kt; null for what this run reaches. */
  readonly expectedKt: number | null;
  /** The least there in that wind, kt; null for 5 kt below expected. */
  readonly leastKt: number | null;
}

/** This far below today's expected speed is fine. Common practice, no published source. */
const BELOW_EXPECTED_KT = 5;

/** A stop that just fits may miss by this, given the precision of the last speed, m. */
const NEAR_M = 0.5;

export function checkAt(
  conditions: RollConditions,
  plan: RunPlan,
  run: Roll,
  { stop, fromM }: LastStop,
  { markM, toraM, asdaM, stopFromKt, expectedKt, leastKt }: Mark,
):
  | { readonly check: Check; readonly because: null }
  | { readonly check: null; readonly because: NoCheck } {
  if (markM <= 0) return { check: null, because: 'mark-behind' };
  if (markM >= endOf(run).m) return { check: null, because: 'mark-beyond-run' };
  const reachedKt = indicatedKt(momentAtM(run, markM).airMps, conditions.densityRatio);
  const lastMps = trueMps(Math.min(stopFromKt, stop.lastKt), conditions.densityRatio);
  // What remains to reach the last speed once the stop has its part.
  const toLastM = asdaM - fromM(lastMps);
  const liftOffMps = endOf(run).airMps;
  if (endOf(run).m > toraM || rollMomentAt(run, lastMps).m > toLastM + NEAR_M) {
    return { check: null, because: 'runway-too-short' };
  }
  if (reachedKt >= stop.lastKt) return { check: null, because: 'mark-beyond-stop' };
  const withShare = (thrustShare: number) => takeoffRoll(conditions, { ...plan, thrustShare });
  const forRun = leastShare(withShare, run, liftOffMps, toraM);
  const forStop = leastShare(withShare, run, lastMps, toLastM);
  const atMarkKt = (roll: Roll) =>
    indicatedKt(momentAtM(roll, markM).airMps, conditions.densityRatio);
  const leastForRunKt = atMarkKt(forRun.roll);
  const leastForStopKt = atMarkKt(forStop.roll);
  const byRun = leastForRunKt >= leastForStopKt;
  // Just fitting is no margin, and a headwind hides weak thrust. Never above what can be stopped.
  const askedInWindKt = Math.max((expectedKt ?? reachedKt) - BELOW_EXPECTED_KT, leastKt ?? 0);
  const leastInWindKt = Math.min(askedInWindKt, stop.lastKt);
  const leastOfThrustKt = Math.max(leastForRunKt, leastForStopKt);
  return {
    check: {
      distanceM: markM,
      expectedKt: reachedKt,
      leastKt: Math.max(leastOfThrustKt, leastInWindKt),
      boundBy: leastInWindKt > leastOfThrustKt ? 'expected' : byRun ? 'tora' : 'asda',
      leastInWindKt,
      leastForRunKt,
      leastForStopKt,
    },
    because: null,
  };
}

interface Shared {
  readonly share: number;
  readonly roll: Roll;
}

/** Least share of thrust that reaches an airspeed within a distance; `run` is with all of it. */
function leastShare(
  withShare: (share: number) => Roll,
  run: Roll,
  airMps: number,
  withinM: number,
): Shared {
  const whole: Shared = { share: 1, roll: run };
  // Runs are most of the work, and the last one tried is usually the one found.
  let latest = whole;
  const rollWith = (share: number): Roll => {
    if (share === whole.share) return run;
    if (share !== latest.share) latest = { share, roll: withShare(share) };
    return latest.roll;
  };
  // 1 / distance is nearly linear in thrust, and 0 if the speed is never reached.
  const short = (share: number) => {
    const roll = rollWith(share);
    const m = reaches(roll, airMps) ? rollMomentAt(roll, airMps).m : Number.POSITIVE_INFINITY;
    return 1 / m - 1 / withinM;
  };
  if (short(whole.share) <= 0) return whole;
  const share = zeroBetween(short, 0, whole.share, NEAR_SHARE);
  return { share, roll: rollWith(share) };
}
