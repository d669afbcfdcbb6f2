/** Where the live numbers of the steps come from. */

import { computed } from '@preact/signals';
import { enteredWind, wind } from '../board';
import { steps } from './flight';

export const live = computed(() => ({
  facts: steps.value?.facts ?? null,
  wind: enteredWind.value === null ? null : wind.value.wind,
}));
