/** What a procedure is, and the walk through it. */

export { type FlownAgain, passesAgain } from './again';
export type { KindWords, ListWords } from './classLists';
export { factsIn, holds, optionsIn } from './condition';
export { CONDITION_FACTS } from './conditionFacts';
export { type ListChange, type ProcedureEdit, procedureChanges, type StepChange } from './edit';
export { editionsInOrder, nextEdition } from './editions';
export type { ConditionFact } from './facts';
export {
  type FactName,
  type Facts,
  type FactValue,
  isLiveName,
  LIVE,
  type LiveName,
  piecesOf,
  roundedLive,
  type TextPiece,
} from './facts';
export { type PlacedFault, placedFault } from './faultPlace';
export type { ProcedureFault } from './faults';
export { adapted, type Naming, type StarterWords, starter } from './forAircraft';
export { groupOf, LIST_GROUPS, type ListGroup } from './listGroup';
export {
  type Habit,
  type HabitKind,
  habitsIn,
  habitsOf,
  procedureFlown,
  type SortieHabits,
  sortiesTogether,
} from './memory';
export { type OptionDifference, type OwnDifference, ownDifference } from './ownDifference';
export {
  type ChosenSides,
  type ListConflict,
  type MergedProcedure as Merged,
  mergeOwn,
  type Side,
  type StepConflict as Conflict,
} from './ownMerge';
export {
  findStep,
  listIn,
  listPart,
  type PartId,
  type PlacedStep,
  partsOf,
  type StepPlace,
  withAllPhases,
  withoutEmptyPhases,
} from './parts';
export { passedBefore } from './passed';
export { PHASES } from './phases';
export { type PhaseTimes, phaseTimes } from './phaseTimes';
export {
  type AbnormalList,
  allStepsOf,
  type Phase,
  type Procedure,
  type ProcedureOption,
  type Step,
  type StepId,
} from './procedure';
export type { Condition } from './procedure.schema';
export { type ProcedureChange, procedureChange } from './procedureChange';
export {
  type AskedPart,
  MOST_ASKED,
  type PickedFact as AskedFact,
  pickedCondition,
  type SimpleCondition,
  simpleCondition,
} from './simpleCondition';
export { GATE_SPEEDS, HIGHEST_GATE_FT, LONGEST_WAIT_S, MOST_LISTS, STEP_KINDS } from './stepKinds';
export { type StepState, sawOf } from './stepState';
export { canMove, tiesOf } from './tied';
export { type EnteredAt, enteredAt, unknownIn } from './unknown';
export {
  handledAs,
  isHandled,
  isWaiting,
  type PhaseRows,
  type StepRow,
  type Upcoming,
  type Walk,
  type WalkPosition as Position,
} from './walk';
