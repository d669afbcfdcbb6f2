/** Today's numbers, once the first answer is on screen. */

import { computed } from '@preact/signals';
import { present } from '../../core';
import { day } from '../board';
import { parts } from '../dayParts';

/** The look-up code; null until loaded. */
export const lookUps = computed(() => present(parts.physics.value));

/** The air over the field; null until the code is loaded, and without a field. */
export const air = computed(day.air);

/** What today's numbers are computed from, apart from the wind; null while anything is missing. */
export const dayGiven = computed(day.dayGiven);

/** The end the numbers are for: the one in use, else the best. */
export const numbersEnd = computed(day.numbersEnd);

/**
 * Today's numbers; null until the code is loaded, without field or aircraft, or if the aircraft has
 * only book figures.
 */
export const today = computed(day.today);

/** The ladder of the roll; null if today's take-off isn't computed. */
export const ladder = computed(day.ladder);

/** Why the braking parachute doesn't count; null if it does, or if there is none. */
export const noParachute = computed(day.noParachute);
