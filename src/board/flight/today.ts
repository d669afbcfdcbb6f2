/** Today's numbers, once the first answer stands. */

import { computed } from '@preact/signals';
import { present } from '../../core';
import { day } from '../board';
import { parts } from '../dayParts';

/** What looks numbers up; null before the code is there. */
export const lookUps = computed(() => present(parts.physics.value));

/** The air over the field; null before the code is there, and without a field. */
export const air = computed(day.air);

/** What today's numbers are worked out from, but for the wind; null while something is missing. */
export const dayGiven = computed(day.dayGiven);

/** The end that numbers are for: the one in use, else the best. */
export const numbersEnd = computed(day.numbersEnd);

/** Today's numbers; null before the code is there, without field or aircraft, and where it has only book figures. */
export const today = computed(day.today);

/** The ladder of the roll; null where today's take-off is not worked out. */
export const ladder = computed(day.ladder);

/** Why the braking parachute is not counted on; null where it is, and where there is none. */
export const noParachute = computed(day.noParachute);
