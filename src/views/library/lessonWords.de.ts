/** The words of lessons, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './lessonWords.en';

export const words: Translated<typeof english> = {
  came: (name) => `Eine Lektion: „${name}“`,
  noteSays: 'Der Fluglehrer schreibt:',
  version: (number) => `Fassung ${number}`,
  stands: {
    same: 'schon da',
    new: 'neu für Sie',
    earlier: 'eine frühere Fassung Ihres eigenen',
    newer: 'neuer als Ihres',
    older: 'älter als Ihres',
    differs: 'weicht von Ihrem ab',
  },
  whatChanges: 'Was es ist und was sich ändern würde',
  leaveOut: 'Weglassen',
  keep: (number) => (number === 1 ? 'Ein Dokument behalten' : `${number} Dokumente behalten`),
  keepNone: 'Nichts ist zum Behalten gewählt',
  allHere: 'Alles davon ist schon da.',
  kept: (number) =>
    number === 1
      ? 'Ein Dokument ist aufgenommen. Benutzt wird es erst, wenn Sie es wählen.'
      : `${number} Dokumente sind aufgenommen. Benutzt werden sie erst, wenn Sie sie wählen.`,
  fly: 'Jetzt fliegen',
  flyHint: 'Damit stehen Platz, Flugzeug und Verfahren des Flugs.',
  flown: 'Der Flug ist auf diese Lektion eingestellt.',
};
