/**
 * A figure is a number that can be asked why.
 *
 * Whatever the pilot reads as a number leaves core as a figure: either a value with the inputs, the
 * formula and the source it came from, or no value with the cause. A figure is never zero because
 * it could not be known.
 */

import type { Unit } from './units';

/** Names a one-line formula; the sentence for it lives with the views. */
export type FormulaId = string;

/** Names where a formula or a value comes from; the sentence for it lives with the views. */
export type SourceId = string;

/** Why a figure could not be worked out; the sentence for it lives with the views. */
export type Cause = string;

/** What a figure was worked out from. Putting `inputs` into `formula` gives the figure's value. */
export interface Why {
  readonly formula: FormulaId;
  readonly inputs: Readonly<Record<string, AnyFigure | number | string>>;
  readonly source: SourceId;
}

/** A figure that is known. */
export interface Known<U extends Unit> {
  readonly value: number;
  readonly unit: U;
  readonly why: Why;
}

/** A figure that cannot be known, and why. */
export interface Unknown {
  readonly value: null;
  readonly because: Cause;
}

/** A number that can be asked why, or the reason there is none. */
export type Figure<U extends Unit> = Known<U> | Unknown;

/** A figure in any unit. */
export type AnyFigure = Figure<Unit>;

/** A figure with a value. */
export function known<U extends Unit>(value: number, unit: U, why: Why): Known<U> {
  return { value, unit, why };
}

/** A figure without one, and the reason. */
export function unknown(because: Cause): Unknown {
  return { value: null, because };
}
