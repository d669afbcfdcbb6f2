/** Judging the ends of runways, and choosing one. */

export type { EndsCompared, RuleApplied } from './compare';
export type {
  EndsQuestion,
  HoldsTo,
  HoldsUntil,
  NoBestReason as NoBest,
  Purpose,
  RankedEnd,
  RankedEnds,
  Reason,
  Shortfall,
  WindLimits,
} from './question';
export { rankRunwayEnds } from './rank';
export { type RunwayRing, runwayRing } from './ring';
