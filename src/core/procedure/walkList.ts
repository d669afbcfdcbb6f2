/** The walk through an abnormal list: one stretch of steps, each done once. */

import type { Run } from '../sortie/fold';
import type { Facts } from './facts';
import type { AbnormalList, Phase } from './procedure';
import { order, type StepState, stateOf } from './stepState';
import { isWaiting, lastHandled, phaseRows, recordedOf, type StepRow, type Walk } from './walk';

/** A list isn't flown in a phase of its own; its steps count as long as it is open. */
const PHASE: Phase = 'roll';

const isMissing = ({ kind }: StepState) => kind === 'cannot' || kind === 'not-needed';

/**
 * The walk through a list. The step an item builds on is looked up in `flown`, the steps of the
 * phases: if that one couldn't be done or wasn't needed, the item isn't there to be used, and is
 * passed.
 */
export function walkList(
  list: AbnormalList,
  run: Run | null,
  facts: Facts,
  flown: readonly StepRow[],
): Walk {
  const rows = list.steps.map((step): StepRow => {
    const recorded = recordedOf(run, 1, step);
    const base = flown.find((row) => row.step.id === step.needs)?.state;
    const state =
      base !== undefined && isMissing(base) && recorded.tick === undefined
        ? base
        : stateOf(step, PHASE, recorded, facts, order(PHASE));
    return { step, phase: PHASE, pass: 1, state };
  });
  const heldBack = rows.filter((row) => row.state.kind === 'held');
  // What is held back comes after everything else, or it would still be the due step.
  const waiting = [...rows.filter(isWaiting), ...heldBack];
  const first = waiting[0];
  return {
    phases: [phaseRows(PHASE, rows)],
    phase: PHASE,
    position:
      first === undefined ? { kind: 'list-end' } : { kind: 'step', row: first, barrier: null },
    next: waiting.slice(1).map((row) => ({ kind: 'step', row })),
    heldBack,
    lastHandled: lastHandled(rows, run),
  };
}

/** The steps of a list that aren't there to be used, because what they build on isn't. */
export const notThere = ({ phases }: Walk, run: Run | null): readonly StepRow[] =>
  phases
    .flatMap(({ rows }) => rows)
    .filter(
      ({ step, state, pass }) =>
        step.needs !== undefined &&
        isMissing(state) &&
        recordedOf(run, pass, step).tick === undefined,
    );
