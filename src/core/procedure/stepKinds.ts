/** The kinds of steps, and the bounds of their figures. */

import type { LiveName } from './facts';

/** What a step can be. */
export const STEP_KINDS = ['do', 'check', 'wait', 'say', 'gate', 'note', 'barrier'] as const;

/** The live numbers a gate can be passed by: speeds. */
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

/** The longest wait, seconds. */
export const LONGEST_WAIT_S = 3600;

/** The highest gate, feet above the field. */
export const HIGHEST_GATE_FT = 60_000;

/** The most lists a procedure may have. */
export const MOST_LISTS = 20;
