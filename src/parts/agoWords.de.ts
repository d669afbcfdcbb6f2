/** The words for how long ago something was, in German. */

import type { words as english } from './agoWords.en';

export const words: typeof english = {
  now: 'gerade eben',
  unknown: 'zu unbekannter Zeit',
  minutes: (minutes) => `vor ${minutes} min`,
  hours: (hours) => `vor ${hours} h`,
  days: (days) => `vor ${days} Tagen`,
};
