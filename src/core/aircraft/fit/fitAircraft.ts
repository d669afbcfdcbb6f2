/** An aircraft's physics fitted to its handbook's table, and what doesn't fit, with the reason. */

import type { Fault } from '../../fault';
import { type Apart, type Compared, comparedTo, WELL_WITHIN, worstOf } from '../againstBook';
import type { BookFigure, NoFigure } from '../bookFigures';
import type { HandbookRow } from '../handbook';
import type { Performance } from '../performance';
import { type PerformanceFault, performanceFaults } from '../performanceFaults';
import { type FittedToBook, type Flying, fitToBook } from './fitToBook';
import type { Guess } from './terms';

export { plainRows } from './fitToBook';
export type { Guess } from './terms';

/** Why something in the table doesn't fit, worst first; what would mend it follows from the code. */
export type FitTrouble =
  /** A distance over 50 ft is no longer than its own run. */
  | {
      readonly code: 'distance-below-run';
      readonly row: number;
      readonly figure: BookFigure;
    }
  /** There is no figure for the row. */
  | {
      readonly code: 'no-figure';
      readonly row: number;
      readonly figure: BookFigure;
      readonly because: NoFigure;
    }
  /** All other rows fit; they foretell this for the row. */
  | (Apart & { readonly code: 'row-apart'; readonly foretold: number })
  /** All rows would fit with so many times the thrust. */
  | (Apart & { readonly code: 'thrust-apart'; readonly factor: number })
  /** Rows contradict each other, or what else the aircraft says. */
  | (Apart & { readonly code: 'rows-apart' });

export interface Fit extends FittedToBook {
  readonly worst: Apart | null;
  readonly troubles: readonly FitTrouble[];
  /** What of the result still contradicts itself. */
  readonly faults: readonly Fault<PerformanceFault>[];
}

/**
 * The fit of an aircraft's own table. Its `performance` is where it begins. `guesses`
 * are what nobody has said, and what moves with the rest. Null if the table has no figure.
 */
export function fitAircraft(aircraft: Flying, guesses: readonly Guess[] = []): Fit | null {
  const rows = aircraft.handbook?.rows ?? [];
  if (comparedTo(rows, aircraft).length === 0) return null;
  const fitted = fitToBook(aircraft, rows, guesses);
  const worst = worstOf(fitted.figures);
  return {
    ...fitted,
    worst,
    troubles: [
      ...belowRun(rows),
      ...noFigures(fitted.figures),
      ...(worst === null || isMet(worst)
        ? []
        : [reasonFor(worst, aircraft, rows, fitted, guesses)]),
    ],
    faults: performanceFaults({ ...aircraft, performance: fitted.performance }),
  };
}

/** An aircraft's physics as it stands, held against its own table; null if that has no figure. */
export function asItStands(aircraft: Flying): Fit | null {
  const { handbook, performance } = aircraft;
  const rows = handbook?.rows ?? [];
  const figures = comparedTo(rows, aircraft);
  if (figures.length === 0) return null;
  const worst = worstOf(figures);
  return {
    performance,
    figures,
    moved: [],
    worst,
    troubles: [
      ...belowRun(rows),
      ...noFigures(figures),
      ...(worst === null || isMet(worst) ? [] : [{ ...worst, code: 'rows-apart' } as const]),
    ],
    faults: performanceFaults(aircraft),
  };
}

/** Whether what is left over is no more than may be. */
const isMet = (worst: Apart): boolean => Math.abs(worst.by) <= WELL_WITHIN;

const belowRun = (rows: readonly HandbookRow[]): readonly FitTrouble[] =>
  rows.flatMap(({ runM = 0, to50ftM, landingRunM = 0, landingM }, row) => {
    const figures: readonly BookFigure[] = [
      ...(to50ftM !== undefined && to50ftM <= runM ? (['to50ftM'] as const) : []),
      ...(landingM !== undefined && landingM <= landingRunM ? (['landingM'] as const) : []),
    ];
    return figures.map((figure) => ({ code: 'distance-below-run', row, figure }));
  });

const noFigures = (figures: readonly Compared[]): readonly FitTrouble[] =>
  figures.flatMap(({ row, name, because }) =>
    because === null ? [] : [{ code: 'no-figure', row, figure: name, because }],
  );

/** Fewer figures than this fit anything, so that leaving one out proves nothing. */
const LEAST_FIGURES = 3;

function reasonFor(
  worst: Apart,
  aircraft: Flying,
  rows: readonly HandbookRow[],
  { performance }: FittedToBook,
  guesses: readonly Guess[],
): FitTrouble {
  // Continued from where the whole table led, it takes no time to settle.
  const from = { ...aircraft, performance };
  const others = withoutFigure(rows, worst);
  const alone = fitToBook(from, others, guesses);
  const left = worstOf(alone.figures);
  if (
    alone.figures.filter(({ name }) => name === worst.figure).length >= LEAST_FIGURES &&
    (left === null || isMet(left))
  ) {
    const [foretold] = comparedTo(rows, { ...aircraft, performance: alone.performance }).filter(
      ({ row, name }) => row === worst.row && name === worst.figure,
    );
    if (foretold?.found != null) {
      return { ...worst, code: 'row-apart', foretold: foretold.found };
    }
  }
  if (!guesses.includes('thrust')) {
    const freed = fitToBook(from, rows, [...guesses, 'thrust']);
    const then = worstOf(freed.figures);
    if (then !== null && isMet(then)) {
      const factor = staticN(freed.performance) / staticN(performance);
      return { ...worst, code: 'thrust-apart', factor };
    }
  }
  return { ...worst, code: 'rows-apart' };
}

/** The table without one of its figures. */
const withoutFigure = (rows: readonly HandbookRow[], { row, figure }: Apart) =>
  rows.map((one, index) => {
    if (index !== row) return one;
    const { [figure]: _, ...rest } = one;
    return rest;
  });

const staticN = ({ thrust }: Performance): number =>
  (thrust.kind === 'propeller' ? thrust.fullN : thrust.dryN)[0]?.[1] ?? 0;
