/**
 * Steps made untrue by what was done since: a list that used what one of them had checked, or, after
 * landing, something done about the option that it had prepared. A list that checks it again makes
 * it true.
 */

import { type Run, tickKey } from '../sortie/run';
import { optionsIn } from './condition';
import { PHASES } from './phases';
import type { Phase, Procedure, Step, StepId } from './procedure';

const ROLL = PHASES.indexOf('roll');

const isBeforeRoll = (phase: Phase): boolean => PHASES.indexOf(phase) < ROLL;

const optionsOf = ({ when }: Step): readonly string[] =>
  when === undefined ? [] : optionsIn(when);

/** The steps that were made untrue, each with the number of the last entry that did. */
export function undoneIn(procedure: Procedure, run: Run | null): ReadonlyMap<StepId, number> {
  const undone = new Map<StepId, number>();
  if (run === null) return undone;
  const later = (noted: Map<StepId, number>, step: StepId, seq: number) =>
    noted.set(step, Math.max(seq, noted.get(step) ?? seq));
  const checked = new Map<StepId, number>();
  for (const { list, step, seq } of run.doneInLists) {
    const steps = procedure.lists.find(({ id }) => id === list)?.steps ?? [];
    const done = steps.find(({ id }) => id === step);
    if (done?.needs !== undefined) later(done.kind === 'check' ? checked : undone, done.needs, seq);
  }
  const inPhases = procedure.phases.flatMap(({ phase, steps }) =>
    steps.map((step) => ({ phase, step })),
  );
  const before = inPhases.filter(({ phase }) => isBeforeRoll(phase));
  for (const { phase, step } of inPhases) {
    if (isBeforeRoll(phase) || step.kind !== 'do' || optionsOf(step).length === 0) continue;
    for (let pass = run.passes[phase]; pass > 0; pass -= 1) {
      const tick = run.ticks.get(tickKey(pass, step.id));
      if (tick?.outcome !== 'done') continue;
      for (const { step: prepared } of before)
        if (optionsOf(prepared).some((option) => optionsOf(step).includes(option)))
          later(undone, prepared.id, tick.seq);
    }
  }
  for (const [step, seq] of checked) if (seq > (undone.get(step) ?? seq)) undone.delete(step);
  return undone;
}
