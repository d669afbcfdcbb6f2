/** Whom to call, and what about. */

export type { Call, CallFacts, CallKind, CallManner as Manner, Compass, Readback } from './call';
