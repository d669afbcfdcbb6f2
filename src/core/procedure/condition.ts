/** When a step applies: conditions on facts, where a fact that is not known never drops a step. */

import type { ConditionFact, FactValues } from './facts';
import type { Condition } from './procedure.schema';

/**
 * Whether a condition holds under the facts; null when a fact that would decide it is not known.
 * Kleene's three-valued logic: an unknown only matters where it could change the answer.
 */
export function holds(condition: Condition, facts: FactValues): boolean | null {
  if ('fact' in condition) {
    const value = facts[condition.fact];
    return typeof value === 'boolean' ? value : null;
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

/** The facts that a condition asks for, each once. */
export function factsIn(condition: Condition): readonly ConditionFact[] {
  if ('fact' in condition) return [condition.fact];
  if ('not' in condition) return factsIn(condition.not);
  const parts = 'all' in condition ? condition.all : condition.any;
  return [...new Set(parts.flatMap(factsIn))];
}
