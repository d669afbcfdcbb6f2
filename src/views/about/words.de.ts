/** The words of About, in German: what Lapstrip is, and the cautions. */

import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

export const words: Translated<typeof english> = {
  what: 'Ein Kniebrett für alle, die im Simulator fliegen: Wind hinein, Piste heraus, Werte und Schritte zur Hand, auch ohne Netz.',
  cautionsTitle: 'Zur Vorsicht',
  dataTitle: 'Woher die Werte kommen',
  data: [
    'Ortsmissweisung: IGRF-12 bis 2015, danach die World Magnetic Models bis 2030, hier berechnet.',
    'Sonne: suncalc, nach Meeus, Astronomical Algorithms.',
    'Wahl der Piste: FAA JO 7110.65, 3-5-1; ICAO Doc 8168; Windkomponenten nach FAA-H-8083-25.',
    'Plätze der Welt, falls geladen: OurAirports (ourairports.com/data), Open Database License 1.0; was daraus entnommen ist, bleibt unter ihr. Stellenweise alt und fehlerhaft, nur für Simulatoren: nicht zur Navigation.',
    'Jeder gepunktet unterstrichene Wert zeigt auf Antippen seine Eingaben, seine Formel und seine Quelle.',
  ],
  keptTitle: 'Was gespeichert wird',
  kept: 'Alles bleibt auf diesem Gerät: kein Konto, kein Server, nichts wird gesendet.',
  version: (version) => `Version ${version}`,
  licence: 'MIT-Lizenz. Schriften: Atkinson Hyperlegible Next und Mono, SIL Open Font License 1.1.',
  licences: 'Alle Lizenzen',
};
