/** Live numbers in a step's text, as read: in the units that the pilot chose. */

import { isLiveName, LIVE, type LiveName, piecesOf, roundedLive, type TextPiece } from '../core';
import { direction, NO_BREAK_SPACE } from './format';
import { digitsIn, inShown, type ShownUnit, stepsOf, toStep, unitFor } from './units';

/** A piece of a filled text: words as they stand, or what replaces a live number. */
export interface FilledPiece {
  readonly text: string;
  readonly live: boolean;
}

/**
 * A text in pieces, each name replaced by `fill`; a name that is no live number stays as written.
 */
export const filledPieces = (
  text: string,
  fill: (name: LiveName) => string,
): readonly FilledPiece[] =>
  piecesInUnits(text).map((piece) => {
    if (typeof piece === 'string') return { text: piece, live: false };
    return isLiveName(piece.live)
      ? { text: fill(piece.live), live: true }
      : { text: `{${piece.live}}`, live: false };
  });

/** The unit behind a live number in a text, with the space before it. */
const WRITTEN_UNIT = /^([ \u00a0]?)(m|kg|hPa)\b/;

/**
 * The pieces of a text, with the unit that the procedure writes behind a live number turned into the
 * one the number is shown in. Behind a length or a mass without a unit it is put in where it isn't
 * the procedure's own: a bare number would be taken for kilograms.
 */
export function piecesInUnits(text: string): readonly TextPiece[] {
  const pieces = piecesOf(text);
  return pieces.flatMap((piece, index) => {
    const before = pieces[index - 1];
    const after = pieces[index + 1];
    if (typeof piece === 'string') {
      const unit = liveUnit(before);
      return piece.replace(WRITTEN_UNIT, (written, space: string, own: string) =>
        own === unit ? space + unitFor(unit) : written,
      );
    }
    const unit = liveUnit(piece);
    const isBare =
      (unit === 'm' || unit === 'kg') && !(typeof after === 'string' && WRITTEN_UNIT.test(after));
    return isBare && unitFor(unit) !== unit ? [piece, NO_BREAK_SPACE + unitFor(unit)] : [piece];
  });
}

const liveUnit = (piece: TextPiece | undefined) => {
  if (piece === undefined || typeof piece === 'string' || !isLiveName(piece.live)) return null;
  const kind = LIVE[piece.live];
  return 'unit' in kind ? kind.unit : null;
};

/** A live number as shown: its rounded value, and the unit that is in; null where it has none. */
export function shownLive(
  name: LiveName,
  value: number,
): { readonly value: number; readonly unit: ShownUnit | null } {
  const kind = LIVE[name];
  if (!('unit' in kind)) return { value: roundedLive(name, value), unit: null };
  const unit = unitFor(kind.unit);
  const steps = stepsOf(kind.unit);
  if (unit === kind.unit || steps === null) return { value: roundedLive(name, value), unit };
  const step = 'to' in kind ? steps.knownTo : steps.step;
  const round = 'way' in kind ? kind.way : 'nearest';
  return { value: toStep(inShown(value, kind.unit), step, round), unit };
}

/** A live number's value as written. */
export function liveValue(name: LiveName, value: number | string): string {
  if (typeof value === 'string') return value;
  if (LIVE[name].form === 'heading') return direction(value);
  const { value: shown, unit } = shownLive(name, value);
  return digitsIn(shown, unit ?? 'kt');
}

/** A live number to be said digit by digit: an altimeter setting in inches without its point, as on the radio. */
export function liveDigits(name: LiveName, value: number): number {
  const { value: shown, unit } = shownLive(name, value);
  return unit === 'inHg' ? Math.round(shown * 100) : shown;
}
