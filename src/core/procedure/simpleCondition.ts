/**
 * Conditions as a pilot picks them: some facts, each holding or not, of which all or any must
 * match.
 */

import type { ConditionFact } from './facts';
import type { Condition } from './procedure.schema';

/** What one line of the picker asks for. */
export type PickedFact =
  | { readonly fact: ConditionFact }
  | { readonly windAboveKt: number }
  | { readonly option: string };

/** One line of the picker. */
export interface AskedPart {
  readonly asked: PickedFact;
  /** It must not hold. */
  readonly not: boolean;
}

/** A condition as picked: no parts means always. */
export interface SimpleCondition {
  readonly join: 'all' | 'any';
  readonly parts: readonly AskedPart[];
}

/** A condition as the picker shows it; null if it nests deeper. */
export function simpleCondition(condition: Condition | undefined): SimpleCondition | null {
  if (condition === undefined) return { join: 'all', parts: [] };
  const join = 'any' in condition ? 'any' : 'all';
  const inner =
    'all' in condition ? condition.all : 'any' in condition ? condition.any : [condition];
  const parts = inner.flatMap((part) => partOf(part) ?? []);
  return parts.length === inner.length && parts.length > 0 ? { join, parts } : null;
}

function partOf(condition: Condition): AskedPart | null {
  if ('not' in condition) {
    const inner = partOf(condition.not);
    return inner && !inner.not ? { ...inner, not: true } : null;
  }
  return 'all' in condition || 'any' in condition ? null : { asked: condition, not: false };
}

/** The condition picked; undefined if the step always applies. */
export function pickedCondition({ join, parts }: SimpleCondition): Condition | undefined {
  const conditions = parts.map(({ asked, not }): Condition => (not ? { not: asked } : asked));
  const [only] = conditions;
  if (only === undefined || conditions.length === 1) return only;
  return join === 'all' ? { all: conditions } : { any: conditions };
}

/** The maximum of procedure.schema.ts. */
export const MOST_ASKED = 8;
