/** What happened, and what it adds up to. */

export {
  compareEntries,
  ENTRY_VERSION,
  type EndChosen as Chosen,
  type Entry,
  FRESH_INPUTS,
  type Hash,
  HIGHEST_SEQ,
  type Id,
  type Inputs,
  type LeadsTo,
  type ListId,
  LONGEST_TOLD,
  type Moment,
  momentWithin,
  type SealedFigure,
  type SortieEvent as Event,
  type StepOutcome,
  tieKey,
  withinBounds,
} from './entry';
export {
  draftInVersion1,
  entryMisfit,
  type Misfit,
  type ReadEntry,
  readEntry,
} from './entry.schema';
export { fieldsFlown } from './flown';
export { sortieFlown } from './flying';
export {
  brakesUsedMs,
  type Clock,
  chocksNow,
  type EnteredWind,
  foldSortie,
  hasMoved,
  NO_SORTIE,
  type Run,
  type Seal,
  type Sortie,
  type Stamp,
  sortiesOf,
  sortieTimeMs,
  type TaxiedPoint,
  type Ticked,
} from './fold';
export { interruptedAt, mayInterrupt, wasGlance, wasMoreThanLook } from './interruption';
export type { LoggedList, LoggedSortie, Note, PhaseTime, StepLeft } from './log';
export type { LogSummary, LogTotals } from './logSummary';
export type { LoggedTime, LogMoment, LogTimes } from './logTimes';
export { tickKey } from './run';
export { togetherWith } from './together';
export type { Written } from './understood';
export { type Aged, aged, leadsToSteps, type UnderWay, underWay } from './underWay';
export { withWind } from './withWind';
