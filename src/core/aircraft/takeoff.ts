/** Take-off: what today's mass, air, wind and runway make of an aircraft's profile. */

import { indicatedKt, trueMps } from './aerodynamics';
import { flyToHeight } from './airborne';
import { checkAt } from './checkMark';
import { climbOf } from './climb';
import { climbOutOf } from './climbOut';
import { cannot, conditionsOf, isCannot, type RollConditions } from './conditions';
import type { Power } from './forces';
import { goOnFrom } from './goOn';
import type { Cannot, TakeoffQuestion } from './performance';
import { endOf, type Roll, rollMomentAt } from './roll';
import { takeoffSpeeds } from './speeds';
import { lastStop } from './stop';
import type { Gate, GateAloft, GoOn, OrCause, Stop, Takeoff, TakeoffAnswer } from './takeoffAnswer';
import { gateAt, liftsOff, type RunPlan, runForcesN, SCREEN_M, takeoffRoll } from './takeoffRoll';
import { thrustOf } from './thrust';

/** The take-off, or why there is none. Never throws for a question of the right type. */
export function takeoff(question: TakeoffQuestion): TakeoffAnswer {
  const begun = begin(question);
  if (isCannot(begun)) return begun;
  const { conditions, plan, run } = begun;
  const { aircraft, rollsFromM, runway, stop: asked } = question;
  const { speeds, reheat } = plan;
  const toraM = runway.toraM - rollsFromM;
  const todaM = runway.todaM - rollsFromM;
  const asdaM = runway.asdaM - rollsFromM;

  const last = lastStop(conditions, aircraft, speeds, run, asdaM, asked);
  if (last === null) return cannot('never-stops');
  const { stop } = last;
  const forcesN = runForcesN(conditions, plan);
  const at50ft = at50ftOf(begun);
  const to50ftM: OrCause<'cannot-climb'> =
    at50ft === null
      ? { value: null, because: 'cannot-climb' }
      : { value: at50ft.distanceM, because: null };
  const liftOff = gateAt(endOf(run), conditions);
  const rotation = gate(run, speeds.rotateKt, conditions);
  const climbOut = climbOutOf(conditions, aircraft, run, reheat);
  const goOn = goOnFrom(conditions, plan, run, stop.lastKt, { toraM, todaM });
  const failure = goOn?.lowest.because === null ? goOn.lowest.bound.field : null;
  const mark = question.checkMark;
  const check: Takeoff['check'] =
    mark === undefined
      ? { check: null, because: 'no-mark' }
      : checkAt(conditions, plan, run, last, {
          markM: mark.atM - rollsFromM,
          toraM,
          asdaM,
          stopFromKt: mark.stopFromKt ?? stop.lastKt,
          expectedKt: mark.expectedKt ?? null,
          leastKt: mark.leastKt ?? null,
        });
  return {
    kind: 'takeoff',
    given: givenOf(question, begun),
    speeds,
    run: {
      runM: liftOff.distanceM,
      runS: liftOff.s,
    },
    to50ftM,
    at50ft,
    gates: gatesOf(question, begun, rotation, liftOff),
    rotation,
    liftOff,
    left: {
      toraM: toraM - liftOff.distanceM,
      todaM: to50ftM.value === null ? to50ftM : { value: todaM - to50ftM.value, because: null },
      asdaM: asdaM - stop.distanceM,
    },
    stop,
    goOn,
    check,
    forcesN: {
      toLiftOff: forcesN(liftOff.distanceM),
      toMark: check.check && forcesN(check.check.distanceM),
      toFailure: failure && forcesN(failure.withinM - failure.onwardM),
    },
    limits: {
      tyre:
        aircraft.limits.tyreKt === undefined
          ? null
          : {
              limitKt: aircraft.limits.tyreKt,
              liftOffGroundKt: liftOff.groundKt,
              leftKt: aircraft.limits.tyreKt - liftOff.groundKt,
            },
      ...climbOut.limits,
    },
    climbOut: climbOut.gates,
    climb: climbOf(conditions, aircraft),
  };
}

/** Only the stop of {@link takeoff}; null if that has no answer. */
export function lastStopOf(question: TakeoffQuestion): Stop | null {
  const begun = begin(question);
  if (isCannot(begun)) return null;
  const { conditions, plan, run } = begun;
  const asdaM = question.runway.asdaM - question.rollsFromM;
  return lastStop(conditions, question.aircraft, plan.speeds, run, asdaM)?.stop ?? null;
}

/**
 * Only the run to lift-off, metres, for tables by headwind; null if {@link takeoff} has no answer.
 * Ignores `runway` and whatever else the run doesn't depend on.
 */
export function runNeededM(question: TakeoffQuestion): number | null {
  const begun = begin(question);
  return isCannot(begun) ? null : endOf(begun.run).m;
}

/** What a handbook prints of a take-off; what costs more than the run is worked out when asked for. */
export interface TakeoffFigures {
  readonly runM: number;
  /** From the start of the roll, m; null if it doesn't climb to 50 ft. */
  readonly to50ftM: () => number | null;
  /** At climb speed, gear and flaps up, ft/min. */
  readonly climbFtMin: () => number;
}

/** Only what handbooks print of a {@link takeoff}, for fitting. Ignores `runway`. */
export function takeoffFigures(question: TakeoffQuestion): TakeoffFigures | Cannot {
  const begun = begin(question);
  if (isCannot(begun)) return begun;
  return {
    runM: endOf(begun.run).m,
    to50ftM: () => at50ftOf(begun)?.distanceM ?? null,
    climbFtMin: () => climbOf(begun.conditions, question.aircraft).rateFtMin,
  };
}

/** What a take-off asks of runway lengths, and what else may forbid it. */
export interface TakeoffLengths {
  /** From the start of the roll, m; null if it doesn't climb to 50 ft. */
  readonly runM: number;
  readonly to50ftM: number | null;
  readonly liftOffGroundKt: number;
  readonly lastStopKt: number;
  /** Null with one engine. */
  readonly goOn: GoOn | null;
}

/** Only the lengths of {@link takeoff}, for tables by headwind. */
export function takeoffLengths(question: TakeoffQuestion): TakeoffLengths | Cannot {
  const begun = begin(question);
  if (isCannot(begun)) return begun;
  const { conditions, plan, run } = begun;
  const { runway, rollsFromM, aircraft } = question;
  const last = lastStop(conditions, aircraft, plan.speeds, run, runway.asdaM - rollsFromM);
  if (last === null) return cannot('never-stops');
  const liftOff = gateAt(endOf(run), conditions);
  const lastStopKt = last.stop.lastKt;
  return {
    runM: liftOff.distanceM,
    to50ftM: at50ftOf(begun)?.distanceM ?? null,
    liftOffGroundKt: liftOff.groundKt,
    lastStopKt,
    goOn: goOnFrom(conditions, plan, run, lastStopKt, {
      toraM: runway.toraM - rollsFromM,
      todaM: runway.todaM - rollsFromM,
    }),
  };
}

interface Begun {
  readonly conditions: RollConditions;
  readonly plan: RunPlan;
  readonly run: Roll;
}

/** The run, on which all else rests. */
function begin(question: TakeoffQuestion): Begun | Cannot {
  const { aircraft, massKg, fuelKg, runway, rollsFromM, gatesKt = [], checkMark, stop } = question;
  const lengths = [runway.toraM, runway.todaM, runway.asdaM, rollsFromM, checkMark?.atM ?? 0];
  if (!lengths.every((m) => Number.isFinite(m) && m >= 0)) return cannot('not-a-number');
  const { stopFromKt = 0, expectedKt = 0, leastKt = 0 } = checkMark ?? {};
  const speeds = [...gatesKt, stopFromKt, expectedKt, leastKt, stop?.fromKt ?? 0];
  if (!speeds.every(Number.isFinite)) return cannot('not-a-number');
  const conditions = conditionsOf(question, aircraft.masses.maxTakeoffKg, fuelKg);
  if (isCannot(conditions)) return conditions;
  const plan: RunPlan = {
    speeds: takeoffSpeeds(aircraft, conditions.performance, massKg),
    reheat: hasReheat(conditions) && question.reheat !== false,
    thrustShare: 1,
  };
  const run = takeoffRoll(conditions, plan);
  return liftsOff(run, plan, conditions) ? { conditions, plan, run } : cannot('never-lifts-off');
}

const hasReheat = ({ performance: { thrust } }: RollConditions): boolean =>
  thrust.kind === 'jet' && thrust.reheatN !== undefined;

const gate = (run: Roll, speedKt: number, conditions: RollConditions): Gate =>
  gateAt(rollMomentAt(run, trueMps(speedKt, conditions.densityRatio)), conditions);

/** The gates asked for within the run, plus rotation and lift-off. */
function gatesOf(
  { gatesKt = [] }: TakeoffQuestion,
  { conditions, run }: Begun,
  rotation: Gate,
  liftOff: Gate,
): readonly Gate[] {
  const first = indicatedKt(Math.max(run.moments[0].airMps, 0), conditions.densityRatio);
  const asked = gatesKt
    .filter((kt) => kt >= first && kt < liftOff.speedKt)
    .map((kt) => gate(run, kt, conditions));
  return [...asked, rotation, liftOff].sort((a, b) => a.speedKt - b.speedKt);
}

/** At 50 ft, gear and flaps as for take-off; null if it doesn't climb that far. */
function at50ftOf({ conditions, plan, run }: Begun): GateAloft | null {
  const { speeds, reheat } = plan;
  const power: Power = { setting: reheat ? 'reheat' : 'full', share: 1, deadDragM2: 0 };
  const flown = flyToHeight({ conditions, speeds, power }, SCREEN_M);
  if (flown === null) return null;
  const { s, m, gained } = endOf(run);
  const moment = { airMps: flown.airMps, s: s + flown.s, m: m + flown.m, gained };
  return { ...gateAt(moment, conditions), airM: flown.m };
}

function givenOf(question: TakeoffQuestion, { conditions, plan }: Begun): Takeoff['given'] {
  const { densityRatio } = conditions;
  const { thrust } = conditions.performance;
  const setting = plan.reheat ? 'reheat' : 'full';
  return {
    massKg: question.massKg,
    densityRatio,
    headwindKt: question.headwindKt,
    heatCounted: thrust.kind !== 'jet' || thrust.at20Hotter !== undefined,
    staticThrustN: thrustOf(conditions, setting)(0),
  };
}
