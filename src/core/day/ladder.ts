/** The ladder of the roll: the speeds to see, and when and where they come. */

import { takeoff } from '../aircraft/takeoff';
import type { StopBound, Takeoff } from '../aircraft/takeoffAnswer';
import type { Figure } from '../figure';
import { fromAircraft } from './given';
import type { TodayBrief } from './today';

export interface Rung {
  readonly what: 'mark' | 'last-stop' | 'rotate' | 'lift-off';
  readonly speed: Figure<'kt'>;
  /** Expected, from brake release, s. */
  readonly s: number;
  /** Expected, from where TORA starts, m. */
  readonly distanceM: number;
  /** At the mark: below this, stop. */
  readonly least?: Figure<'kt'>;
  /** What limits the last speed to stop from. */
  readonly boundBy?: StopBound;
}

/** A gate after lift-off, and the limit it keeps clear of. */
export interface ClimbRung {
  readonly what: 'gear-up' | 'flaps-up' | 'reheat-off' | 'climb';
  readonly speedKt: number;
  /** The speed, and the limit, with where they come from. */
  readonly figure: Figure<'kt'>;
  readonly limit: Figure<'kt'> | null;
  /** From lift-off, s. */
  readonly fromLiftOffS: number;
  /** The limit, kt, and when it comes after lift-off, s; null without one, or if never reached. */
  readonly limitKt: number | null;
  readonly limitS: number | null;
}

export interface Ladder {
  /** In the order they come. */
  readonly rungs: readonly Rung[];
  readonly climb: readonly ClimbRung[];
  /** From brake release to reheat thrust, s; null without reheat, or if lit on the brakes. */
  readonly lightUpS: number | null;
}

/** This close to rotation, kt, a speed is no rung of its own. */
const NEARLY_KT = 0.5;

/** Today's ladder; null without a take-off. */
export function ladderOf({ takeoff: { planned, expected } }: TodayBrief): Ladder | null {
  if (planned.because !== null || expected.because !== null) return null;
  const [plan, hope] = [planned.figures, expected.figures];
  const stopKt = plan.lastStopKt.value;
  const markKt = hope.atMarkKt.value;
  const rolled = takeoff({
    ...expected.asked,
    gatesKt: [stopKt, markKt].flatMap((kt) => kt ?? []),
  });
  if (rolled.kind === 'cannot') return null;
  const at = (what: Rung['what'], speed: Figure<'kt'>, more: Partial<Rung> = {}): Rung[] => {
    const gate = rolled.gates.find(({ speedKt }) => Math.abs(speedKt - (speed.value ?? -1)) < 0.01);
    if (gate === undefined) return [];
    return [{ what, speed, s: gate.s, distanceM: expected.rollsFromM + gate.distanceM, ...more }];
  };
  const isBelowRotation = (kt: number | null) =>
    kt !== null && kt < (hope.rotateKt.value ?? 0) - NEARLY_KT;
  return {
    rungs: [
      // After rotation no one stops for a missing speed.
      ...(isBelowRotation(markKt) ? at('mark', hope.atMarkKt, { least: plan.atMarkLeastKt }) : []),
      ...(isBelowRotation(stopKt)
        ? at('last-stop', plan.lastStopKt, { boundBy: planned.raw.stop.boundBy })
        : []),
      ...at('rotate', hope.rotateKt),
      ...at('lift-off', hope.liftOffKt),
    ].sort((a, b) => (a.speed.value ?? 0) - (b.speed.value ?? 0)),
    climb: climbOf(expected.raw, expected.asked.aircraft, hope.climbKt),
    lightUpS: lightUpOf(expected.asked.aircraft.performance),
  };
}

function climbOf(
  { climbOut, limits }: Takeoff,
  { climb, limits: given }: TodayBrief['aircraft'],
  climbKt: Figure<'kt'>,
): readonly ClimbRung[] {
  const figures: Readonly<Record<ClimbRung['what'], Figure<'kt'>>> = {
    'gear-up': fromAircraft(climb.gearUpByKt, 'kt'),
    'flaps-up': fromAircraft(climb.flapsUpByKt, 'kt'),
    'reheat-off': fromAircraft(climb.reheatOffKt, 'kt'),
    climb: climbKt,
  };
  return climbOut.map(({ what, speedKt, fromLiftOffS }) => {
    const limit = what === 'gear-up' ? limits.gear : what === 'flaps-up' ? limits.flaps : null;
    return {
      what,
      speedKt,
      figure: figures[what],
      limit:
        limit === null
          ? null
          : fromAircraft(what === 'gear-up' ? given.gearKt : given.flapsKt, 'kt'),
      fromLiftOffS,
      limitKt: limit?.limitKt ?? null,
      limitS: limit?.fromLiftOffS ?? null,
    };
  });
}

function lightUpOf(performance: TodayBrief['aircraft']['performance']): number | null {
  if (performance?.thrust.kind !== 'jet') return null;
  return performance.thrust.lightUpS ?? null;
}
