/** Flying phases again: another take-off of the same sortie, or another approach. */

import type { Run } from '../sortie/fold';
import { tickKey } from '../sortie/fold';
import { PHASES } from './phases';
import type { Phase, Procedure } from './procedure';

/** What makes phases be flown again. */
export type FlownAgain =
  /** Touching down and taking off again without stopping. */
  | 'touch-and-go'
  /** Back to the runway after a landing. */
  | 'take-off'
  /** Off the approach, for another one. */
  | 'approach';

const AGAIN: Readonly<Record<FlownAgain, readonly Phase[]>> = {
  'touch-and-go': ['roll', 'climb', 'recovery'],
  'take-off': ['taxi', 'line-up', 'roll', 'climb', 'recovery'],
  approach: ['recovery'],
};

/**
 * The pass each phase is in from then on, for those flown again. Once anything was done after the
 * landing, such as fitting pins, another take-off starts the whole procedure again.
 */
export function passesAgain(
  procedure: Procedure,
  run: Run,
  what: FlownAgain,
): Readonly<Partial<Record<Phase, number>>> {
  const after = procedure.phases.find(({ phase }) => phase === 'after')?.steps ?? [];
  const isAfterBegun = after.some((step) => run.ticks.has(tickKey(run.passes.after, step.id)));
  const phases = what === 'take-off' && isAfterBegun ? PHASES : AGAIN[what];
  return Object.fromEntries(phases.map((phase) => [phase, run.passes[phase] + 1]));
}
