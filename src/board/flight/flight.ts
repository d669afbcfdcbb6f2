/**
 * What Wind can do without: the figures of the aircraft's document, the taxi reminder, the steps.
 */

import { computed } from '@preact/signals';
import { day } from '../board';

export const numbers = computed(day.numbers);

export const taxi = computed(day.taxi);

/** Where the pilot is in the steps. */
export const steps = computed(day.steps);

/** How long each phase has taken so far. */
export const phasePace = computed(day.times);
