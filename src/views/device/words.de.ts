/** The words for what belongs to the device, in German. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  language: 'Sprache',
  languages: { en: 'English', de: 'Deutsch' },
  theme: 'Bildschirm',
  themes: { device: 'Wie das Gerät', day: 'Tag', dusk: 'Dämmerung', night: 'Nacht' },
  brightNight: 'Hellere Nacht',
  dimIt:
    'Das Gerät so dunkel stellen, wie noch zu lesen ist, und seine eigene Nachtfärbung ausschalten.',
  awake: {
    'not-wanted': 'Der Bildschirm bleibt vom ersten Schritt bis zum Ende des Flugs an.',
    held: 'Der Bildschirm bleibt an, bis der Flug endet.',
    refused:
      'Das Gerät weigert sich, den Bildschirm anzulassen, etwa um den Akku zu schonen: Seine eigene Einstellung bestimmt, wann er dunkel wird.',
    none: 'Dieser Browser kann den Bildschirm nicht anlassen: Die Einstellung des Geräts bestimmt, wann er dunkel wird.',
  },
  fullScreen: 'Vollbild',
  fullScreenRefused: 'Der Browser hat das Vollbild verweigert.',
  isBeside: 'Lapstrip wurde neu begonnen. Was vorher gespeichert war, ist noch auf diesem Gerät.',
  goBack: 'Zurück zu dem, was vorher gespeichert war',
  hand: 'Hand an den Tasten',
  hands: { right: 'Rechte Hand', left: 'Linke Hand' },
  beside: 'Neben den Schritten auf breitem Bildschirm',
  besides: { wind: 'Wind', taxi: 'Rollen', numbers: 'Werte' },
  cardAtLineUp: 'Großbild beim Aufrollen',
  watching: 'Zum Zuschauen',
  watchHint:
    'Eine Seite, auf der andere zuschauen, in einem weiteren Fenster dieses Browsers. Sie ändert nichts.',
  watch: 'Zum Zuschauen öffnen',
  storage: 'Speicher und Version',
  kept: 'Alles bleibt auf diesem Gerät: kein Konto, kein Server, nichts wird gesendet.',
  notKept:
    'Dieses Gerät speichert gerade nichts: Eingaben sind vergessen, sobald das Fenster geschlossen wird.',
  version: (version) => `Version ${version}`,
};
