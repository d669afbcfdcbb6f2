/** Whether today's numbers may count on the braking parachute. Folded from entries, never from how steps stand. */

import type { Aircraft } from '../aircraft/aircraft';
import { optionsIn } from '../procedure/condition';
import { PHASES } from '../procedure/phases';
import type { Phase, Procedure, StepId } from '../procedure/procedure';
import type { Inputs } from '../sortie/entry';
import { type Run, tickKey } from '../sortie/run';

/** Why it is not counted on. */
export type NoParachute =
  /** The pilot says so. */
  | 'own'
  /** The option that stands for it is not fitted. */
  | 'not-fitted'
  /** A step that is asked with that option was said not to be possible. */
  | 'cannot';

/** What decides it. */
export interface ParachuteQuestion {
  readonly aircraft: Aircraft | null;
  readonly procedure: Procedure | null;
  readonly run: Run | null;
  readonly inputs: Pick<Inputs, 'options' | 'noParachute'>;
}

/** Null where it is counted on, and for an aircraft that has none. */
export function noParachuteOf(question: ParachuteQuestion): NoParachute | null {
  const parachute = question.aircraft?.performance?.parachute;
  if (parachute === undefined) return null;
  const { option } = parachute;
  if (option !== undefined && !isFitted(option, question)) return 'not-fitted';
  if (option !== undefined && isCannot(option, question)) return 'cannot';
  return question.inputs.noParachute ? 'own' : null;
}

/** As the pilot says, or else the procedure; one that the procedure does not know counts as fitted. */
const isFitted = (option: string, { inputs, procedure }: ParachuteQuestion): boolean =>
  Object.hasOwn(inputs.options, option)
    ? inputs.options[option] === true
    : (procedure?.options?.find(({ id }) => id === option)?.fitted ?? true);

/** What is done before the roll says what can be used in it. */
const isBefore = (phase: Phase): boolean => PHASES.indexOf(phase) < PHASES.indexOf('roll');

function isCannot(option: string, { procedure, run }: ParachuteQuestion): boolean {
  const phases = procedure?.phases.filter(({ phase }) => isBefore(phase)) ?? [];
  return phases
    .flatMap(({ steps }) => steps)
    .some(({ id, when }) => when && optionsIn(when).includes(option) && wasCannot(id, run));
}

/** What was said of a step last, in the last of its phase's passes that it was reached in. */
function wasCannot(step: StepId, run: Run | null): boolean {
  if (run === null) return false;
  for (let pass = Math.max(...Object.values(run.passes)); pass > 0; pass -= 1) {
    const ticked = run.ticks.get(tickKey(pass, step));
    if (ticked !== undefined) return ticked.outcome === 'cannot';
  }
  return false;
}
