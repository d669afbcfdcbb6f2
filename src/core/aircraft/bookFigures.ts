/** The figures that a handbook's tables print, worked out for one row of them. */

import { isaTemperatureK, KELVIN_AT_0_C } from '../earth/atmosphere';
import { M_PER_FT } from '../units';
import type { Aircraft } from './aircraft';
import { isCannot } from './conditions';
import type { HandbookRow } from './handbook';
import { landingLengths } from './landing';
import type { Cannot, CannotCode } from './performance';
import { takeoffFigures } from './takeoff';

/** The figures of a row that physics can be held against. */
export const BOOK_FIGURES = ['runM', 'to50ftM', 'climbFtMin', 'landingRunM', 'landingM'] as const;

export type BookFigure = (typeof BOOK_FIGURES)[number];

const OF_TAKEOFF: readonly BookFigure[] = ['runM', 'to50ftM', 'climbFtMin'];

/** Whether a figure is one of the take-off and climb; the others are of the landing. */
export const isOfTakeoff = (figure: BookFigure): boolean => OF_TAKEOFF.includes(figure);

/** Why a figure can't be worked out. */
export type NoFigure = CannotCode | 'cannot-climb';

/** A figure worked out, or why there is none. */
export type WorkedOut =
  | { readonly value: number; readonly because: null }
  | { readonly value: null; readonly because: NoFigure };

/** Standard temperature at a pressure altitude, °C, within what is worked out here. */
const standardC = (pressureAltitudeFt: number): number =>
  isaTemperatureK(Math.min(Math.max(pressureAltitudeFt, -1500), 20_000) * M_PER_FT) - KELVIN_AT_0_C;

/** As long as the longest runway there is, and longer: what the run doesn't depend on, m. */
const AMPLE_M = 9000;

/**
 * What physics makes of the figures a row has, on a dry, level, hard runway. An empty mass is the
 * usual one, an empty altitude the sea's, an empty temperature the standard one at that altitude,
 * an empty headwind none.
 */
export function workedOut(
  aircraft: Aircraft,
  row: HandbookRow,
): Readonly<Partial<Record<BookFigure, WorkedOut>>> {
  const { masses } = aircraft;
  const { pressureAltitudeFt = 0, headwindKt = 0 } = row;
  const { temperatureC = standardC(pressureAltitudeFt) } = row;
  const asked = BOOK_FIGURES.filter((figure) => row[figure] !== undefined);
  const question = {
    aircraft,
    air: { pressureAltitudeFt, temperatureC },
    headwindKt,
    slopePercent: 0,
    surface: 'dry',
    ground: 'asphalt',
  } as const;
  const up = asked.some(isOfTakeoff)
    ? takeoffFigures({
        ...question,
        massKg: row.massKg ?? masses.usualTakeoffKg,
        runway: { toraM: AMPLE_M, todaM: AMPLE_M, asdaM: AMPLE_M },
        rollsFromM: 0,
      })
    : null;
  const down = asked.every(isOfTakeoff)
    ? null
    : landingLengths({
        ...question,
        massKg: row.massKg ?? masses.usualLandingKg,
        gustSpreadKt: 0,
      });
  const figureOf = (figure: BookFigure): WorkedOut => {
    const answer = isOfTakeoff(figure) ? up : down;
    if (answer === null) return { value: null, because: 'no-performance' };
    if (isCannot(answer)) return { value: null, because: answer.because };
    const value = figureIn(answer, figure);
    return value === null ? { value, because: 'cannot-climb' } : { value, because: null };
  };
  return Object.fromEntries(asked.map((figure) => [figure, figureOf(figure)]));
}

type Answer = Exclude<
  ReturnType<typeof takeoffFigures> | ReturnType<typeof landingLengths>,
  Cannot
>;

function figureIn(answer: Answer, figure: BookFigure): number | null {
  if ('to50ftM' in answer) {
    if (figure === 'climbFtMin') return answer.climbFtMin();
    return figure === 'runM' ? answer.runM : answer.to50ftM();
  }
  return figure === 'landingRunM' ? answer.runM : answer.neededM;
}
