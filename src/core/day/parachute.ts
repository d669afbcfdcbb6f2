/** Whether today's numbers count on the braking parachute: folded from entries, not step states. */

import type { Aircraft } from '../aircraft/aircraft';
import { optionsIn } from '../procedure/condition';
import { PHASES } from '../procedure/phases';
import type { Phase, Procedure, StepId } from '../procedure/procedure';
import { undoneIn } from '../procedure/undone';
import { type Inputs, tieKey } from '../sortie/entry';
import { type Run, type Ticked, tickKey } from '../sortie/run';

export type NoParachute =
  /** The pilot says so. */
  | 'own'
  /** Its option is not fitted. */
  | 'not-fitted'
  /** A step that asks for its option was marked as not possible. */
  | 'cannot'
  /** It was pulled or dropped since it was packed. */
  | 'used';

export interface ParachuteQuestion {
  readonly aircraft: Aircraft | null;
  readonly procedure: Procedure | null;
  readonly run: Run | null;
  readonly inputs: Pick<Inputs, 'options' | 'noParachute' | 'notSimulated'>;
}

/** Why it is not counted on; null if it is, and for an aircraft without one. */
export function noParachuteOf(question: ParachuteQuestion): NoParachute | null {
  const parachute = question.aircraft?.performance?.parachute;
  if (parachute === undefined) return null;
  const { option } = parachute;
  if (option !== undefined && !isFitted(option, question)) return 'not-fitted';
  if (option !== undefined && isCannot(option, question)) return 'cannot';
  if (option !== undefined && isUsed(option, question)) return 'used';
  return question.inputs.noParachute ? 'own' : null;
}

/** As the pilot says, else the procedure; an option unknown to the procedure counts as fitted. */
const isFitted = (option: string, { inputs, procedure }: ParachuteQuestion): boolean =>
  Object.hasOwn(inputs.options, option)
    ? inputs.options[option] === true
    : (procedure?.options?.find(({ id }) => id === option)?.fitted ?? true);

/** Only what comes before the roll says what the roll can use. */
const isBefore = (phase: Phase): boolean => PHASES.indexOf(phase) < PHASES.indexOf('roll');

/** The steps before the roll that ask for the option. */
const askedFor = (option: string, { procedure }: ParachuteQuestion): readonly StepId[] =>
  (procedure?.phases ?? [])
    .filter(({ phase }) => isBefore(phase))
    .flatMap(({ steps }) => steps)
    .filter(({ when }) => when !== undefined && optionsIn(when).includes(option))
    .map(({ id }) => id);

const isCannot = (option: string, question: ParachuteQuestion): boolean =>
  askedFor(option, question).some(
    (step) => wasCannot(step, question.run) || isNotSimulated(step, question),
  );

/** Said in an earlier sortie, and not done in this one after all. */
const isNotSimulated = (step: StepId, { procedure, run, inputs }: ParachuteQuestion): boolean =>
  procedure !== null &&
  inputs.notSimulated.includes(tieKey(procedure.code, step)) &&
  (run === null || lastTick(step, run)?.outcome !== 'done');

/** It is used up until a step that asks for it is done again. */
function isUsed(option: string, question: ParachuteQuestion): boolean {
  const { procedure, run } = question;
  if (procedure === null || run === null) return false;
  const undone = undoneIn(procedure, run);
  return askedFor(option, question).some((step) => {
    const undoneAt = undone.get(step);
    return undoneAt !== undefined && undoneAt > (lastTick(step, run)?.seq ?? 0);
  });
}

/** The last word on a step, in the last pass of its phase that reached it. */
function lastTick(step: StepId, run: Run): Ticked | undefined {
  for (let pass = Math.max(...Object.values(run.passes)); pass > 0; pass -= 1) {
    const ticked = run.ticks.get(tickKey(pass, step));
    if (ticked !== undefined) return ticked;
  }
  return undefined;
}

const wasCannot = (step: StepId, run: Run | null): boolean =>
  run !== null && lastTick(step, run)?.outcome === 'cannot';
