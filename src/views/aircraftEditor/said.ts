/** Figures of a handbook's table as they are read. */

import type { BookFigure, Column } from '../../core';
import { decimal, NO_BREAK_SPACE, wholeNumber } from '../../parts/format';
import { type Chosen, inShown, lengthDigits, unitFor } from '../../parts/units';
import { words } from './words';

/** Columns whose unit the pilot chose, with the one that core reckons in. */
const CHOSEN: Readonly<Partial<Record<Column, { readonly unit: Chosen }>>> = {
  massKg: { unit: 'kg' },
  runM: { unit: 'm' },
  to50ftM: { unit: 'm' },
  landingRunM: { unit: 'm' },
  landingM: { unit: 'm' },
};

/** What core reckons a column in, where the pilot chose what it is shown in; null for all others. */
export const inColumn = (column: Column): Chosen | null => CHOSEN[column]?.unit ?? null;

const UNITS: Readonly<Partial<Record<Column, string>>> = {
  pressureAltitudeFt: 'ft',
  temperatureC: '°C',
  headwindKt: 'kt',
  climbFtMin: 'ft/min',
};

/** The unit of a column as it is shown. */
export function unitOf(column: Column): string {
  const unit = inColumn(column);
  return unit === null ? (UNITS[column] ?? '') : unitFor(unit);
}

/** A figure of a row, its digits alone. */
export const bookText = (figure: BookFigure, value: number): string =>
  figure === 'climbFtMin' ? wholeNumber(Math.round(value)) : lengthDigits(value);

/** The same with its unit. */
export const bookSaid = (figure: BookFigure, value: number): string =>
  `${bookText(figure, value)}${NO_BREAK_SPACE}${unitOf(figure)}`;

/** A figure as it stands on an axis. */
export const onAxis = (figure: BookFigure, value: number): number =>
  figure === 'climbFtMin' ? value : inShown(value, 'm');

/** A share as a percentage with its sign, to a tenth. */
export function percentText(share: number): string {
  const tenths = Math.round(1000 * share) / 10;
  return words.off(`${tenths > 0 ? '+' : ''}${decimal(tenths, 1)}`);
}
