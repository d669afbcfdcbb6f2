/** The steps that are passed because they are not needed, for the record. */

import type { Facts, FactValues } from './facts';
import type { StepId } from './procedure';
import type { StepRow } from './walk';

/** A step that is passed, and the facts that decided it. */
export interface PassedStep {
  readonly step: StepId;
  readonly pass: number;
  readonly saw: FactValues;
}

/**
 * What is passed by going on to a row, or to the end: the rows before it that are not needed, unless
 * that was recorded before, or their time was past already.
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
