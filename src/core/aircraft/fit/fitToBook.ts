/**
 * Fits an aircraft's physics to what its handbook prints: lift, drag and friction move until the
 * rows fit, none further than it must.
 */

import { liftCoefficient } from '../aerodynamics';
import { type Compared, comparedTo, leftOver } from '../againstBook';
import type { Aircraft } from '../aircraft';
import type { BookFigure } from '../bookFigures';
import type { HandbookRow } from '../handbook';
import type { Performance } from '../performance';
import { leastSquares } from './leastSquares';
import { GUESSES, type Guess, TERMS, type Term, withDragRotated } from './terms';

/** A row to fit to; the stall with take-off flaps, kt, may stand in any of them. */
export interface FitRow extends HandbookRow {
  readonly takeoffStallKt?: number;
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
 * Physics fitted to the rows, or to the document's plain figures if there are none. Thrust and the
 * path to the threshold stay as they are, unless they are guesses.
 */
export function fitToBook(
  aircraft: Flying,
  rows: readonly FitRow[],
  guesses: readonly Guess[] = [],
): FittedToBook {
  const asked = rows.length > 0 ? rows : plainRows(aircraft);
  const begun = withStalls(aircraft, asked);
  const isAsked = (figures: readonly BookFigure[]) =>
    asked.some((row) => figures.some((figure) => row[figure] !== undefined));
  const terms = [...TERMS, ...guesses.map((guess) => GUESSES[guess])].filter(
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

/** The document's plain figures as rows. */
export function plainRows({ takeoff, landing, masses }: Aircraft): readonly FitRow[] {
  const rows: readonly FitRow[] = [
    {
      massKg: masses.usualTakeoffKg,
      ...(takeoff.runM === undefined ? {} : { runM: takeoff.runM }),
    },
    {
      massKg: masses.usualLandingKg,
      ...(landing.runM === undefined ? {} : { landingRunM: landing.runM }),
    },
  ];
  return rows;
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
