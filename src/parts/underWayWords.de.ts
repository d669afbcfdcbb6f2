/** The words for what is under way in the steps, in German. */

import type { Translated } from './translated';
import type { words as english } from './underWayWords.en';

export const words: Translated<typeof english> = {
  list: 'Eine Liste ist offen',
  listAt: (title, handled, total) => `${title}, ${handled} von ${total}`,
  roll: (time) => `Startlauf, ${time}`,
  interrupted: (ago) => `Unterbrochen ${ago}`,
  opens: { list: 'Zur Liste', roll: 'Zum Startlauf', interrupted: 'Zu den Schritten' },
};
