/** The day: everything that follows from what is chosen and known. */

export { notAccepted } from './accepted';
export type { AskedDay, DayQuestion } from './askDay';
export { type Day, type DayBrief, day } from './day';
export { type Declared, declared, declaredFigures } from './declared';
export { type EndFigures, endFigures } from './endFigures';
export type { ExpectedBrief, JudgedPart } from './expected';
export { fromField } from './given';
export type { ClimbRung, Ladder, Rung } from './ladder';
export { takeoffUnderWay } from './ladderTimes';
export type { LookUp } from './lookUp';
export { type Memo, plainMemo } from './memo';
export type { NumbersBrief } from './numbers';
export {
  endsSortie,
  isReadAloud,
  isReleasing,
  type Main,
  mayDoNow,
  mayGoOnFrom,
  type Offers,
  offers,
  putOffBefore,
  wantsHold,
} from './offers';
export type { OutlookBrief } from './outlook';
export type { NoParachute } from './parachute';
export { isOffStand, type Passing } from './route';
export type { SettledFacts } from './settled';
export {
  type Documents,
  type LatePart as Part,
  type LateParts as Parts,
  present,
  type Sources,
  type WindText,
} from './sources';
export { fittedOptions } from './stepFacts';
export { notThereIn, rowsOf, type StepsBrief, type StopNow, stopNow } from './steps';
export { sunFigure } from './sunFigure';
export type { TaxiBrief } from './taxi';
export type { LandingLimit, TodayBrief } from './today';
export { type Caution, type CautionCode, isCautionCode, isStopping, type Verdict } from './verdict';
export type { WeatherBrief } from './weather';
export type { WindBrief } from './wholeWind';
export {
  type NoRanking,
  northOf,
  otherNorth,
  type ReadWind,
  readEnteredWind,
  type WindAnswer,
} from './wind';
