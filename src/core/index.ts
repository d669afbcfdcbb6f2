/** The door of core: everything else imports core from here. */

export type { Aircraft } from './aircraft/aircraft';
export {
  carriedKg,
  isSameLoad,
  type Load,
  type Loading,
  type Station,
  usualLoad,
} from './aircraft/load';
export type { Balance, Envelope } from './aircraft/loadEnvelope';
export { type Exceeded, type LoadSheet, loadSheet } from './aircraft/loadSheet';
export { type End, endsOf } from './airfield/ends';
export type { Designator, Field, Runway, RunwayEnd, Surface } from './airfield/field';
export { findEnd } from './airfield/findEnd';
export { type PlanRunway, runwayPlan } from './airfield/plan';
export {
  degreesOf,
  type MagneticDeg,
  magneticDeg,
  type North,
  relativeDeg,
  type TrueDeg,
  toMagnetic,
  toTrue,
  trueDeg,
  wrapDeg,
} from './angle';
export type { AskedDay, DayQuestion } from './day/askDay';
export { type Day, type DayBrief, day } from './day/day';
export { type EndFigures, endFigures } from './day/endFigures';
export { type Memo, once } from './day/memo';
export type { NumbersBrief } from './day/numbers';
export {
  isReadAloud,
  isReleasing,
  type Main,
  mayDoNow,
  mayGoOnFrom,
  type Offers,
  offers,
  putOffBefore,
  wantsHold,
} from './day/offers';
export type { NoParachute } from './day/parachute';
export { isOffStand } from './day/route';
export type { SettledFacts } from './day/settled';
export {
  type Documents,
  type Part,
  type Parts,
  present,
  type Sources,
  type WindText,
} from './day/sources';
export { fittedOptions } from './day/stepFacts';
export { notThereIn, rowsOf, type StepsBrief } from './day/steps';
export type { TaxiBrief } from './day/taxi';
export type { Caution, CautionCode, Verdict } from './day/verdict';
export type { WindBrief } from './day/wholeWind';
export { type NoRanking, northOf, otherNorth, type ReadWind, type WindAnswer } from './day/wind';
export { type FieldModel, type FieldModelName, fieldModelFor } from './earth/fieldModel';
export type { Place } from './earth/place';
export { variationDeg } from './earth/variation';
export type { VariationTable } from './earth/variationTable';
export { type Cause, type Figure, known, type SourceId, unknown, type Why } from './figure';
export { type InLanguages, languageOf, primarySubtag, textIn } from './language';
export { plainly, shownPlainly, type TextFault } from './plainText';
export { type FlownAgain, passesAgain } from './procedure/again';
export { factsIn } from './procedure/condition';
export {
  type FactName,
  type Facts,
  type FactValue,
  isLiveName,
  LIVE,
  type LiveName,
  piecesOf,
  roundedLive,
} from './procedure/facts';
export {
  type Habit,
  type HabitKind,
  habitsIn,
  habitsOf,
  procedureFlown,
  type SortieHabits,
  sortiesTogether,
} from './procedure/memory';
export { passedBefore } from './procedure/passed';
export { PHASES } from './procedure/phases';
export { type PhaseTimes, phaseTimes } from './procedure/phaseTimes';
export {
  type AbnormalList,
  allStepsOf,
  type Phase,
  type Procedure,
  type ProcedureOption,
  type Step,
  type StepId,
} from './procedure/procedure';
export { type StepState, sawOf } from './procedure/stepState';
export { canMove, tiesOf } from './procedure/tied';
export {
  handledAs,
  isHandled,
  isWaiting,
  type PhaseRows,
  type Position,
  type StepRow,
  type Upcoming,
  type Walk,
} from './procedure/walk';
export { isReservedName } from './reservedName';
export type {
  EndsQuestion,
  HoldsTo,
  HoldsUntil,
  NoBest,
  Purpose,
  RankedEnd,
  RankedEnds,
  Reason,
  Shortfall,
  WindLimits,
} from './runway/question';
export { rankRunwayEnds } from './runway/rank';
export { type RunwayRing, runwayRing } from './runway/ring';
export { sameData, sameDocument } from './same';
export {
  type Chosen,
  compareEntries,
  ENTRY_VERSION,
  type Entry,
  type Event,
  FRESH_INPUTS,
  type Hash,
  HIGHEST_SEQ,
  type Id,
  type Inputs,
  type LeadsTo,
  type ListId,
  type Moment,
  momentWithin,
  type SealedFigure,
  type StepOutcome,
  tieKey,
  withinBounds,
} from './sortie/entry';
export {
  draftInVersion1,
  entryMisfit,
  type Misfit,
  type ReadEntry,
  readEntry,
} from './sortie/entry.schema';
export { fieldsFlown } from './sortie/flown';
export { sortieFlown } from './sortie/flying';
export {
  type Clock,
  type EnteredWind,
  foldSortie,
  NO_SORTIE,
  type Run,
  type Seal,
  type Sortie,
  type Stamp,
  sortiesOf,
  sortieTimeMs,
  type TaxiedPoint,
  type Ticked,
} from './sortie/fold';
export { interruptedAt, mayInterrupt, wasGlance, wasMoreThanLook } from './sortie/interruption';
export { togetherWith } from './sortie/together';
export { withWind } from './sortie/withWind';
export type { Unit } from './units';
export { ageMinutes, issuedAt, newestFor } from './weather/issued';
export { readReport, readReports } from './weather/readReport';
export type {
  Place as TextPlace,
  Problem,
  ProblemCode,
  Span,
  SpanKind,
  Wind,
  WindReport,
} from './weather/report';
export { type ReportNote, reportNotes } from './weather/reportNotes';
export type * from './weather/whole/groupTypes';
export type { HourOfDay, Meaning, Modifier, RemarkKind, TrendKind } from './weather/whole/meaning';
export type { ReadSpan, Remarks, Report, Trend, Weather } from './weather/whole/report';

/** Loads what works out magnetic variation, and the tables for a date; rejects with RangeError outside 1900 to 2030. */
export const loadVariation = (at: Date) =>
  import('./earth/variationTable').then(({ variationTableFor }) => variationTableFor(at));

export { oppositeOf, readDesignator, runwayNumbers } from './airfield/designator';
export { type FieldEdit, fieldChanges } from './airfield/edit';
export type { LaidAs } from './airfield/editPlan';
export { type Snapped, snap } from './airfield/editSnap';
export { draftStrips } from './airfield/editStrips';
export { emptyField } from './airfield/emptyField';
export type { FieldFault } from './airfield/faults';
export type { HotSpot, Radio } from './airfield/field';
export { type RouteGap, routeGaps } from './airfield/routeGaps';
export { centreOf, type RunwayLine } from './airfield/runwayLine';
export type { ClimbRung, Ladder, Rung } from './day/ladder';
export { takeoffUnderWay } from './day/ladderTimes';
export type { LookUp } from './day/lookUp';
export type { OutlookBrief } from './day/outlook';
export { sunFigure } from './day/sunFigure';
export type { LandingLimit, TodayBrief } from './day/today';
export type { WeatherBrief } from './day/weather';
export type { LowSun } from './earth/lowSun';
export { readCoordinate } from './earth/readCoordinate';
export type { Spell, SunDay } from './earth/sun';
export type { DocumentFault, Fault, ValueFault } from './fault';
export {
  askDay,
  loadDocumentCheck,
  loadDocumentFaults,
  loadDocumentReader,
  loadKeptDocumentReader,
  loadLogbook,
  loadPart,
  loadReportReader,
} from './loaders';
export { holds, optionsIn } from './procedure/condition';
export { CONDITION_FACTS } from './procedure/conditionFacts';
export {
  type ListChange,
  type ProcedureEdit,
  procedureChanges,
  type StepChange,
} from './procedure/edit';
export { editionsInOrder, nextEdition } from './procedure/editions';
export type { ConditionFact } from './procedure/facts';
export { type PlacedFault, placedFault } from './procedure/faultPlace';
export type { ProcedureFault } from './procedure/faults';
export {
  type OptionDifference,
  type OwnDifference,
  ownDifference,
} from './procedure/ownDifference';
export {
  type Chosen as ChosenSides,
  type Conflict,
  type ListConflict,
  type Merged,
  mergeOwn,
  type Side,
} from './procedure/ownMerge';
export {
  findStep,
  listIn,
  listPart,
  type PartId,
  type Place as StepPlace,
  type PlacedStep,
  partsOf,
  withAllPhases,
  withoutEmptyPhases,
} from './procedure/parts';
export type { Condition } from './procedure/procedure.schema';
export {
  type Asked as AskedFact,
  type AskedPart,
  MOST_ASKED,
  pickedCondition,
  type SimpleCondition,
  simpleCondition,
} from './procedure/simpleCondition';
export { GATE_SPEEDS, HIGHEST_GATE_FT, LONGEST_WAIT_S, STEP_KINDS } from './procedure/stepKinds';
export type {
  Call,
  CallFacts,
  CallKind,
  Compass,
  Manner,
  Readback,
} from './radio/call';
export type { DocumentProblem, ReadDocument } from './readDocument.schema';
export type { EndsCompared, RuleApplied } from './runway/compare';
export type { LoggedSortie, Note, PhaseTime, StepLeft } from './sortie/log';
export type { LogSummary, LogTotals } from './sortie/logSummary';
export type { LoggedTime, LogMoment, LogTimes } from './sortie/logTimes';
export { tickKey } from './sortie/run';
export type { Written } from './sortie/understood';
export type { TaxiFault } from './taxi/fault';
export type { NodeId, TaxiEdge, TaxiNode } from './taxi/graph';
export type { Progress, Stretch, Turn } from './taxi/pace';
export type { Crossing, Mark, Route } from './taxi/route';
export { type StretchId, stretchId } from './taxi/rules';
export type { Strip, StripEnd } from './taxi/runwayStrip';
export type { Told } from './taxi/told';
export type { Exit, WayIn } from './taxi/wayIn';
export type { ChosenEntry, OfferedEntry, WayOut } from './taxi/wayOut';
export type { WeatherQuestion } from './weather/questions';
export type { WindOutlook } from './weather/windOutlook';
export type { ThinBasis, WindTrend } from './weather/windTrend';
export {
  beginHistory,
  type Changes,
  changed,
  type History,
  redone,
  restoredHistory,
  type StoredHistory,
  settled,
  standing,
  storedHistory,
  undone,
} from './writing/history';
