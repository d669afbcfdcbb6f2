/** The words for a part of the screen that could not be drawn, in German. */

import type { Translated } from '../parts/translated';
import type { words as english } from './brokenWords.en';

export const words: Translated<typeof english> = {
  brokenPlace: (place) => `„${place}“ lässt sich nicht anzeigen.`,
  broken: {
    strip: 'Der Streifen lässt sich nicht anzeigen.',
    sheet: 'Dieses Blatt lässt sich nicht anzeigen.',
    whole: 'Lapstrip lässt sich nicht anzeigen.',
  },
  close: 'Schließen',
  failed: 'In Lapstrip ist ein Fehler aufgetreten',
  mayHaveStopped: 'Etwas darin kann stillstehen, bis es neu geladen ist.',
  stays: 'Was eingegeben ist, bleibt, wie es ist.',
  again: 'Noch einmal',
  without: 'Ohne weitermachen',
  save: 'Alles als Datei speichern',
  saved: 'Alles ist gespeichert.',
  notSaved: 'Es ließ sich nicht speichern.',
  anewHint:
    'Oder Lapstrip beginnt neu, ohne Inhalt. Was jetzt gespeichert ist, bleibt auf diesem Gerät, und „Flug“ führt dorthin zurück.',
  anew: 'Daneben neu beginnen',
  anewSure: 'Ja, neu beginnen',
  notAnew: 'Auf diesem Gerät kann Lapstrip nicht neu beginnen.',
};
