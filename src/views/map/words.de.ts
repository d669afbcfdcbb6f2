/** Die Wörter für das, was ein Kartenausschnitt hergibt. */

import type { Translated } from '../../parts/translated';
import type * as english from './words.en';

const HOW =
  'Den Flugplatz aus OpenStreetMap speichern: Die Exportseite gibt OSM XML (.osm), eine Abfrage Overpass-JSON, viele Programme GeoJSON.';

export const refusals: Translated<typeof english.refusals> = {
  text: `Die Datei enthält keine Karte. ${HOW}`,
  empty: `Die Datei ist leer. ${HOW}`,
  picture: `Die Datei ist ein Bild, keine Kartendaten. ${HOW} Ein Bild lässt sich beim Zeichnen eines Platzes nachfahren.`,
  pdf: `Die Datei ist ein PDF, keine Kartendaten. ${HOW}`,
  packed:
    'Die Datei ist gepackt. Erst entpacken, oder als OSM XML, Overpass-JSON oder GeoJSON speichern.',
  'web-page': `Die Datei ist eine Webseite, keine Kartendaten. ${HOW}`,
  'not-text': `Die Datei ist kein Text, also keine lesbaren Kartendaten. ${HOW}`,
  'too-large':
    'Die Datei ist größer als 50 MB. Einen kleineren Ausschnitt speichern: Der Flugplatz allein genügt.',
  'too-slow':
    'Das Lesen dauerte länger als 30 Sekunden und wurde abgebrochen. Einen kleineren Ausschnitt speichern: Der Flugplatz allein genügt.',
  'not-read':
    'Die Datei war nicht lesbar. Noch einmal versuchen; beim ersten Mal wird das Netz gebraucht, um den Leser zu laden.',
  stopped: 'Das Lesen wurde abgebrochen.',
};

export const words: Translated<typeof english.words> = {
  title: 'Platz aus einer Karte',
  close: 'Schließen',
  reading: 'Karte wird gelesen',
  stop: 'Abbrechen',
  nothingKept: 'Nichts wurde übernommen.',
  which: 'Die Karte enthält mehrere Flugplätze. Welcher ist es?',
  aerodrome: (code, name) => (code === name ? code : `${code} ${name}`),
  found: 'Gefunden',
  counts: {
    runways: (n) => (n === 1 ? '1 Piste' : `${n} Pisten`),
    taxiways: (n) => (n === 1 ? '1 Rollweg-Linie' : `${n} Rollweg-Linien`),
    holds: (n) => (n === 1 ? '1 Rollhalt' : `${n} Rollhalte`),
    stands: (n) => (n === 1 ? '1 Standplatz' : `${n} Standplätze`),
  },
  plan: (field) => `Plan von ${field} aus der Karte`,
  planWords: {
    north: 'N',
    ahead: (runway) => `Piste ${runway}`,
    hold: (name) => name,
    whole: 'Ganz',
  },
  notForReal:
    'Nicht zur Navigation. Vor Gebrauch im Simulator mit einer Karte des Platzes vergleichen.',
  keep: 'Als Platz übernehmen',
  add: (code, name) => `Plan zu ${code} ${name} hinzufügen`,
  addHint: (code) => `${code} behält seine Pisten, Längen und Frequenzen.`,
  missingRunway: (code, runway) =>
    `Der Plan passt nicht zu ${code}: Dort gibt es keine Piste ${runway}.`,
  besideRunway: (code, runway, off) =>
    `Der Plan passt nicht zu ${code}: Die Piste ${runway} liegt dort ${off} neben der auf der Karte.`,
  kept: (code) => `${code} steht als eigener Platz in der Bibliothek.`,
  notKept: 'Nicht übernommen:',
  use: (code) => `${code} nehmen`,
  assumed: 'Angenommen',
  assumedHint: 'Davon sagt die Karte nichts. Antippen zeigt die Stelle.',
  missing: 'Fehlt',
  missingHint: 'Antippen zeigt die Stelle.',
  nothing: 'Nichts.',
  all: (n) => `Alle ${n} zeigen`,
  source: (name, licence) => `Kartendaten: ${name}, ${licence}.`,
};
