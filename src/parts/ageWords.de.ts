/** The words for how old something is, in German. */

import type { words as english } from './ageWords.en';

export const words: typeof english = {
  now: 'gerade eben',
  unknown: 'Alter unbekannt',
  minutes: (minutes) => `${minutes} min alt`,
  hours: (hours) => `${hours} h alt`,
  days: (days) => `${days} Tage alt`,
};
