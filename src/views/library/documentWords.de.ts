/** The words of what brings documents in. */

import type { Translated } from '../../parts/translated';
import type { words as englishWords } from './documentWords.en';

export const words: Translated<typeof englishWords> = {
  hint: 'Ein Platz, ein Flugzeug oder ein Verfahren als JSON-Datei, ein ganzes Flugbuch oder ein Flugplatz, aus OpenStreetMap gespeichert. Die Datei lässt sich auch ins Fenster ziehen. Es bleibt auf diesem Gerät.',
  choose: 'Datei ansehen',
  paste: 'Link oder Code einfügen',
  lookAtPasted: 'Ansehen',
  nothingPasted: 'Darin steht kein Link oder Code von Lapstrip.',
};
