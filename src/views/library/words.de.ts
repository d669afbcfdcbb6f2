/** The words of the Library, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  more: 'Hinzufügen',
  drawField: 'Platz zeichnen',
  fields: 'Plätze',
  aircraft: 'Flugzeuge',
  procedures: 'Verfahren',
  does: { edit: 'Bearbeiten', share: 'Teilen', print: 'Drucken' },
  doesTo: {
    edit: (name) => `${name} bearbeiten`,
    share: (name) => `${name} teilen`,
    print: (name) => `${name} drucken`,
  },
  forAircraft: (aircraft, language) =>
    language === null ? `für ${aircraft}` : `für ${aircraft}, auf ${language}`,
  own: 'eigenes Dokument',
  today: 'heute geflogen',
};
