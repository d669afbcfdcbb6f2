/** What is read aloud, in German. */

import type { ClimbRung, Moment, Rung } from '../../core';
import { saidDigits } from '../../parts/spoken.de';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

const moment: Record<Moment, string> = {
  'off chocks': 'Off-Block',
  'brakes released': 'Als Nächstes: Bremsen los',
  stopping: 'Abbruch',
  airborne: 'Als Nächstes: in der Luft',
  landed: 'Als Nächstes: gelandet, sobald die Piste verlassen ist',
  'on chocks': 'Das Ende des Flugs',
};

/** What counts comes first: within a second, the next gate may cut it short. */
const gate: Record<(Rung | ClimbRung)['what'], (kt: number) => string> = {
  mark: (kt) => `Marke, erwartet ${saidDigits(kt)}.`,
  'last-stop': (kt) => `Abbruchgrenze, erwartet ${saidDigits(kt)}.`,
  rotate: (kt) => `Rotieren, erwartet ${saidDigits(kt)}.`,
  'lift-off': (kt) => `Abheben, erwartet ${saidDigits(kt)}.`,
  'gear-up': (kt) => `Fahrwerk ein, erwartet ${saidDigits(kt)}.`,
  'flaps-up': (kt) => `Klappen ein, erwartet ${saidDigits(kt)}.`,
  'reheat-off': (kt) => `Nachbrenner aus, erwartet ${saidDigits(kt)}.`,
  climb: (kt) => `Steigflug, erwartet ${saidDigits(kt)}.`,
};

/** Signs in steps, as spoken. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/(\d)\u00a0(?=\d{3}\b)/g, '$1'],
  [/(\d) (?=\d{3}\b)/g, '$1'],
  [/°C\b/g, ' Grad'],
  [/°/g, ' Grad'],
  [/(\d)\s*%/g, '$1 Prozent'],
  [/(\d)\s*kt\b/g, '$1 Knoten'],
  [/(\d)\s*kg\b/g, '$1 Kilogramm'],
  [/(\d)\s*lb\b/g, '$1 Pfund'],
  [/(\d)\s*inHg\b/g, '$1 Zoll'],
  [/(\d)\s*hPa\b/g, '$1 Hektopascal'],
  [/(\d)\s*ft\b/g, '$1 Fuß'],
  [/(\d)\s*m\b/g, '$1 Meter'],
  [/(\d)\s*–\s*(?=\d)/g, '$1 bis '],
  [/\bQNH\b/g, 'Q N H'],
  [/\bRPM\b/gi, 'R P M'],
];

export const words: Translated<typeof english> = {
  moment,
  gate,
  warning:
    'Die Marken von Startlauf und Steigflug werden zu den Zeiten angesagt, zu denen sie erwartet werden. Das sind Zeiten, nicht die Fahrt.',
  signs: (text) => SIGNS.reduce((said, [sign, word]) => said.replace(sign, word), text),
  step: (item, response) => `${item}: ${response}.`,
  call: (item, call) => `${item}. Sagen: ${call}`,
  again: (step) => `Noch einmal. ${step}`,
  heldBefore: (step) => `Noch offen, bevor es weitergeht. ${step}`,
  barrier: (step) => `Aufrollprüfung. ${step}`,
  listEnd: 'Liste abgeschlossen.',
  end: 'Flug abgeschlossen.',
  unknown: 'nicht bekannt',
  yourCallsign: 'dein Rufzeichen',
  from: (deg) => `${deg} Grad`,
  variable: 'umlaufend',
  notReported: 'Richtung nicht gemeldet',
  wind: (from, speed, gust) =>
    [from, `${speed} Knoten`, ...(gust === null ? [] : [`in Böen ${gust}`])].join(' '),
  calm: 'windstill',
};
