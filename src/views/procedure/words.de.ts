/** The German words for an aircraft without a procedure, and for the short one it can begin with. */

import type { StarterWords } from '../../core';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

const starter: StarterWords = {
  about: 'Ein kurzes Verfahren für den Anfang. Trag die Worte und Schritte deines Cockpits ein.',
  rejected: 'Startabbruch',
  toStop: 'Abbruch',
  steps: {
    'brakes-parked': ['Parkbremse', 'gezogen'],
    'controls-free': ['Steuerung', 'voller Weg, leichtgängig'],
    fuel: ['Kraftstoff', '{fuelKg} kg'],
    altimeter: ['Höhenmesser', 'gestellt, zeigt den Platz'],
    'brakes-rolling': ['Bremsen im Rollen', 'beide greifen'],
    'flaps-take-off': ['Klappen', 'Start'],
    'trim-take-off': ['Trimmung', 'Start'],
    'before-runway': ['Aufrollprüfung', 'nichts offen'],
    heading: ['Steuerkurs', '{runwayMagnetic}'],
    'runway-empty': ['Piste voraus', '{runway}, leer'],
    'brakes-off': ['Bremsen', 'los, Fersen am Boden'],
    'gear-up': ['Fahrwerk', 'oben, Lampen aus'],
    'flaps-up': ['Klappen', 'eingefahren'],
    'reheat-off': ['Nachbrenner', 'aus'],
    'climb-set': ['Steigflug', '{climbKt} kt'],
    'landing-runway': ['Landepiste', '{runway}, Kurs {runwayMagnetic}'],
    'altimeter-home': ['Höhenmesser', 'auf den Platz gestellt'],
    'gear-down': ['Fahrwerk', 'unten, alles grün'],
    'flaps-land': ['Klappen', 'Landung'],
    'approach-speed': ['Anflug', '{approachKt} kt'],
    'flaps-in': ['Klappen', 'eingefahren'],
    'brakes-parked-home': ['Parkbremse', 'gezogen'],
    'engine-off': ['Triebwerk', 'aus'],
  },
};

export const words: Translated<typeof english> = {
  title: (aircraft) => `Kein Verfahren für ${aircraft}`,
  close: 'Schließen',
  intro: 'Wind, Rollen und Zahlen gehen auch ohne.',
  write: 'Eines schreiben',
  writeHint: 'Beginnt mit einem kurzen, das sofort geflogen werden kann. Ändere, was du willst.',
  copy: 'Eines kopieren',
  copyHint:
    'Schritte für das, was dieses Flugzeug nicht hat, fallen weg. Lies es vor dem Flug ganz durch.',
  copyOf: (name) => `${name} kopieren`,
  without: 'Ohne fliegen',
  withoutHint: 'Unter „Schritte“ steht das dann, und du kannst jederzeit eines schreiben.',
  named: (aircraft) => `${aircraft}, eigenes Verfahren`,
  copied: (aircraft, name) => `${aircraft}, nach ${name}`,
  making: 'Einen Moment.',
  failed: 'Das ging nicht. Noch einmal versuchen.',
  starter,
};
