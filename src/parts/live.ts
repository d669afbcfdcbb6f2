/** Live numbers in a step's text, as read. */

import { isLiveName, LIVE, type LiveName, piecesOf, roundedLive } from '../core';
import { direction, wholeNumber } from './format';

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
  piecesOf(text).map((piece) => {
    if (typeof piece === 'string') return { text: piece, live: false };
    return isLiveName(piece.live)
      ? { text: fill(piece.live), live: true }
      : { text: `{${piece.live}}`, live: false };
  });

/** A live number's value as written. */
export function liveValue(name: LiveName, value: number | string): string {
  if (typeof value === 'string') return value;
  return LIVE[name].form === 'heading' ? direction(value) : wholeNumber(roundedLive(name, value));
}
