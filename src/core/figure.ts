/**
 * A figure is a number that can explain itself.
 *
 * Every number the pilot reads leaves core as a figure: either a value with its inputs, formula and
 * source, or no value and the cause. A figure is never zero because it couldn't be known.
 */

import type { Unit } from './units';

/** Names a one-line formula; its sentence lives with the views. */
export type FormulaId = string;

/** Names the source of a formula or a value; its sentence lives with the views. */
export type SourceId = string;

/** Why a figure couldn't be computed; its sentence lives with the views. */
export type Cause = string;

/** How a figure was computed. Putting `inputs` into `formula` gives its value. */
export interface Why {
  readonly formula: FormulaId;
  readonly inputs: Readonly<Record<string, AnyFigure | number | string>>;
  readonly source: SourceId;
}

/** A known figure. */
export interface Known<U extends Unit> {
  readonly value: number;
  readonly unit: U;
  readonly why: Why;
}

/** A figure that can't be known, and why. */
export interface Unknown {
  readonly value: null;
  readonly because: Cause;
}

/** A number that can explain itself, or the reason there is none. */
export type Figure<U extends Unit> = Known<U> | Unknown;

export type AnyFigure = Figure<Unit>;

/** A figure with a value. */
export function known<U extends Unit>(value: number, unit: U, why: Why): Known<U> {
  return { value, unit, why };
}

/** A figure without one, and the reason. */
export function unknown(because: Cause): Unknown {
  return { value: null, because };
}
