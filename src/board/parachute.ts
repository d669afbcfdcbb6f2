/** Whether today's numbers may count on the braking parachute. */

import { computed } from '@preact/signals';
import { optionsIn, PHASES, type Phase, type StepId, tickKey } from '../core';
import { documents, inputs, sortie } from './board';
import { procedure } from './flown';

/** Why it is not counted on. */
export type NoParachute =
  /** The pilot says so. */
  | 'own'
  /** The option that stands for it is not fitted. */
  | 'not-fitted'
  /** A step that is asked with that option was said not to be possible. */
  | 'cannot';

/** Null where it is counted on, and for an aircraft that has none. */
export const noParachute = computed((): NoParachute | null => {
  const parachute = documents.value.aircraft?.performance?.parachute;
  if (parachute === undefined) return null;
  const { option } = parachute;
  if (option !== undefined && !isFitted(option)) return 'not-fitted';
  if (option !== undefined && isCannot(option)) return 'cannot';
  return inputs.value.noParachute ? 'own' : null;
});

/** As the pilot says, or else the procedure; one that the procedure does not know counts as fitted. */
const isFitted = (option: string): boolean =>
  inputs.value.options[option] ??
  procedure.value?.options?.find(({ id }) => id === option)?.fitted ??
  true;

/** What is done before the roll says what can be used in it. */
const isBefore = (phase: Phase): boolean => PHASES.indexOf(phase) < PHASES.indexOf('roll');

function isCannot(option: string): boolean {
  const phases = procedure.value?.phases.filter(({ phase }) => isBefore(phase)) ?? [];
  return phases
    .flatMap(({ steps }) => steps)
    .some(({ id, when }) => when && optionsIn(when).includes(option) && wasCannot(id));
}

/** What was said of a step last, in the last of its phase's passes that it was reached in. */
function wasCannot(step: StepId): boolean {
  const { run } = sortie.value;
  if (run === null) return false;
  for (let pass = Math.max(...Object.values(run.passes)); pass > 0; pass -= 1) {
    const ticked = run.ticks.get(tickKey(pass, step));
    if (ticked !== undefined) return ticked.outcome === 'cannot';
  }
  return false;
}
