/** How long each phase has taken, this time round. */

import type { Moment } from '../sortie/entry';
import type { Run, Stamp } from '../sortie/fold';
import type { Phase, Procedure } from './procedure';

/**
 * The time spent in each phase so far, ms by the device's clock, and when the last thing was done. Of
 * a phase that is flown again only the present time round counts.
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
  const passOf = (phase: Phase) => run?.passes[phase] ?? 1;
  const done = [
    ...[...(run?.ticks ?? [])].flatMap(([key, { at }]) => {
      const joint = key.indexOf('/');
      const phase = phaseOf.get(key.slice(joint + 1));
      if (phase === undefined) return [];
      return [{ phase, ms: at.wallMs, isPast: Number(key.slice(0, joint)) < passOf(phase) }];
    }),
    ...stamps.map(({ what, pass, at }) => ({
      phase: PHASE_OF[what],
      ms: at.wallMs,
      isPast: pass < passOf('roll'),
    })),
  ].sort((a, b) => a.ms - b.ms);
  const ms = new Map<Phase, number>();
  let before = run?.openedAt.wallMs ?? done[0]?.ms ?? 0;
  for (const one of done) {
    const took = one.isPast ? 0 : Math.max(0, one.ms - before);
    ms.set(one.phase, (ms.get(one.phase) ?? 0) + took);
    before = Math.max(before, one.ms);
  }
  return { ms, lastMs: done.length === 0 ? null : before };
}
