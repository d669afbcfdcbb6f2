/** Which answer Wind shows. */

import { computed } from '@preact/signals';
import { typedWind, wind } from '../board';

/** What is typed is unusable: the last good answer stays, and visibly shows that it is old. */
export const isOld = computed(() => typedWind.value.ranked === null && wind.value.ranked !== null);

/** The answer shown. */
export const answered = computed(() => (isOld.value ? wind : typedWind).value);
