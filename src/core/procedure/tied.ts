/** Steps the pilot does earlier than the procedure has them. */

import { type Inputs, tieKey } from '../sortie/entry';
import { PHASES } from './phases';
import type { Procedure, Step, StepId } from './procedure';

/**
 * Whether a step can be done earlier: barriers, and steps tied to brake release, stay where they
 * are.
 */
export const canMove = (step: Step): boolean =>
  step.kind !== 'barrier' && step.tiedTo === undefined;

/**
 * The procedure with the pilot's ties: each tied step directly precedes the step it is tied to. A
 * tie that names no step, or leads to a later place, moves nothing: documents change, ties stay.
 */
export function tied(procedure: Procedure, ties: Inputs['ties']): Procedure {
  const moves = tiesOf(procedure, ties);
  if (moves.size === 0) return procedure;
  const phases = procedure.phases.map(({ phase, steps }) => ({ phase, steps: [...steps] }));
  for (const [id, before] of moves) {
    const from = phases.find(({ steps }) => steps.some((step) => step.id === id));
    const to = phases.find(({ steps }) => steps.some((step) => step.id === before));
    const step = from?.steps.find((one) => one.id === id);
    if (from === undefined || to === undefined || step === undefined) continue;
    // It counts as long as it did in its own place.
    const until = step.until ?? from.phase;
    from.steps.splice(from.steps.indexOf(step), 1);
    const place = to.steps.findIndex((one) => one.id === before);
    to.steps.splice(place, 0, from === to ? step : { ...step, until });
  }
  return { ...procedure, phases };
}

/** The ties that move something in a procedure: which step precedes which. */
export function tiesOf(procedure: Procedure, ties: Inputs['ties']): ReadonlyMap<StepId, StepId> {
  const inOrder = [...procedure.phases]
    .sort((a, b) => PHASES.indexOf(a.phase) - PHASES.indexOf(b.phase))
    .flatMap(({ steps }) => steps);
  const places = new Map(inOrder.map((step, place) => [step.id, place]));
  return new Map(
    inOrder.flatMap((step, place): [StepId, StepId][] => {
      const before = ties[tieKey(procedure.code, step.id)];
      const target = before === undefined ? undefined : places.get(before);
      return before !== undefined && target !== undefined && target < place && canMove(step)
        ? [[step.id, before]]
        : [];
    }),
  );
}
