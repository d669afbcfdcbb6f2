/** German sentences for what keeps an aircraft from being saved. */

import type { Translated } from '../../parts/translated';
import type * as english from './faultWords.en';

export const faults: Translated<typeof english>['faults'] = {
  'name-missing': () => 'Es hat keinen Namen.',
  'text-missing': ({ place }) => `${place}: leer.`,
  'text-too-long': ({ place }) => `${place}: Der Text ist zu lang.`,
  'text-not-of-kind': ({ place }) => `${place}: nicht so geschrieben, wie es sein muss.`,
  'text-control': ({ place }) => `${place}: enthält ein Steuerzeichen.`,
  'text-direction': ({ place }) =>
    `${place}: enthält ein Zeichen, das die Schreibrichtung anderer umkehrt.`,
  'text-invisible': ({ place }) => `${place}: enthält nichts Sichtbares.`,
  'text-marks': ({ place }) => `${place}: enthält gehäufte Zeichen über einem Buchstaben.`,
  'number-out-of-range': ({ place }) => `${place}: Die Zahl liegt außerhalb der Grenzen.`,
  'too-few': ({ place }) => `${place}: Es fehlt etwas.`,
  'too-many': ({ place }) => `${place}: Es sind zu viele.`,
  'out-of-order': ({ place, one, other }) =>
    `${place}: ${one} ist weniger als ${other}, und mindestens so viel muss es sein.`,
  'limit-grows': ({ place, one, other }) =>
    `${place}: ${one} ist mehr als die ${other} auf besserem Belag.`,
  'gate-above-limit': ({ place, one, other }) =>
    `${place}: ${one} liegt über der Grenze von ${other}.`,
  'gate-without-limit': ({ place }) =>
    `${place}: Entweder dies und die Fahrwerksgrenze angeben oder keines von beiden.`,
  'reheat-without-engine': ({ place }) =>
    `${place}: Nur ein Nachbrenner braucht das, und er braucht es.`,
  'arm-missing': ({ place }) => `${place}: Der Hebelarm fehlt.`,
  'envelope-without-arms': () => 'Schwerpunktbereich: Er braucht die Hebelarme aller Massen.',
  'envelope-not-simple': () =>
    'Schwerpunktbereich: Seine Kanten kreuzen sich. Die Ecken der Reihe nach angeben, einmal herum.',
  'beyond-station': ({ place, one, other }) =>
    `${place}: ${one} ist mehr als die ${other}, die sie trägt.`,
  'choice-twice': ({ place }) => `${place}: Zwei Lasten wiegen gleich viel.`,
  'not-a-choice': ({ place }) => `${place}: Genau so viel kann üblich beladen nicht an Bord sein.`,
  'preset-not-within': () =>
    'Übliche Beladung: Sie liegt über einer Grenze oder außerhalb des Schwerpunktbereichs. Mehr auf die Stationen laden oder die übliche Startmasse ändern.',
  'not-usual': ({ one, other }) =>
    `Übliche Beladung: Sie ergibt ${one}, und die übliche Masse ist ${other}.`,
  'landing-fuel-over': ({ one, other }) =>
    `Kraftstoff bei der Landung: ${one}, und die Tanks fassen ${other}.`,
  'no-usual-fuel': () =>
    'Übliche Beladung: Besatzung und Stationen lassen keine Masse für Kraftstoff. Übliche Startmasse oder Leermasse ändern.',
  'no-landing-fuel': () =>
    'Übliche Beladung: Besatzung und Stationen lassen bei der Landung keine Masse für Kraftstoff. Übliche Landemasse ändern.',
  'run-not-of-book': ({ one, other }) =>
    `Startrollstrecke: Die Tabelle ergibt ${one}, angegeben sind ${other}. Sie müssen auf 5 % übereinstimmen: eines ändern oder die Strecke leer lassen.`,
  'landing-run-not-of-book': ({ one, other }) =>
    `Landerollstrecke: Die Tabelle ergibt ${one}, angegeben sind ${other}. Sie müssen auf 5 % übereinstimmen: eines ändern oder die Strecke leer lassen.`,
  'rotates-below-control': ({ one, other }) =>
    `Rotieren: ${one} liegt unter ${other}, dem 1,05-Fachen der Mindestgeschwindigkeit für Steuerbarkeit.`,
  'rotates-below-stall': ({ one, other }) =>
    `Rotieren: ${one} liegt unter ${other}, dem 1,05-Fachen des Überziehens mit Startklappen.`,
  'stall-above-lift-off': ({ one, other }) =>
    `Abheben: Es würde bei ${one} überziehen und hebt bei ${other} ab.`,
  'approach-not-of-wing': ({ one, other }) =>
    `Anfluggeschwindigkeit: Der Flügel ergibt ${one}, angegeben sind ${other}. Flügelfläche und Massen prüfen.`,
};

export const otherFault: Translated<typeof english>['otherFault'] = (place) =>
  `${place}: mit dem Handbuch vergleichen.`;

export const places: Translated<typeof english>['places'] = {
  whole: 'Das Flugzeug',
  physics: 'Die aus der Tabelle gefundene Rechnung',
  crew: 'Besatzung',
  fuel: 'Kraftstoff',
  emptyArm: 'Flugzeug leer',
  envelope: 'Schwerpunktbereich',
  usual: 'Übliche Beladung',
  table: 'Die Tabelle',
};
