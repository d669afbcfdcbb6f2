/** Which call comes next, by what the aircraft is doing. */

import type { Phase } from '../procedure/procedure';
import type { Purpose } from '../runway/question';
import type { Stamp } from '../sortie/fold';
import type { Progress } from '../taxi/pace';
import type { CallKind } from './call';

/** What the next call depends on. */
export interface CallQuestion {
  readonly purpose: Purpose;
  /** The phase the steps have come to; null without a procedure. */
  readonly phase: Phase | null;
  /** Those of the present try: what was stamped in one before is over. */
  readonly stamps: readonly Pick<Stamp, 'what'>[];
  /** Where the aircraft is on its route; null if no route is known. */
  readonly progress: Pick<Progress, 'last' | 'next' | 'goneM' | 'leftM'> | null;
  /** Whether leave to cross a runway is still to be asked for. */
  readonly crosses: boolean;
}

/**
 * The next call: taxi before any point is passed, then each crossing, and line-up at the end of the
 * route, or when the steps have come to it; from the roll on, the departure; after stopping, runway
 * vacated; on the way in, inbound and then, once landed, runway vacated, and each crossing on the way
 * to the stand.
 */
export function dueCallKind(question: CallQuestion): CallKind {
  const { purpose, phase, stamps, progress, crosses } = question;
  const last = stamps.at(-1)?.what;
  // Leaving the stand passes its first point.
  const rolls = progress !== null && progress.last !== null;
  if (purpose === 'landing') {
    if (last !== 'landed') return 'inbound';
    return rolls && crosses ? 'crossing' : 'vacated';
  }
  // The steps know, even if nobody followed the way on the plan.
  if (phase === 'line-up') return 'line-up';
  // Stopped on the runway: it is to be vacated before anything else.
  if (last === 'stopping' && !rolls) return 'vacated';
  if (last === 'airborne' || last === 'brakes released') return 'departure';
  if (!rolls) return 'taxi';
  return crosses ? 'crossing' : 'line-up';
}
