/**
 * What the airspeed must be at a mark beside the runway.
 *
 * The thrust is scaled down until the run just fits TORA, or until a stop from the last speed to
 * stop from just fits ASDA. The speed at the mark with so little thrust, or what today's wind lets
 * expect less 5 kt where that is more, is the least acceptable.
 * Where the field is what binds that last speed, all the thrust is needed for the stop to fit.
 */

import { indicatedKt, trueMps } from './aerodynamics';
import type { RollConditions } from './conditions';
import { endOf, momentAtM, type Roll, reaches, rollMomentAt } from './roll';
import { zeroBetween } from './solve';
import type { LastStop } from './stop';
import type { Check, NoCheck } from './takeoffAnswer';
import { type RunPlan, takeoffRoll } from './takeoffRoll';

/** Nearer than this the share of the thrust is not looked for. */
const NEAR_SHARE = 1e-4;

/** Where the mark stands and what there is, metres from where the roll begins. */
interface Mark {
  readonly markM: number;
  readonly toraM: number;
  readonly asdaM: number;
  /** The last speed that will be stopped from, kt; above the last that there is, it counts as that. */
  readonly stopFromKt: number;
  /** What is expected there in the wind as it is, kt; null for what this run comes to. */
  readonly expectedKt: number | null;
  /** The least there in that wind, kt; null for 5 kt less than expected. */
  readonly leastKt: number | null;
}

/** So much below what is expected in today's wind is still as it should be. Common practice, no published source. */
const BELOW_EXPECTED_KT = 5;

/** A stop that just fits may miss by this for how near the last speed is looked for, m. */
const NEAR_M = 0.5;

/** What the mark asks for. */
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
  // What is left for getting to the last speed, once the stop has had its part.
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
  // What just fits is no margin, and a headwind hides weak thrust. No more than can be stopped from.
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

/** A share of the thrust, and the run with it. */
interface Shared {
  readonly share: number;
  readonly roll: Roll;
}

/** The least share of the thrust with which an airspeed is reached within a distance; `run` is that with all of it. */
function leastShare(
  withShare: (share: number) => Roll,
  run: Roll,
  airMps: number,
  withinM: number,
): Shared {
  const whole: Shared = { share: 1, roll: run };
  // Runs are most of the work of a take-off: the last one looked at is mostly the one that is found.
  let latest = whole;
  const rollWith = (share: number): Roll => {
    if (share === whole.share) return run;
    if (share !== latest.share) latest = { share, roll: withShare(share) };
    return latest.roll;
  };
  // One over the distance goes nearly straight with thrust, and is 0 where the speed is never reached.
  const short = (share: number) => {
    const roll = rollWith(share);
    const m = reaches(roll, airMps) ? rollMomentAt(roll, airMps).m : Number.POSITIVE_INFINITY;
    return 1 / m - 1 / withinM;
  };
  if (short(whole.share) <= 0) return whole;
  const share = zeroBetween(short, 0, whole.share, NEAR_SHARE);
  return { share, roll: rollWith(share) };
}
