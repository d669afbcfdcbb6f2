/** Which answer Wind shows. */

import { computed } from '@preact/signals';
import { typedWind, wind } from '../board';

/** What is typed cannot be used: the last good answer stands on, and is visibly old. */
export const old = computed(() => typedWind.value.ranked === null && wind.value.ranked !== null);

/** The answer that is shown. */
export const answered = computed(() => (old.value ? wind : typedWind).value);
