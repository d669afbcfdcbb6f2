/** The words of Print, and of the printed cards, in German. */

import { phaseWords } from '../../parts/procedure.de';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  title: (name) => `${name} drucken`,
  close: 'Schließen',
  hint: 'Ein Satz A5-Karten, schwarz auf weiß. Kann der Drucker kein A5, zwei Seiten je A4-Blatt wählen.',
  numbers: 'Werte',
  filled: 'Werte von heute',
  blank: 'Leer lassen',
  print: 'Drucken',
  failed: 'Das ist gerade nicht zu bekommen.',
  preview: 'So werden die Karten',
  phases: phaseWords,
  when: (condition) => `Falls ${condition}: `,
  /** Holding and not, without a verb, to fit after “falls”. */
  facts: {
    night: ['Nacht', 'keine Nacht'],
    lights: ['Sonne untergegangen', 'Sonne am Himmel'],
    wet: ['Piste nicht trocken', 'Piste trocken'],
    controlled: ['Platz kontrolliert', 'Platz unkontrolliert'],
    lightWind: ['Wind schwach', 'Wind nicht schwach'],
    crossesRunway: ['Piste zu kreuzen', 'keine Piste zu kreuzen'],
    supersonic: ['Überschallflug geplant', 'kein Überschallflug geplant'],
    stores: ['Außenlasten angehängt', 'keine Außenlasten angehängt'],
    passengers: ['Fluggäste an Bord', 'keine Fluggäste an Bord'],
    cable: ['ein Fangseil liegt über der Piste', 'kein Fangseil liegt über der Piste'],
  },
  windAbove: (kt) => `Wind über ${kt} kt`,
  fitted: (option) => `mit „${option}“`,
  and: ' und ',
  or: ' oder ',
  not: (condition) => `nicht (${condition})`,
  expect: (time) => `etwa ${time}`,
  gust: 'Böen',
  runway: (end) => `Piste ${end}`,
  wind: (text) => `Wind ${text}`,
};
