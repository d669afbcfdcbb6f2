/** How long each phase took. */

import type { Moment } from '../sortie/entry';
import type { Run, Stamp } from '../sortie/fold';
import type { Phase, Procedure } from './procedure';

/**
 * The time spent in each phase so far, ms by the device's clock, and when the last thing was done.
 */
export interface PhaseTimes {
  readonly ms: ReadonlyMap<Phase, number>;
  /**
   * Since when the due step has been due, ms of the device's clock; null before anything is done.
   */
  readonly lastMs: number | null;
}

/** The phase a moment ends or belongs to. */
const PHASE_OF: Readonly<Record<Moment, Phase>> = {
  'off chocks': 'ramp',
  'brakes released': 'line-up',
  stopping: 'roll',
  airborne: 'roll',
  landed: 'recovery',
  'on chocks': 'after',
};

/**
 * The time between two things done counts for the phase of the second. Steps done later than their
 * phase count for the phase they are listed in; a clock that was set back counts as no time.
 */
export function phaseTimes(
  procedure: Procedure,
  run: Run | null,
  stamps: readonly Stamp[],
): PhaseTimes {
  const phaseOf = new Map(
    procedure.phases.flatMap(({ phase, steps }) => steps.map(({ id }) => [id, phase] as const)),
  );
  const done = [
    ...[...(run?.ticks ?? [])].flatMap(([key, { at }]) => {
      const phase = phaseOf.get(key.slice(key.indexOf('/') + 1));
      return phase === undefined ? [] : [{ phase, ms: at.wallMs }];
    }),
    ...stamps.map(({ what, at }) => ({ phase: PHASE_OF[what], ms: at.wallMs })),
  ].sort((a, b) => a.ms - b.ms);
  const ms = new Map<Phase, number>();
  let before = run?.openedAt.wallMs ?? done[0]?.ms ?? 0;
  for (const one of done) {
    ms.set(one.phase, (ms.get(one.phase) ?? 0) + Math.max(0, one.ms - before));
    before = Math.max(before, one.ms);
  }
  return { ms, lastMs: done.length === 0 ? null : before };
}
