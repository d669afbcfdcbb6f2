/** The words for making a lesson, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './lessonWords.en';

export const words: Translated<typeof english> = {
  title: 'Lektion zusammenstellen',
  close: 'Schließen',
  what: 'Was hineinkommt',
  whatHint:
    'Vorgeschlagen: was heute geflogen wird. Der Schüler sieht jedes einzelne, bevor er etwas behält.',
  others: (number) => (number === 1 ? 'Eines mehr von Ihnen' : `${number} weitere von Ihnen`),
  kinds: { field: 'Plätze', aircraft: 'Flugzeuge', procedure: 'Verfahren' },
  called: 'Wie sie heißt',
  name: 'Name der Lektion',
  note: 'Ihr Hinweis an den Schüler',
  make: (documents) =>
    documents === 1 ? 'Mit einem Dokument packen' : `Mit ${documents} Dokumenten packen`,
  print: 'Drucken',
  nothing: 'Mindestens ein Dokument wählen.',
  noName: 'Einen Namen geben.',
  failed: 'Das ist gerade nicht verfügbar.',
  ways: 'Wege, sie weiterzugeben',
};
