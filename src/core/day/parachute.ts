/** Whether today's numbers count on the braking parachute: folded from entries, not step states. */

import type { Aircraft } from '../aircraft/aircraft';
import { optionsIn } from '../procedure/condition';
import { PHASES } from '../procedure/phases';
import type { Phase, Procedure, StepId } from '../procedure/procedure';
import type { Inputs } from '../sortie/entry';
import { type Run, tickKey } from '../sortie/run';

export type NoParachute =
  /** The pilot says so. */
  | 'own'
  /** Its option is not fitted. */
  | 'not-fitted'
  /** A step that asks for its option was marked as not possible. */
  | 'cannot';

export interface ParachuteQuestion {
  readonly aircraft: Aircraft | null;
  readonly procedure: Procedure | null;
  readonly run: Run | null;
  readonly inputs: Pick<Inputs, 'options' | 'noParachute'>;
}

/** Why it is not counted on; null if it is, and for an aircraft without one. */
export function noParachuteOf(question: ParachuteQuestion): NoParachute | null {
  const parachute = question.aircraft?.performance?.parachute;
  if (parachute === undefined) return null;
  const { option } = parachute;
  if (option !== undefined && !isFitted(option, question)) return 'not-fitted';
  if (option !== undefined && isCannot(option, question)) return 'cannot';
  return question.inputs.noParachute ? 'own' : null;
}

/** As the pilot says, else the procedure; an option unknown to the procedure counts as fitted. */
const isFitted = (option: string, { inputs, procedure }: ParachuteQuestion): boolean =>
  Object.hasOwn(inputs.options, option)
    ? inputs.options[option] === true
    : (procedure?.options?.find(({ id }) => id === option)?.fitted ?? true);

/** Only what comes before the roll says what the roll can use. */
const isBefore = (phase: Phase): boolean => PHASES.indexOf(phase) < PHASES.indexOf('roll');

function isCannot(option: string, { procedure, run }: ParachuteQuestion): boolean {
  const phases = procedure?.phases.filter(({ phase }) => isBefore(phase)) ?? [];
  return phases
    .flatMap(({ steps }) => steps)
    .some(({ id, when }) => when && optionsIn(when).includes(option) && wasCannot(id, run));
}

/** The last word on a step, in the last pass of its phase that reached it. */
function wasCannot(step: StepId, run: Run | null): boolean {
  if (run === null) return false;
  for (let pass = Math.max(...Object.values(run.passes)); pass > 0; pass -= 1) {
    const ticked = run.ticks.get(tickKey(pass, step));
    if (ticked !== undefined) return ticked.outcome === 'cannot';
  }
  return false;
}
