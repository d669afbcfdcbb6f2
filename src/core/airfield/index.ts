/** What a field is, and drawing one. */

export { mayBeOne, type PlanMisfit, type WithPlan, withPlan } from './addPlan';
export { oppositeOf, readDesignator, runwayNumbers } from './designator';
export { type FieldEdit, fieldChanges } from './edit';
export type { LaidAs } from './editPlan';
export { asDrawn, type Snapped, snap } from './editSnap';
export { draftStrips } from './editStrips';
export { emptyField, isPlaced } from './emptyField';
export { type End, endsOf } from './ends';
export type { FieldFault } from './faults';
export type { Designator, Field, HotSpot, Radio, Runway, RunwayEnd, Surface } from './field';
export {
  type ChangedPlaces,
  type ChangedThing,
  type ChangeVerb,
  type FieldChange,
  fieldChange,
} from './fieldChange';
export { findEnd } from './findEnd';
export { NO_LETTER } from './noLetter';
export { type PlanRunway, runwayPlan } from './plan';
export { type RouteGap, routeGaps } from './routeGaps';
export { type NoRunway, type RunwayBetween, runwayBetween } from './runwayBetween';
export { centreOf, type RunwayLine } from './runwayLine';
export {
  laidBy,
  lieMoved,
  onPicture,
  onPlan,
  type PictureLie,
  type PicturePoint,
} from './tracing';
export { type Whereabouts, whereabouts } from './whereabouts';
