/** The steps passed because they aren't needed, for the record. */

import type { Facts, FactValues } from './facts';
import type { StepId } from './procedure';
import type { StepRow } from './walk';

/** A passed step, and the facts that decided it. */
export interface PassedStep {
  readonly step: StepId;
  readonly pass: number;
  readonly saw: FactValues;
}

/**
 * What going on to a row, or to the end, passes: the unneeded rows before it, unless that was
 * recorded already or their time was past.
 */
export function passedBefore(
  rows: readonly StepRow[],
  to: StepRow | null,
  facts: Facts,
): readonly PassedStep[] {
  const end = to === null ? rows.length : rows.findIndex(({ step }) => step.id === to.step.id);
  return rows.slice(0, Math.max(0, end)).flatMap(({ step, pass, state }) => {
    if (state.kind !== 'not-needed' || state.passed || state.decided !== null) return [];
    const saw = Object.fromEntries(state.facts.map((name) => [name, facts[name]]));
    return [{ step: step.id, pass, saw }];
  });
}
