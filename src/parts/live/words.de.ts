/** The words for an unknown live number and for a wind, in German. */

import type { Translated } from '../translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  unknown: '—',
  yourCallsign: '(Rufzeichen)',
  gust: 'Bö',
};
