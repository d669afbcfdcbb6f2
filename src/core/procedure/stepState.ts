/** How one step stands: what the record says about it, under the facts of the moment. */

import type { Decided, Ticked } from '../sortie/fold';
import { factsIn, holds } from './condition';
import { type FactName, type Facts, hasMoved, isLiveName, liveNamesIn } from './facts';
import { PHASES } from './phases';
import type { Phase, Step } from './procedure';

/** How a step stands. */
export type StepState =
  /** Not reached, or due. */
  | { readonly kind: 'open' }
  | { readonly kind: 'done' | 'held' | 'cannot'; readonly tick: Ticked }
  /**
   * Its condition doesn't hold, or didn't when it was `passed`; `facts` are those that decide it,
   * empty if it has no condition and a list led past it. `decided` is when the pilot went past it,
   * with the facts of that moment; null before that.
   */
  | {
      readonly kind: 'not-needed';
      readonly facts: readonly FactName[];
      readonly passed: boolean;
      readonly decided: Decided | null;
      /** The simulation hasn't got it, the pilot said in this sortie or one before. */
      readonly notSimulated?: true;
    }
  /** Its phase lies before the one the sortie was begun at, as in the air. */
  | { readonly kind: 'not-flown' }
  /**
   * It was done, or not needed, and then facts it depends on moved; none of them if something else
   * that was done made it untrue.
   */
  | { readonly kind: 'again'; readonly tick: Decided; readonly moved: readonly FactName[] };

/** What the record says about a step in a pass. */
export interface Recorded {
  readonly tick: Ticked | undefined;
  readonly decided: Decided | undefined;
  /** Something done since the tick made it untrue. */
  readonly isUndone: boolean;
}

/** The facts a step depends on: those of its condition, and the live numbers it shows. */
export function factsOf(step: Step): readonly FactName[] {
  const texts = [step.item, step.response, step.note ?? '', step.call ?? ''];
  return [
    ...new Set<FactName>([
      ...(step.when === undefined ? [] : factsIn(step.when)),
      ...texts.flatMap(liveNamesIn).filter(isLiveName),
      ...(step.gate === undefined ? [] : [step.gate]),
    ]),
  ];
}

/** The facts a step depends on, with their values, for the record. */
export function sawOf(step: Step, facts: Facts): Partial<Facts> {
  return Object.fromEntries(factsOf(step).map((name) => [name, facts[name]]));
}

/** Where a phase stands among the phases. */
export const order = (phase: Phase): number => PHASES.indexOf(phase);

/**
 * How a step stands. `reached` is the furthest phase the pilot has got to, by its {@link order}.
 */
export function stateOf(
  step: Step,
  phase: Phase,
  { tick, decided, isUndone }: Recorded,
  facts: Facts,
  reached: number,
): StepState {
  const past = order(step.until ?? phase) < reached;
  const needed = step.when === undefined || holds(step.when, facts) !== false;
  // A barrier can't be put off: nothing held back passes it, so it can't itself be held back.
  const isPutOffBarrier = step.kind === 'barrier' && tick?.outcome === 'held';
  if (tick === undefined || isPutOffBarrier) {
    return untickedState(step, decided, facts, past, needed);
  }
  if (tick.outcome !== 'done' || past) return { kind: tick.outcome, tick };
  const moved = movedSince(tick, factsOf(step), facts);
  // A step that was done and is no longer needed stays done: asking again gains nothing.
  return (moved.length > 0 || isUndone) && needed
    ? { kind: 'again', tick, moved }
    : { kind: 'done', tick };
}

function untickedState(
  step: Step,
  decided: Decided | undefined,
  facts: Facts,
  past: boolean,
  needed: boolean,
): StepState {
  if (step.when === undefined) return { kind: 'open' };
  const asked = factsIn(step.when);
  // Passed without a tick, it wasn't needed then: nobody is sent back once that no longer counts.
  if (past || !needed) {
    return { kind: 'not-needed', facts: asked, passed: past, decided: decided ?? null };
  }
  if (decided === undefined) return { kind: 'open' };
  const moved = movedSince(decided, asked, facts);
  return { kind: 'again', tick: decided, moved: moved.length > 0 ? moved : asked };
}

const movedSince = ({ saw }: Decided, names: readonly FactName[], facts: Facts) =>
  names.filter((name) => name in saw && hasMoved(name, saw[name] ?? null, facts[name]));
