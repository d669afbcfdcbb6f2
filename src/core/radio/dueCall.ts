/** Which call comes next, by what the aircraft is doing. */

import type { Purpose } from '../runway/question';
import type { Stamp } from '../sortie/fold';
import type { Progress } from '../taxi/pace';
import type { CallKind } from './call';

/** What the next call depends on. */
export interface CallQuestion {
  readonly purpose: Purpose;
  readonly stamps: readonly Pick<Stamp, 'what'>[];
  /** Where the aircraft is on its route; null if no route is known. */
  readonly progress: Pick<Progress, 'last' | 'next' | 'goneM' | 'leftM'> | null;
  /** Whether a runway is still to be crossed. */
  readonly crosses: boolean;
}

/**
 * The next call: taxi before any point is passed, then each crossing, and line-up at the end of the
 * route; on the way in, inbound and then, once landed, runway vacated.
 */
export function dueCallKind({ purpose, stamps, progress, crosses }: CallQuestion): CallKind {
  if (purpose === 'landing') return stamps.at(-1)?.what === 'landed' ? 'vacated' : 'inbound';
  if (progress === null || progress.last === null || progress.goneM === 0) return 'taxi';
  if (progress.next === null || progress.leftM === 0) return 'line-up';
  return crosses ? 'crossing' : 'line-up';
}
