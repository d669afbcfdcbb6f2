/** Which answer Wind shows. */

import { computed } from '@preact/signals';
import { day, typed } from '../board';

/** What is typed is unusable: the last good answer stays, and visibly shows that it is old. */
export const isOld = computed(() => typed.wind().ranked === null && day.wind().ranked !== null);

/** The answer shown. */
export const answered = computed(() => (isOld.value ? day : typed).wind());
