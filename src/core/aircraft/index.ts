/** What an aircraft is, its load, and its physics. */

export type { Apart, Compared } from './againstBook';
export type { Aircraft } from './aircraft';
export type { BookFigure } from './bookFigures';
export { AIRCRAFT_CLASSES, type AircraftClass } from './classNames';
export type { Fit, FitTrouble } from './fit/fitAircraft';
export { type HandbookRow, WELL_WITHIN } from './handbook';
export {
  carriedKg,
  isSameLoad,
  type Load,
  type Loading,
  type LoadStation as Station,
  usualLoad,
} from './load';
export type { Balance, LoadEnvelope as Envelope } from './loadEnvelope';
export { type Exceeded, type LoadFigures as LoadSheet, loadSheet } from './loadSheet';
export { type FitQuestion, fitQuestion } from './make/begun';
export {
  type AircraftEdit,
  aircraftChanges,
  assumedFigures,
  isAssumed,
  isNeeded,
  newAircraft,
  type TextName,
} from './make/edit';
export { type FigureName, type FigureUnit, figureSpec } from './make/figures';
export { newLoading } from './make/loading';
export {
  COLUMN_BOUNDS,
  COLUMNS,
  type Column,
  MOST_ROWS,
  type ReadTable,
  readTable,
  type TableProblem,
} from './make/readTable';
