/** Which call comes next, by what the aircraft is doing. */

import type { Purpose } from '../runway/question';
import type { Stamp } from '../sortie/fold';
import type { Progress } from '../taxi/pace';
import type { CallKind } from './call';

/** What the next call depends on. */
export interface CallQuestion {
  readonly purpose: Purpose;
  readonly stamps: readonly Pick<Stamp, 'what'>[];
  /** Where the aircraft is on its way; null where no way is known. */
  readonly progress: Pick<Progress, 'last' | 'next' | 'goneM' | 'leftM'> | null;
  /** Whether a runway is still to be crossed. */
  readonly crosses: boolean;
}

/**
 * The call that comes next: before anything is passed for taxi, then for each crossing, at the end
 * of the way for line-up; on the way in inbound, and once landed that the runway is vacated.
 */
export function dueCallKind({ purpose, stamps, progress, crosses }: CallQuestion): CallKind {
  if (purpose === 'landing') return stamps.at(-1)?.what === 'landed' ? 'vacated' : 'inbound';
  if (progress === null || progress.last === null || progress.goneM === 0) return 'taxi';
  if (progress.next === null || progress.leftM === 0) return 'line-up';
  return crosses ? 'crossing' : 'line-up';
}
