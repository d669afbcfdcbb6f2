/** The words of the load sheet, in German. */

import type { Exceeded } from '../../core';
import { NO_BREAK_SPACE } from '../../parts/format';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

type Outside = Extract<Exceeded, { code: 'outside-envelope' }>;

const when: Record<Outside['at'], string> = {
  'take-off': 'beim Start',
  landing: 'bei der Landung',
  between: 'unterwegs',
};

export const words: Translated<typeof english> = {
  title: (aircraft) => `Beladung, ${aircraft}`,
  close: 'Schließen',
  undo: 'Rückgängig',
  none: 'Unter „Flug“ ein Flugzeug wählen.',
  noLoading:
    'Das Dokument des Flugzeugs sagt nichts über die Beladung: Es gelten seine üblichen Massen.',
  ask: 'zeigt, woher dieser Wert kommt',

  takeoff: 'Start',
  landing: 'Landung',
  zeroFuel: 'Ohne Kraftstoff',
  of: (limit) => `von ${limit}`,
  bar: (name, mass, limit) => `${name}: ${mass}, Grenze ${limit}`,
  because: {
    'no-fuel': 'kein Kraftstoff',
    'not-in-aircraft': 'nicht angegeben',
  },

  within: 'Innerhalb der angegebenen Grenzen: Massen, Tanks, Stationen.',
  withinEnvelope:
    'Innerhalb der angegebenen Grenzen: Massen, Tanks, Stationen, Schwerpunktbereich.',
  takeoffOver: (mass) => `Die Startmasse liegt ${mass} über ihrer Grenze.`,
  landingOver: (mass) => `Die Landemasse liegt ${mass} über ihrer Grenze.`,
  fuelOver: (mass) => `Es sind ${mass} Kraftstoff mehr, als die Tanks fassen.`,
  fuelShort: (mass) => `Es sind ${mass} Kraftstoff weniger, als bei der Landung übrig sein sollen.`,
  noFuel: 'Es ist kein Kraftstoff an Bord, also gibt es keine Masse zum Starten.',
  stationOver: (station, mass) => `${station}: ${mass} mehr, als dort sein dürfen.`,
  outside: ({ at, side }) => {
    switch (side) {
      case 'aft':
        return `Der Schwerpunkt liegt ${when[at]} zu weit hinten.`;
      case 'forward':
        return `Der Schwerpunkt liegt ${when[at]} zu weit vorn.`;
      case 'heavy':
        return `Die Masse liegt ${when[at]} über dem Schwerpunktbereich.`;
      case 'light':
        return `Die Masse liegt ${when[at]} unter dem Schwerpunktbereich.`;
      case null:
        return `Der Schwerpunkt liegt ${when[at]} außerhalb seines Bereichs.`;
    }
  },

  presets: 'Vorlagen',
  fuel: 'Kraftstoff',
  fuelIn: (unit) => `Kraftstoff, ${unit}`,
  bingo: 'Bingo',
  bingoIn: (unit) => `Bingo, ${unit}`,
  notSettled: 'nicht festgelegt',
  bingoHint: 'Bei diesem Kraftstoff wird umgekehrt.',
  tanks: (max, landing) => `Die Tanks fassen ${max}; ${landing} sollen bei der Landung übrig sein.`,
  litres: (litres) => `${litres}${NO_BREAK_SPACE}L`,
  massBad: (least, most, unit) => `Eine Masse ist eine Zahl von ${least} bis ${most} ${unit}.`,
  empty: 'nichts',
  nothing: 'Nichts',
  nobody: 'Niemand',
  each: (mass) => `je ${mass}`,
  upTo: (mass) => `bis ${mass}`,
  choice: (name, mass) => `${name}, ${mass}`,
  people: 'Personen',
  peopleBad: 'Die Zahl der Personen ist eine ganze Zahl.',
  stationIn: (name, unit) => `${name}, ${unit}`,

  envelope: 'Schwerpunkt',
  noArms:
    'Das Dokument des Flugzeugs gibt keine Hebelarme an: Der Schwerpunkt wird nicht berechnet.',
  noEnvelope:
    'Das Dokument des Flugzeugs gibt keinen Schwerpunktbereich an, an dem er zu messen wäre.',
  aftOfDatum: (unit) =>
    `Meter hinter der Bezugsebene und ${unit}. Die Linie ist der Kraftstoffverbrauch.`,
  stays: 'Vom Start bis zur Landung im Schwerpunktbereich.',
  envelopeLabel: (told, takeoff, landing) =>
    `Schwerpunktbereich. ${told} Start: ${takeoff}. Landung: ${landing}.`,
  point: (arm, mass) => `${arm} bei ${mass}`,

  sheet: 'Rechnung',
  emptyAircraft: 'Leeres Flugzeug',
  item: 'Posten',
  arm: 'Hebelarm, m',
};
