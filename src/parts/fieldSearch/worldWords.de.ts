/** The words of the world's fields in the search, in German. */

import type { Translated } from '../translated';
import type { words as english } from './worldWords.en';

export const words: Translated<typeof english> = {
  offer: (fields, megabytes, date) =>
    `${fields} wirkliche Plätze, wie OurAirports sie am ${date} kannte. Sie werden einmal geladen, ${megabytes}\u00a0MB, und sind dann auch ohne Netz da.`,
  caution: 'Nicht zur Navigation.',
  fetch: (megabytes) => `${megabytes}\u00a0MB laden`,
  fetching: 'Die Plätze der Welt werden geladen',
  unavailable: 'Die Plätze ließen sich nicht laden. Besteht eine Netzverbindung?',
  damaged: 'Was ankam, war beschädigt und wird nicht verwendet.',
  again: 'Noch einmal versuchen',
  from: (date) => `OurAirports, ${date}, ODbL\u00a01.0. Nicht zur Navigation.`,
  notKept: 'Dieses Gerät hat sie nicht gespeichert: Sie werden nächstes Mal wieder geladen.',
  newer: (date) => `Es gibt einen neueren Stand vom ${date}.`,
  hint: 'Kennung, Name oder Ort eingeben.',
  none: 'Keiner von ihnen hat eine solche Kennung, einen solchen Namen oder Ort.',
  others: 'Auch Heliports und Wasserflugplätze',
  refused: (code) => `${code} ließ sich nicht übernehmen. Noch einmal versuchen.`,
  at: (town, country) => (town === '' ? country : `${town}, ${country}`),
};
