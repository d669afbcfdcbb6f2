/** Where the live numbers of the steps come from. */

import { computed } from '@preact/signals';
import { day } from '../board';

export const live = computed(() => ({
  facts: day.steps()?.facts ?? null,
  wind: day.enteredWind() === null ? null : day.wind().wind,
}));
