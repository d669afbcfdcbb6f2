/** The words for a part that hasn't loaded, in German. */

import type { Translated } from '../translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  loading: 'Wird geladen',
  failed: 'Dieser Teil konnte nicht geladen werden.',
  retry: 'Noch einmal',
  close: 'Schließen',
};
