/** When a step applies: conditions on facts. An unknown fact never drops a step. */

import { type FactName, type FactValues, OPTION_JOINT } from './facts';
import type { Condition } from './procedure.schema';

/**
 * Whether a condition holds under the facts; null if a fact that would decide it is unknown.
 * Kleene's three-valued logic: an unknown matters only if it could change the answer.
 */
export function holds(condition: Condition, facts: FactValues): boolean | null {
  if ('fact' in condition) {
    const value = facts[condition.fact];
    return typeof value === 'boolean' ? value : null;
  }
  if ('windAboveKt' in condition) {
    const { windKt } = facts;
    return typeof windKt === 'number' ? windKt > condition.windAboveKt : null;
  }
  if ('option' in condition) {
    const { options } = facts;
    return typeof options === 'string'
      ? options.split(OPTION_JOINT).includes(condition.option)
      : null;
  }
  if ('not' in condition) {
    const inner = holds(condition.not, facts);
    return inner === null ? null : !inner;
  }
  if ('all' in condition) return every(condition.all, facts);
  const none = every(
    condition.any.map((part) => ({ not: part })),
    facts,
  );
  return none === null ? null : !none;
}

function every(conditions: readonly Condition[], facts: FactValues): boolean | null {
  const parts = conditions.map((part) => holds(part, facts));
  if (parts.includes(false)) return false;
  return parts.includes(null) ? null : true;
}

/** The facts a condition asks for, each once. */
export function factsIn(condition: Condition): readonly FactName[] {
  return [...new Set(leavesOf(condition).map(factOf))];
}

/** The aircraft's options a condition asks for, each once. */
export function optionsIn(condition: Condition): readonly string[] {
  const asked = leavesOf(condition).flatMap((leaf) => ('option' in leaf ? [leaf.option] : []));
  return [...new Set(asked)];
}

type Leaf = Extract<
  Condition,
  { readonly fact: unknown } | { readonly windAboveKt: number } | { readonly option: string }
>;

function leavesOf(condition: Condition): readonly Leaf[] {
  if ('not' in condition) return leavesOf(condition.not);
  if ('all' in condition) return condition.all.flatMap(leavesOf);
  return 'any' in condition ? condition.any.flatMap(leavesOf) : [condition];
}

function factOf(leaf: Leaf): FactName {
  if ('fact' in leaf) return leaf.fact;
  return 'option' in leaf ? 'options' : 'windKt';
}
