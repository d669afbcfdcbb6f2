/** The German words for an aircraft without a procedure. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  title: (aircraft) => `Kein Verfahren für ${aircraft}`,
  close: 'Schließen',
  intro: 'Wind, Rollen und Zahlen gehen auch ohne.',
  write: 'Eines schreiben',
  writeHint:
    'Beginnt mit einem für diese Art Flugzeug, das sofort geflogen werden kann. Ändere, was du willst.',
  copy: 'Eines kopieren',
  copyHint:
    'Schritte für das, was dieses Flugzeug nicht hat, fallen weg. Lies es vor dem Flug ganz durch.',
  copyOf: (name) => `${name} kopieren`,
  without: 'Ohne fliegen',
  withoutHint: 'Unter „Schritte“ steht das dann, und du kannst jederzeit eines schreiben.',
  copied: (aircraft, name) => `${aircraft}, nach ${name}`,
  making: 'Einen Moment.',
  failed: 'Das ging nicht. Noch einmal versuchen.',
};
