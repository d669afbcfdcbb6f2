/** The words that stand where a live number is not known, and in a wind, in German. */

import type { Translated } from '../translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  unknown: '—',
  yourCallsign: '(Rufzeichen)',
  gust: 'Bö',
};
