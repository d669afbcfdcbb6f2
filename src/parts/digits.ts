/**
 * To how many digits a number is known.
 *
 * What a reason is about is written as the screen writes it. What it was worked out from has one digit
 * more at most, the guard digit that lets a reader work it out again, and never more than its own
 * inputs or the physics support. What a document or the pilot gave has no more digits than were given.
 */

import type { Figure, Unit } from '../core';

type Known = Extract<Figure<Unit>, { readonly unit: Unit }>;

/** The least step that a figure of a unit is written in. */
const STEPS: Readonly<Record<Unit, number>> = {
  kt: 1,
  m: 1,
  ft: 1,
  // Half a knot on a 3° path is 3 ft/min; a hundredth of a jet's thrust is some 60 of its climb.
  'ft/min': 10,
  kg: 1,
  hPa: 1,
  inHg: 0.01,
  degC: 1,
  deg: 0.1,
  s: 1,
  min: 1,
  '%': 0.1,
  rpm: 1,
};

/** The same where another figure is worked out from it. */
const GUARDED: Partial<Record<Unit, number>> = { kt: 0.1, '%': 0.01 };

/** Steps of inputs that are not figures themselves, by how their names end. */
const INPUT_STEPS: readonly (readonly [ending: RegExp, step: number])[] = [
  [/^(lat|lon)Deg$/, 0.01],
  [/(KgM|Kg|Ft|M)$/, 1],
  [/(Kt|Deg|C|Hpa|S)$/, 0.1],
];

/** What has no unit: densities and factors. */
const RATIO_STEP = 0.001;

/** Significant digits of a force: one more than documents give thrust to. */
const FORCE_DIGITS = 4;

/** The nearest step, as short as it can be written. */
const toStep = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(3));

/** Arms are measured to a millimetre, ways are known to a metre at best. */
const stepOf = ({ unit, why }: Known, steps: Partial<Record<Unit, number>>): number =>
  why.formula === 'centre-of-gravity' ? 0.001 : (steps[unit] ?? STEPS[unit]);

/** A figure's value as the screen and its own reason write it. */
export const asFigure = (figure: Known): number => toStep(figure.value, stepOf(figure, STEPS));

/** The value of a figure that another one was worked out from. */
export const asInputFigure = (figure: Known): number =>
  toStep(figure.value, stepOf(figure, GUARDED));

/** Any other input of a figure's reason: by its name, which ends in its unit, or else by that of the figure. */
export function asInput(name: string, value: number, of: Known): number {
  if (name === 'given' || name === 'set') return asInputFigure({ ...of, value });
  if (name.endsWith('N')) return Number(value.toPrecision(FORCE_DIGITS));
  const [, step] = INPUT_STEPS.find(([ending]) => ending.test(name)) ?? [null, RATIO_STEP];
  return toStep(value, step);
}
