/** What physics makes of a handbook's table, beside what stands there. */

import type { Aircraft } from './aircraft';
import { BOOK_FIGURES, type BookFigure, type NoFigure, workedOut } from './bookFigures';
import type { HandbookRow } from './handbook';

export { WELL_WITHIN } from './handbook';

/** A figure of the book beside the one worked out. */
export interface Compared {
  /** Index of its row. */
  readonly row: number;
  readonly name: BookFigure;
  readonly book: number;
  /** Null if it can't be worked out; why. */
  readonly found: number | null;
  readonly because: NoFigure | null;
}

/** Each figure of the rows beside what an aircraft's physics makes of it. */
export const comparedTo = (rows: readonly HandbookRow[], aircraft: Aircraft): readonly Compared[] =>
  rows.flatMap((row, index) => {
    const found = workedOut(aircraft, row);
    return BOOK_FIGURES.flatMap((name) => {
      const [book, { value, because } = NONE] = [row[name], found[name]];
      return book === undefined ? [] : [{ row: index, name, book, found: value, because }];
    });
  });

const NONE = { value: null, because: 'no-performance' } as const;

/** How far a figure worked out is from the book's, as a share of it; null if there is none. */
export const leftOver = ({ book, found }: Compared): number | null =>
  found === null || book <= 0 ? null : found / book - 1;

/** A figure of a row that is off the book's. */
export interface Apart {
  readonly row: number;
  readonly figure: BookFigure;
  /** Worked out over the book's, less one. */
  readonly by: number;
}

/** What is left over where a document's own table and physics are furthest apart; null without either. */
export function bookLeftOver(aircraft: Aircraft): Apart | null {
  const { handbook, performance } = aircraft;
  if (handbook === undefined || performance === undefined) return null;
  return worstOf(comparedTo(handbook.rows, aircraft));
}

/** The figure furthest from its row. */
export function worstOf(figures: readonly Compared[]): Apart | null {
  const apart = figures.flatMap((figure): readonly Apart[] => {
    const by = leftOver(figure);
    return by === null ? [] : [{ row: figure.row, figure: figure.name, by }];
  });
  return apart.reduce<Apart | null>(
    (worst, one) => (worst === null || Math.abs(one.by) > Math.abs(worst.by) ? one : worst),
    null,
  );
}
