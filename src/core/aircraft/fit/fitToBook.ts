/**
 * Fits an aircraft's physics to what its handbook prints: lift, drag and friction move until the
 * rows fit, none further than it must.
 */

import { liftCoefficient } from '../aerodynamics';
import type { Aircraft } from '../aircraft';
import { BOOK_FIGURES, type BookFigure, type NoFigure, workedOut } from '../bookFigures';
import type { HandbookRow } from '../handbook';
import type { Performance } from '../performance';
import { leastSquares } from './leastSquares';
import { TERMS, type Term, THRUST, withDragRotated } from './terms';

/** A row to fit to; the stall with take-off flaps, kt, may stand in any of them. */
export interface FitRow extends HandbookRow {
  readonly takeoffStallKt?: number;
}

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

export interface FittedToBook {
  readonly performance: Performance;
  readonly figures: readonly Compared[];
  /** What moved, by its path in the document, and by what factor. */
  readonly moved: readonly { readonly name: string; readonly factor: number }[];
}

/** An aircraft with physics. */
export type Flying = Aircraft & { readonly performance: Performance };

/** The cost of moving a term against missing a row: a tenth moved equals a thousandth missed. */
const TETHER = 0.01;

/**
 * Physics fitted to the rows, or to the document's plain figures if there are none. Thrust is held,
 * unless it `moves` because nobody knows it.
 */
export function fitToBook(
  aircraft: Flying,
  rows: readonly FitRow[],
  { thrust = 'held' }: { readonly thrust?: 'held' | 'moves' } = {},
): FittedToBook {
  const asked = rows.length > 0 ? rows : plainRows(aircraft);
  const begun = withStalls(aircraft, asked);
  const isAsked = (figures: readonly BookFigure[]) =>
    asked.some((row) => figures.some((figure) => row[figure] !== undefined));
  const terms = [...TERMS, ...(thrust === 'moves' ? [THRUST] : [])].filter(
    ({ read, of }) => (read(begun) ?? 0) > 0 && isAsked(of),
  );
  const missed = (logs: readonly number[]) => [
    ...comparedTo(asked, { ...aircraft, performance: scaled(begun, terms, logs) }).map(
      // A figure that can't be worked out counts as twice the book's.
      (figure) => leftOver(figure) ?? 1,
    ),
    ...logs.map((log) => TETHER * log),
  ];
  const logs = leastSquares(
    missed,
    terms.map(() => 0),
    (tried) => tried.map((log, index) => held(log, terms[index]?.most ?? 1)),
  );
  const performance = rounded(scaled(begun, terms, logs), terms);
  return {
    performance,
    figures: comparedTo(asked, { ...aircraft, performance }),
    moved: terms.map((term, index) => ({
      name: term.name,
      factor: Math.exp(logs[index] ?? 0),
    })),
  };
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

/** The document's plain figures as rows. */
export function plainRows({ takeoff, landing, masses }: Aircraft): readonly FitRow[] {
  return [
    { massKg: masses.usualTakeoffKg, runM: takeoff.runM },
    { massKg: masses.usualLandingKg, landingRunM: landing.runM },
  ];
}

/** Greatest lift in closed form: from the approach speed, and from the stall if it is known. */
function withStalls(aircraft: Flying, rows: readonly FitRow[]): Performance {
  const { performance, masses, landing } = aircraft;
  const { areaM2, clMax } = performance.wing;
  const cl = (massKg: number, stallKt: number) =>
    Math.round(1000 * liftCoefficient(massKg, areaM2, stallKt)) / 1000;
  const stall = takeoffStall(aircraft, rows);
  return {
    ...performance,
    wing: {
      ...performance.wing,
      clMax: {
        takeoff: stall === null ? clMax.takeoff : cl(stall.massKg, stall.kt),
        landing: cl(masses.usualLandingKg, landing.approachKt / performance.landing.reference),
      },
    },
  };
}

/** The stall with take-off flaps: of a row, or of the document. */
function takeoffStall({ masses, handbook }: Flying, rows: readonly FitRow[]) {
  for (const { massKg = masses.usualTakeoffKg, takeoffStallKt: kt } of rows) {
    if (kt !== undefined) return { massKg, kt };
  }
  const kt = handbook?.takeoffStallKt;
  return kt === undefined ? null : { massKg: masses.usualTakeoffKg, kt };
}

/** Keeps a logarithm within a factor and its inverse. */
const held = (log: number, most: number): number =>
  Math.min(Math.max(log, -Math.log(most)), Math.log(most));

/** The terms multiplied, each by the exponential of its logarithm. */
const scaled = (from: Performance, terms: readonly Term[], logs: readonly number[]): Performance =>
  upright(
    terms.reduce(
      (performance, { read, written }, index) =>
        written(performance, (read(from) ?? 0) * Math.exp(logs[index] ?? 0)),
      from,
    ),
  );

/** Rotated no aircraft meets less drag than on its wheels, whatever a table asks for. */
function upright(performance: Performance): Performance {
  const { ground, rotated } = performance.wing;
  return rotated.cd < ground.cd ? withDragRotated(performance, ground.cd) : performance;
}

/** A fit is good for three figures at most. */
const rounded = (performance: Performance, terms: readonly Term[]): Performance =>
  terms.reduce(
    (before, { read, written }) => written(before, Number((read(before) ?? 0).toPrecision(3))),
    performance,
  );
