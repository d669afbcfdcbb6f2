/**
 * Lengths, masses and pressures in the units that the pilot chose. Core reckons in metres, kilograms
 * and hectopascals, and so do documents and entries; here, and nowhere else, they turn into what is
 * shown, and what is typed turns back. Feet of altitude are feet whatever is chosen.
 */

import { HPA_PER_INHG, KG_PER_LB, M_PER_FT, type Unit } from '../core';
import { lengthUnit, massUnit, pressureUnit } from '../device/preferences';
import { decimal, NO_BREAK_SPACE, wholeNumber } from './format';

/** What a number is shown in. */
export type ShownUnit = Unit | 'lb';

/** What there is a choice of units for, by the unit that core reckons in. */
export type Chosen = 'm' | 'kg' | 'hPa';

/** Which way to round: up for what is needed, down for what there is, so that neither promises more. */
export type Round = 'nearest' | 'up' | 'down';

interface InUnit {
  readonly unit: ShownUnit;
  /** How many of core's make one of these. */
  readonly per: number;
  /** The finest step it is written in. */
  readonly step: number;
  /** What a length worked out along the runway is known to, and a mass is flown to. */
  readonly knownTo: number;
}

/**
 * Lengths worked out are known to 1 % at best: to ten metres, or to fifty feet. A pressure is set to a
 * hectopascal or to a hundredth of an inch.
 */
const CHOICES = {
  m: { unit: 'm', per: 1, step: 1, knownTo: 10 },
  ft: { unit: 'ft', per: M_PER_FT, step: 1, knownTo: 50 },
  kg: { unit: 'kg', per: 1, step: 1, knownTo: 10 },
  lb: { unit: 'lb', per: KG_PER_LB, step: 1, knownTo: 10 },
  hPa: { unit: 'hPa', per: 1, step: 1, knownTo: 1 },
  inHg: { unit: 'inHg', per: HPA_PER_INHG, step: 0.01, knownTo: 0.01 },
} as const satisfies Record<string, InUnit>;

const chosen = (of: Chosen): InUnit =>
  CHOICES[of === 'm' ? lengthUnit.value : of === 'kg' ? massUnit.value : pressureUnit.value];

const isChosen = (unit: string): unit is Chosen => unit === 'm' || unit === 'kg' || unit === 'hPa';

/** The unit that a quantity of core's is shown in: `ft` for `m` where feet are chosen. */
export const unitFor = (unit: Unit): ShownUnit => (isChosen(unit) ? chosen(unit).unit : unit);

/** A value of core's in the unit it is shown in, unrounded. */
export const inShown = (value: number, unit: Unit): number =>
  isChosen(unit) ? value / chosen(unit).per : value;

/** A value in the unit it is shown or typed in, as core reckons it. */
export const fromShown = (value: number, unit: Unit): number =>
  isChosen(unit) ? value * chosen(unit).per : value;

/** The steps that a quantity is written in, in the unit it is shown in; null where there is no choice. */
export const stepsOf = (unit: Unit): Pick<InUnit, 'step' | 'knownTo'> | null =>
  isChosen(unit) ? chosen(unit) : null;

const ROUND = { nearest: Math.round, up: Math.ceil, down: Math.floor };

/** A value that misses a step only by the floating point is on it. */
const ON_A_STEP = 1e-6;

/** A number rounded to a step, one way or the other. */
export function toStep(value: number, step: number, round: Round = 'nearest'): number {
  const steps = value / step;
  const nearest = Math.round(steps);
  const whole = Math.abs(steps - nearest) < ON_A_STEP ? nearest : ROUND[round](steps);
  return Number((whole * step).toFixed(3));
}

/** Digits of a number in a unit: thousands apart, but a pressure is read digit by digit. */
export function digitsIn(value: number, unit: ShownUnit): string {
  if (unit === 'inHg') return decimal(value, 2);
  return unit === 'hPa' ? String(value) : wholeNumber(value);
}

const digits = (value: number, of: Chosen, step: 'step' | 'knownTo', round: Round): string => {
  const { unit, per, [step]: by } = chosen(of);
  return digitsIn(toStep(value / per, by, round), unit);
};

const withUnit = (text: string, of: Chosen): string => `${text}${NO_BREAK_SPACE}${chosen(of).unit}`;

/** A length as given or measured, its digits alone: `1 400`. */
export const lengthDigits = (m: number, round: Round = 'nearest'): string =>
  digits(m, 'm', 'step', round);

/** A length as given or measured: `1 400 m`, `4 593 ft`. */
export const length = (m: number, round: Round = 'nearest'): string =>
  withUnit(lengthDigits(m, round), 'm');

/** A length worked out, as far as it is known, in the unit it is shown in. */
export const knownLength = (m: number, round: Round): number => {
  const { per, knownTo } = chosen('m');
  return toStep(m / per, knownTo, round);
};

/** A length worked out, its digits alone. */
export const aboutLengthDigits = (m: number, round: Round): string =>
  digits(m, 'm', 'knownTo', round);

/** A length worked out, rounded to what is known: `1 690 m`, `5 550 ft`. */
export const aboutLength = (m: number, round: Round): string =>
  withUnit(aboutLengthDigits(m, round), 'm');

/** A length needed of one that there is: rounded up, but one that fits never to more than there is. */
export const neededLength = (neededM: number, availableM: number): string => {
  const { per, knownTo } = chosen('m');
  const up = toStep(neededM / per, knownTo, 'up') * per;
  return neededM <= availableM && up > availableM
    ? length(availableM, 'down')
    : aboutLength(neededM, 'up');
};

/** A mass, its digits alone. */
export const massDigits = (kg: number, round: Round = 'nearest'): string =>
  digits(kg, 'kg', 'step', round);

/** A mass: `9 300 kg`, `20 503 lb`. */
export const mass = (kg: number, round: Round = 'nearest'): string =>
  withUnit(massDigits(kg, round), 'kg');

/** A mass against its limit: never rounded to the other side of it. */
export const massAgainst = (kg: number, limitKg: number): string => {
  const limit = toStep(inShown(limitKg, 'kg'), 1, 'down');
  const value = inShown(kg, 'kg');
  const shown =
    kg <= limitKg ? Math.min(Math.round(value), limit) : Math.max(Math.ceil(value), limit + 1);
  return withUnit(wholeNumber(shown), 'kg');
};

/** A pressure, its digits alone. */
export const pressureDigits = (hPa: number): string => digits(hPa, 'hPa', 'step', 'nearest');

/** A pressure: `1013 hPa`, `29.92 inHg`. */
export const pressure = (hPa: number): string => withUnit(pressureDigits(hPa), 'hPa');

/** A width that is needed: `7.5 m`, `25 ft`. */
export const width = (m: number): string =>
  unitFor('m') === 'm' ? withUnit(decimal(m, 1), 'm') : length(m, 'up');

/** A pressure in the unit that was not chosen, to stand beside it. */
export const otherPressure = (hPa: number): string =>
  unitFor('hPa') === 'hPa'
    ? `${digitsIn(toStep(hPa / HPA_PER_INHG, 0.01), 'inHg')}${NO_BREAK_SPACE}inHg`
    : `${Math.round(hPa)}${NO_BREAK_SPACE}hPa`;
