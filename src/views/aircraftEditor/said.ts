/** Figures of a handbook's table as they are read. */

import type { BookFigure, Column } from '../../core';
import { asWritten, NO_BREAK_SPACE, wholeNumber } from '../../parts/format';
import { inShown, lengthDigits, unitFor } from '../../parts/units';
import { words } from './words';

/** What core reckons a column in, where the pilot chose what it is shown in; null for all others. */
export function inColumn(column: Column): 'm' | 'kg' | null {
  if (column === 'massKg') return 'kg';
  return column === 'runM' ||
    column === 'to50ftM' ||
    column === 'landingRunM' ||
    column === 'landingM'
    ? 'm'
    : null;
}

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
  const tenths = (100 * share).toFixed(1);
  return words.off(share > 0 ? `+${asWritten(tenths)}` : asWritten(tenths));
}
