/** The kinds of steps, and within which bounds their figures lie. */

import type { LiveName } from './facts';

/** What a step can be. */
export const STEP_KINDS = ['do', 'check', 'wait', 'say', 'gate', 'note', 'barrier'] as const;

/** The live numbers that a gate can be passed by: speeds. */
export const GATE_SPEEDS = [
  'markKt',
  'lastStopKt',
  'rotateKt',
  'liftOffKt',
  'gearKt',
  'flapsKt',
  'reheatOffKt',
  'climbKt',
  'referenceKt',
  'approachKt',
] as const satisfies readonly LiveName[];

/** No wait is expected to take longer, seconds. */
export const LONGEST_WAIT_S = 3600;

/** No gate is passed higher, feet above the field. */
export const HIGHEST_GATE_FT = 60_000;
