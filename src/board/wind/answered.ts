/** Which answer Wind shows. */

import { computed } from '@preact/signals';
import { day, typed } from '../board';

/** What is typed is unusable: the last good answer stays, and visibly shows that it is old. */
export const isOld = computed(() => {
  // A forecast leaves the wind in use alone; one that can't be read is still no answer.
  const isUnread = typed.read().report?.kind === 'forecast' && typed.expects() === false;
  return day.wind().ranked !== null && (typed.wind().ranked === null || isUnread);
});

/** The answer shown. */
export const answered = computed(() => (isOld.value ? day : typed).wind());
