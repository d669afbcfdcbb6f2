/** Was der Leser von Karten in Kürzeln sagt, als Sätze. */

import type { Translated } from '../../parts/translated';
import type * as english from './noteWords.en';

export const problems: Translated<typeof english.problems> = {
  'not-a-map':
    'Der Text ist weder OSM XML noch Overpass-JSON noch GeoJSON. Den Flugplatz in einem davon neu speichern.',
  'cut-short': 'Die Datei ist abgeschnitten oder beschädigt. Neu speichern.',
  'too-many':
    'Die Datei enthält mehr als eine Million Objekte. Einen kleineren Ausschnitt speichern: Der Flugplatz allein genügt.',
  'lines-without-points':
    'Die Datei nennt Linien, aber nicht ihren Verlauf. In der Abfrage auch die Geometrie oder alle Punkte der Linien verlangen.',
  'no-runway':
    'Die Datei enthält keinen Flugplatz mit Piste. Einen Ausschnitt speichern, der den ganzen Flugplatz zeigt.',
};

const places = (n: number, one: string, several: string) => (n === 1 ? one : `${n} ${several}`);

export const notes: Translated<typeof english.notes> = {
  'code-assumed': () =>
    'Die Karte nennt keine Ortskennung. Der Platz heißt XMAP, bis er bearbeitet wird.',
  'elevation-assumed': () =>
    'Die Karte nennt keine Höhe: 0 ft. Vor Gebrauch der Werte berichtigen.',
  'width-unknown': (n) => `${places(n, 'Eine Piste', 'Pisten')} ohne Breite.`,
  'surface-unknown': (n) =>
    `${places(n, 'Eine Piste', 'Pisten')} ohne Belag: Die Werte gelten für Asphalt und sagen es.`,
  'slope-unknown': () => 'Die Karte nennt keine Höhen der Pistenenden: Neigung zählt nicht.',
  'lights-unknown': () => 'Die Karte sagt nicht, ob die Pisten befeuert sind.',
  'number-doubtful': (n) =>
    `${places(n, 'Eine Piste', 'Pisten')} mit Nummern, die nicht zur Richtung passen.`,
  'hold-assumed': (n) =>
    `${places(n, 'Ein Rollhalt', 'Rollhalte')} im üblichen Abstand zur Piste gesetzt, wo die Karte keinen hat.`,
  'hold-apart': (n) => `${places(n, 'Ein Rollhalt', 'Rollhalte')} auf keinem Rollweg: weggelassen.`,
  'lead-in-long': (n, length) =>
    `${places(n, 'Ein Standplatz', 'Standplätze')} mit gerader Linie von mehr als ${length} angebunden.`,
  'stand-apart': (n) =>
    `${places(n, 'Ein Standplatz', 'Standplätze')} zu weit von jedem Rollweg: weggelassen.`,
};
