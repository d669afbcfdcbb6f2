/** Landing: speeds, distances, and what stopping asks of brakes, tyres and parachute. */

import { KT_PER_MPS, M_PER_FT } from '../units';
import { speedAtLiftKt, trueMps } from './aerodynamics';
import { descentM, overGroundM } from './airborne';
import { sinkFtMin } from './climb';
import { cannot, conditionsOf, isCannot, type RollConditions } from './conditions';
import { landingFactor } from './factors';
import { aloftN, type Hanging, type Power, type StopForce, stopMotion } from './forces';
import type { Landing, LandingAnswer, StopForcesN } from './landingAnswer';
import type { Cannot, LandingQuestion } from './performance';
import { atRest, endOf, type RollMoment, reaches, speedUp } from './roll';
import { additiveKt } from './speeds';

/** Height over the threshold, m. 14 CFR 25.125. */
const THRESHOLD_M = 50 * M_PER_FT;

/** The landing, or why there is none. Never throws for a question of the right type. */
export function landing(question: LandingQuestion): LandingAnswer {
  const begun = begin(question);
  if (isCannot(begun)) return begun;
  const { conditions, speeds, stops } = begun;
  const { aircraft, surface } = question;
  const { performance, densityRatio } = conditions;
  const { parachute, brakes } = performance;
  const opened = parachute !== undefined && question.parachute !== false;
  const stopped = stops(opened);
  if (stopped === null) return cannot('never-stops');
  const bare = opened ? stops(false) : null;
  const air = airDistance(conditions, speeds);
  if (air === null) return cannot('never-stops');
  const { airM, approachMps, flareMps, touchdownMps } = air;
  const { pullN, dragN } = aloftN(
    conditions,
    approachMps,
    { setting: 'full', share: 1, deadDragM2: 0 },
    DOWN,
  );
  const neededM = airM + stopped.m;
  const ldaFactor = landingFactor(aircraft, surface, question.factors);
  const energyMJ = stopped.gained / 1e6;
  const { tyreKt } = aircraft.limits;
  return {
    kind: 'landing',
    given: {
      massKg: question.massKg,
      densityRatio,
      headwindKt: question.headwindKt,
      referenceFactor: performance.landing.reference,
      touchdownShare: performance.landing.touchdownShare,
      reportedHeadwindKt: question.reportedHeadwindKt ?? question.headwindKt,
      pathDeg: performance.landing.pathDeg,
      ldaFactor,
    },
    speeds,
    sinkFtMin: sinkFtMin(speeds.approachGroundKt, performance.landing.pathDeg),
    airM,
    airTrueKt: {
      approach: approachMps * KT_PER_MPS,
      flare: flareMps * KT_PER_MPS,
      touchdown: touchdownMps * KT_PER_MPS,
    },
    flareN: air.flareN,
    runM: stopped.m,
    heldS: brakes.delayS,
    forcesN: stopForcesN(begun, stopped, opened),
    bare: bare && { runM: bare.m, forcesN: stopForcesN(begun, bare, false) },
    neededM,
    plannedM: neededM * ldaFactor,
    brakes: {
      energyMJ,
      within: brakes.maxMJ === undefined || energyMJ <= brakes.maxMJ,
    },
    parachute: opened
      ? {
          within: speeds.touchdownKt <= parachute.maxKt,
        }
      : null,
    tyre:
      tyreKt === undefined ? null : { limitKt: tyreKt, leftKt: tyreKt - speeds.touchdownGroundKt },
    goAroundPercent: 100 * Math.min((pullN - dragN) / conditions.weightN, 1),
    goAround: { thrustN: pullN, dragN, weightN: conditions.weightN },
  };
}

/** Only the lengths of {@link landing}: the run, and from 50 ft to rest, m. */
export function landingLengths(
  question: LandingQuestion,
): { readonly runM: number; readonly neededM: number } | Cannot {
  const begun = begin(question);
  if (isCannot(begun)) return begun;
  const stopped = begun.stops(question.parachute !== false);
  const air = airDistance(begun.conditions, begun.speeds);
  if (stopped === null || air === null) return cannot('never-stops');
  return { runM: stopped.m, neededM: air.airM + stopped.m };
}

/** Only the LDA needed, metres: air distance and run; null if {@link landing} has no answer. */
export function landingNeededM(question: LandingQuestion): number | null {
  const lengths = landingLengths(question);
  return isCannot(lengths) ? null : lengths.neededM;
}

interface Begun {
  readonly conditions: RollConditions;
  readonly speeds: Landing['speeds'];
  /** From touch-down to rest, with or without the parachute; null if it doesn't stop. */
  readonly stops: (withParachute: boolean, counted?: StopForce) => RollMoment | null;
}

function begin(question: LandingQuestion): Begun | Cannot {
  const { aircraft, gustSpreadKt } = question;
  const given = [gustSpreadKt, question.reportedHeadwindKt ?? 0];
  if (!given.every(Number.isFinite)) return cannot('not-a-number');
  if (gustSpreadKt < 0) return cannot('not-a-number');
  const conditions = conditionsOf(question, aircraft.masses.maxLandingKg);
  if (isCannot(conditions)) return conditions;
  const speeds = speedsOf(question, conditions);
  return { conditions, speeds, stops: (...how) => stopFrom(speeds, conditions, ...how) };
}

function speedsOf(
  { massKg, headwindKt, reportedHeadwindKt = headwindKt, gustSpreadKt }: LandingQuestion,
  { performance, densityRatio }: RollConditions,
): Landing['speeds'] {
  const { wing, landing: rule } = performance;
  const stallKt = speedAtLiftKt(massKg, wing.areaM2, wing.clMax.landing);
  const referenceKt = rule.reference * stallKt;
  const additive = additiveKt(performance, reportedHeadwindKt, gustSpreadKt);
  const approachKt = referenceKt + additive;
  const touchdownKt = rule.touchdownShare * approachKt;
  const trueKt = trueMps(touchdownKt, densityRatio) * KT_PER_MPS;
  return {
    stallKt,
    referenceKt,
    additiveKt: additive,
    approachKt,
    touchdownKt,
    approachGroundKt: Math.max(trueMps(approachKt, densityRatio) * KT_PER_MPS - headwindKt, 0),
    touchdownGroundKt: Math.max(trueKt - headwindKt, 0),
  };
}

/** 50 ft to touch-down: ground distance, m, true airspeeds, m/s, and forces in the flare, N. */
interface AirDistance {
  readonly airM: number;
  readonly approachMps: number;
  readonly flareMps: number;
  readonly touchdownMps: number;
  readonly flareN: Landing['flareN'];
}

/**
 * From 50 ft to touch-down: flared at the mean of approach and touch-down speed, for as long as the
 * arc takes or, if longer, as drag takes to bring the speed down. Null if idle thrust is as strong
 * as the drag.
 *
 * Δ(½ m V²) = ∫ (D − T) ds, with the drag of take-off flaps, the most a document has; landing flaps
 * have more. Handbook air distances grow with V² as this does: an arc alone hardly grows with
 * height and heat, and is up to 8 % short of a handbook's landing on a hot day.
 */
function airDistance(
  conditions: RollConditions,
  { approachKt, touchdownKt }: Landing['speeds'],
): AirDistance | null {
  const { performance, densityRatio, headwindMps, massKg } = conditions;
  const approachMps = trueMps(approachKt, densityRatio);
  const touchdownMps = trueMps(touchdownKt, densityRatio);
  const flareMps = (approachMps + touchdownMps) / 2;
  const { approachM, flareM } = descentM(THRESHOLD_M, performance.landing.pathDeg, flareMps);
  const { pullN, dragN } = aloftN(conditions, flareMps, IDLE, DOWN);
  if (dragN <= pullN) return null;
  const slowedM = (massKg * (approachMps ** 2 - touchdownMps ** 2)) / 2 / (dragN - pullN);
  const airM =
    overGroundM(approachM, approachMps, headwindMps) +
    overGroundM(Math.max(flareM, slowedM), flareMps, headwindMps);
  return {
    airM: Math.max(airM, 0),
    approachMps,
    flareMps,
    touchdownMps,
    flareN: { dragN, thrustN: pullN },
  };
}

const IDLE: Power = { setting: 'idle', share: 1, deadDragM2: 0 };

const DOWN: Hanging = { gear: true, flaps: true };

/** The speed holds until the brakes bite; then they stop it. */
function stopFrom(
  { touchdownKt }: Landing['speeds'],
  conditions: RollConditions,
  withParachute: boolean,
  counted?: StopForce,
): RollMoment | null {
  const { performance, densityRatio, headwindMps } = conditions;
  const touchdownMps = trueMps(touchdownKt, densityRatio);
  const heldS = performance.brakes.delayS;
  const motion = stopMotion(conditions, 'rollout', withParachute, counted);
  const openMps = trueMps(performance.parachute?.maxKt ?? touchdownKt, densityRatio);
  const slow = speedUp(atRest(headwindMps), motion, Math.min(openMps, touchdownMps));
  const stop = speedUp(slow, motion, touchdownMps);
  if (!reaches(stop, touchdownMps)) return null;
  const braking = endOf(stop);
  return {
    ...braking,
    s: heldS + braking.s,
    m: heldS * Math.max(touchdownMps - headwindMps, 0) + braking.m,
  };
}

/** Each force's work over the distance on which the brakes bite. */
function stopForcesN(
  { conditions, speeds, stops }: Begun,
  stopped: RollMoment,
  withParachute: boolean,
): StopForcesN {
  const heldM = (conditions.performance.brakes.delayS * speeds.touchdownGroundKt) / KT_PER_MPS;
  const mean = (moment: RollMoment | null) =>
    moment !== null && moment.m > heldM ? moment.gained / (moment.m - heldM) : 0;
  return {
    brakesN: mean(stopped),
    dragN: mean(stops(withParachute, 'drag')),
    slopeN: conditions.weightN * conditions.sin,
    thrustN: mean(stops(withParachute, 'thrust')),
  };
}
