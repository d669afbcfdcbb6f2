/** An aircraft's physics fitted to its handbook's table, and what doesn't fit, with the reason. */

import type { Fault } from '../../fault';
import type { Aircraft } from '../aircraft';
import type { BookFigure, NoFigure } from '../bookFigures';
import type { HandbookRow } from '../handbook';
import type { Performance } from '../performance';
import { type PerformanceFault, performanceFaults } from '../performanceFaults';
import {
  type Compared,
  comparedTo,
  type FittedToBook,
  type Flying,
  fitToBook,
  leftOver,
} from './fitToBook';

export { plainRows } from './fitToBook';

/** More than this left over, as a share of the book's figure, is said wherever numbers are shown. */
export const WELL_WITHIN = 0.03;

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

interface Apart {
  readonly row: number;
  readonly figure: BookFigure;
  /** Worked out over the book's, less one. */
  readonly by: number;
}

export interface Fit extends FittedToBook {
  readonly worst: Apart | null;
  readonly troubles: readonly FitTrouble[];
  /** What of the result still contradicts itself. */
  readonly faults: readonly Fault<PerformanceFault>[];
}

/** Who says what the thrust is: the pilot, or nobody, and then it moves with the rest. */
export interface FitOptions {
  readonly thrust?: 'held' | 'moves';
}

/**
 * The fit of an aircraft's own table. Its `performance` is where it begins. Null if the table has
 * no figure.
 */
export function fitAircraft(aircraft: Flying, options: FitOptions = {}): Fit | null {
  const rows = aircraft.handbook?.rows ?? [];
  if (comparedTo(rows, aircraft).length === 0) return null;
  const fitted = fitToBook(aircraft, rows, options);
  const worst = worstOf(fitted.figures);
  return {
    ...fitted,
    worst,
    troubles: [
      ...belowRun(rows),
      ...noFigures(fitted.figures),
      ...(worst === null || Math.abs(worst.by) <= WELL_WITHIN
        ? []
        : [reasonFor(worst, aircraft, rows, fitted, options)]),
    ],
    faults: performanceFaults({ ...aircraft, performance: fitted.performance }),
  };
}

/** What is left over where a document's own table and physics are furthest apart; null without either. */
export function bookLeftOver(aircraft: Aircraft): Apart | null {
  const { handbook, performance } = aircraft;
  if (handbook === undefined || performance === undefined) return null;
  return worstOf(comparedTo(handbook.rows, aircraft));
}

/** The figure furthest from its row. */
function worstOf(figures: readonly Compared[]): Apart | null {
  const apart = figures.flatMap((figure): readonly Apart[] => {
    const by = leftOver(figure);
    return by === null ? [] : [{ row: figure.row, figure: figure.name, by }];
  });
  return apart.reduce<Apart | null>(
    (worst, one) => (worst === null || Math.abs(one.by) > Math.abs(worst.by) ? one : worst),
    null,
  );
}

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
  options: FitOptions,
): FitTrouble {
  // Continued from where the whole table led, it takes no time to settle.
  const from = { ...aircraft, performance };
  const others = withoutFigure(rows, worst);
  const alone = fitToBook(from, others, options);
  const left = worstOf(alone.figures);
  if (
    alone.figures.filter(({ name }) => name === worst.figure).length >= LEAST_FIGURES &&
    (left === null || Math.abs(left.by) <= WELL_WITHIN)
  ) {
    const [foretold] = comparedTo(rows, { ...aircraft, performance: alone.performance }).filter(
      ({ row, name }) => row === worst.row && name === worst.figure,
    );
    if (foretold?.found != null) {
      return { ...worst, code: 'row-apart', foretold: foretold.found };
    }
  }
  if (options.thrust !== 'moves') {
    const freed = fitToBook(from, rows, { thrust: 'moves' });
    const then = worstOf(freed.figures);
    if (then !== null && Math.abs(then.by) <= WELL_WITHIN) {
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
