/**
 * To how many digits a number is known, in the unit that the pilot chose for it.
 *
 * A reason shows no more than the screen does: ways worked out to ten metres or fifty feet, what is
 * needed rounded up and what is left rounded down, speeds to a knot. What a document or the pilot gave
 * has no more digits than were given.
 */

import type { Figure, Unit } from '../core';
import { asWritten, NO_BREAK_SPACE, wholeNumber } from './format';
import {
  digitsIn,
  fromShown,
  inShown,
  type Round,
  type ShownUnit,
  stepsOf,
  toStep,
  unitFor,
} from './units';

type Known = Extract<Figure<Unit>, { readonly unit: Unit }>;

/** What an input of a reason is in, besides what figures are in. */
type InputUnit = Unit | 'N' | 'kg·m';

/** A number as it is shown; the unit is null for ratios. */
export interface Shown {
  readonly value: number;
  readonly unit: ShownUnit | 'N' | 'kg·m' | 'lb·m' | null;
}

/** The least step that a figure of a unit is written in, where there is no choice of units. */
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

/** Ways and speeds worked out that something needs: rounded up. */
const NEEDED: ReadonlySet<string> = new Set([
  'run',
  'run-and-climb',
  'accelerate-stop',
  'landing-air',
  'landing-run',
  'sum',
  'times-factor',
  'greatest-of',
  'engine-out-run',
]);

/** What is left, and speeds not to exceed: rounded down. */
const LEFT: ReadonlySet<string> = new Set([
  'left-over',
  'left-of-lda',
  'left-of-end',
  'smallest-of',
  'limit-speed',
]);

/** Formulas in SI: their inputs stay in it, or the formula would give another number. */
const METRIC: ReadonlySet<string> = new Set([
  'run',
  'accelerate-stop',
  'speed-at-mark',
  'engine-out-run',
  'landing-air',
  'landing-run',
]);

/** Lengths that a field declares: as given, but never more in feet than in metres. */
const DECLARED: ReadonlySet<string> = new Set(['tora', 'toda', 'asda', 'lda']);

const roundOf = (formula: string): Round =>
  NEEDED.has(formula) ? 'up' : LEFT.has(formula) || DECLARED.has(formula) ? 'down' : 'nearest';

/** What an input is in, and which way it rounds, by how its name ends. */
const INPUTS: readonly (readonly [ending: RegExp, unit: InputUnit, step: number])[] = [
  [/^(lat|lon)Deg$/, 'deg', 0.01],
  // What a limit is divided by: a knot of two would be half of it.
  [/^worstKt$/, 'kt', 0.1],
  [/^(own|aircraft|book|limit)Kt$/, 'kt', 0.1],
  [/KgM$/, 'kg·m', 1],
  [/Kg$/, 'kg', 1],
  [/Ft$/, 'ft', 1],
  [/M$/, 'm', 1],
  [/Kt$/, 'kt', 1],
  [/Deg$/, 'deg', 0.1],
  [/C$/, 'degC', 0.1],
  [/Hpa$/, 'hPa', 0.1],
  [/S$/, 's', 0.1],
];

/** Inputs that were worked out, though they are no figures of their own: known like those. */
const WORKED_OUT: Readonly<Record<string, Round>> = {
  airM: 'up',
  toSpeedM: 'up',
  brakingM: 'up',
  onwardM: 'up',
  neededM: 'up',
  withinM: 'down',
  fieldAllowsKt: 'down',
  brakesAllowKt: 'down',
  tyresAllowKt: 'down',
  parachuteAllowsKt: 'down',
  leastInWindKt: 'up',
  leastForRunKt: 'up',
  leastForStopKt: 'up',
  standingKt: 'up',
};

/** Lengths that a field declares, and what is left of them for today. */
const DECLARED_INPUT = /^(tora|toda|asda|lda|available)M$/;

/** What has no unit: densities and factors. */
const RATIO_STEP = 0.001;

/** Significant digits of a force: one more than documents give thrust to. */
const FORCE_DIGITS = 4;

/** Arms are measured to a millimetre, and stay in the document's metres. */
const isArm = ({ why }: Known): boolean => why.formula === 'centre-of-gravity';

function asKnown(figure: Known, metric: boolean): Shown {
  const { value, unit, why } = figure;
  if (isArm(figure)) return { value: toStep(value, 0.001), unit };
  const round = roundOf(why.formula);
  const steps = metric ? null : stepsOf(unit);
  const isWay = unit === 'm' && round !== 'nearest' && !DECLARED.has(why.formula);
  if (steps === null) return { value: toStep(value, isWay ? 10 : STEPS[unit], round), unit };
  const step = isWay ? steps.knownTo : steps.step;
  return { value: toStep(inShown(value, unit), step, round), unit: unitFor(unit) };
}

/** A figure's value as the screen and its own reason write it. */
export const asFigure = (figure: Known): Shown => asKnown(figure, false);

/** The value of a figure that another one, with this formula, was worked out from: as on its own. */
export const asInputFigure = (figure: Known, formula: string): Shown =>
  asKnown(figure, METRIC.has(formula));

/** Any other input of a figure's reason: by its name, which ends in its unit, or else by that of the figure. */
export function asInput(name: string, value: number, of: Known): Shown {
  if (name === 'given' || name === 'set') return asGiven(value, of);
  if (name.endsWith('N')) return { value: Number(value.toPrecision(FORCE_DIGITS)), unit: 'N' };
  const [, unit, step] = INPUTS.find(([ending]) => ending.test(name)) ?? [null, null, RATIO_STEP];
  if (unit === null) return { value: toStep(value, step), unit };
  const isMetric = METRIC.has(of.why.formula);
  if (unit === 'kg·m') {
    const massUnit = isMetric ? 'kg' : unitFor('kg');
    return {
      value: toStep(isMetric ? value : inShown(value, 'kg'), step),
      unit: massUnit === 'lb' ? 'lb·m' : 'kg·m',
    };
  }
  if (unit === 'N') return { value, unit };
  const worked = WORKED_OUT[name];
  const round = worked ?? (DECLARED_INPUT.test(name) ? 'down' : 'nearest');
  const steps = isMetric ? null : stepsOf(unit);
  const isWay = unit === 'm' && worked !== undefined;
  // A pressure given in inches is known to a tenth of a hectopascal.
  if (steps === null || unitFor(unit) === unit)
    return { value: toStep(value, isWay ? 10 : step, round), unit };
  return {
    value: toStep(inShown(value, unit), isWay ? steps.knownTo : steps.step, round),
    unit: unitFor(unit),
  };
}

/** What a document, a report or the pilot gave: a tenth of a knot if they gave one. */
function asGiven(value: number, { unit, why }: Known): Shown {
  const step = unit === 'kt' ? 0.1 : STEPS[unit];
  const round = DECLARED.has(why.formula) ? 'down' : 'nearest';
  const steps = stepsOf(unit);
  if (steps === null || unitFor(unit) === unit) return { value: toStep(value, step, round), unit };
  return { value: toStep(inShown(value, unit), steps.step, round), unit: unitFor(unit) };
}

/** A figure in core's own unit too, where its formula is in SI and it is shown in another; else null. */
export const inMetric = (figure: Known): Shown | null =>
  METRIC.has(figure.why.formula) && unitFor(figure.unit) !== figure.unit
    ? asKnown(figure, true)
    : null;

/** A shown number in core's unit again, for whoever works a formula out once more. */
export const backFromShown = ({ value, unit }: Shown): number =>
  unit === 'lb' || unit === 'lb·m'
    ? fromShown(value, 'kg')
    : unit === 'inHg'
      ? fromShown(value, 'hPa')
      : value;

/** How the units are written that are not letters after a space. */
const UNITS: Partial<Record<string, string>> = { deg: '°', degC: `${NO_BREAK_SPACE}°C` };

/** The digits of a shown number. */
export const shownDigits = ({ value, unit }: Shown): string => {
  if (unit === 'hPa' && !Number.isInteger(value)) return asWritten(String(value));
  if (unit === 'hPa' || unit === 'inHg') return digitsIn(value, unit);
  return Number.isInteger(value) ? wholeNumber(value) : asWritten(String(value));
};

/** A shown number with its unit: `1 690 m`, `5 550 ft`, `14.5°`. */
export const shownText = (shown: Shown): string =>
  shownDigits(shown) +
  (shown.unit === null ? '' : (UNITS[shown.unit] ?? `${NO_BREAK_SPACE}${shown.unit}`));

/** A figure as it is written wherever it stands; empty where there is none. */
export const shownFigure = (figure: Figure<Unit>): string =>
  figure.value === null ? '' : shownText(asFigure(figure));
