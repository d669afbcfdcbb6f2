/** The words of the rooms' sheet, in German. */

import type { Translated } from '../parts/translated';
import type { words as english } from './roomWords.en';

export const words: Translated<typeof english> = {
  tabs: { sortie: 'Flug', library: 'Bibliothek', device: 'Gerät', about: 'Über' },
  tabsLabel: 'Blätter',
  titles: {
    sortie: 'Flug',
    library: 'Bibliothek',
    device: 'Gerät',
    about: 'Über Lapstrip',
  },
  close: 'Schließen',
};
