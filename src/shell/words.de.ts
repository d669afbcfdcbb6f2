/** The words of the frame, in German: strip, places, caution. */

import type { Translated } from '../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  places: {
    wind: 'Wind',
    taxi: 'Rollen',
    steps: 'Schritte',
    numbers: 'Werte',
    log: 'Flugbuch',
  },
  placesLabel: 'Ansichten',
  strip: {
    using: 'Piste',
    landing: 'Landung',
    on: 'auf',
    none: 'keine',
    wind: 'Wind',
    windForecast: 'Wind, Vorhersage',
    windAge: (age) => `Wind, ${age}`,
    noWind: 'noch keiner',
    field: 'Platz',
    noField: 'wählen',
    paused: 'Pause',
    open: {
      end: 'öffnet Wind',
      wind: 'öffnet das Tastenfeld',
      sortie: 'öffnet Flug',
      clock: 'öffnet die Uhr',
    },
    gust: 'Bö',
    above: 'über',
    magnetic: ' mw.',
    calm: 'windstill',
    variable: 'umlaufend',
  },
  caution: {
    title: 'Lapstrip',
    what: 'Ein Kniebrett für alle, die im Simulator fliegen: Wind eingeben, die genannte Piste nehmen, die Schritte abhaken. Geht ohne Netz.',
    understood: 'Verstanden',
  },
  replaced: {
    title: 'Ein Teil von Lapstrip fehlt',
    close: 'Jetzt nicht',
    why: {
      replaced:
        'Lapstrip ist erneuert worden, und der Teil, der hier fehlt, gehört zur Version davor.',
      stuck:
        'Er konnte nicht geladen werden, und dieser Browser holt ihn erst, wenn die Seite neu geladen wird.',
    },
    kept: { text: 'Der Flug bleibt, wie er ist.', reload: 'Neu laden, nichts geht verloren' },
    forgetful: {
      text: 'Dieses Gerät speichert nichts: Eingaben gehen beim Neuladen verloren.',
      reload: 'Neu laden',
    },
  },
};
