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
  kg: (kg) => `${kg}${NO_BREAK_SPACE}kg`,
  metres: (m) => `${m}${NO_BREAK_SPACE}m`,

  takeoff: 'Start',
  landing: 'Landung',
  zeroFuel: 'Ohne Kraftstoff',
  of: (limit) => `von ${limit}${NO_BREAK_SPACE}kg`,
  bar: (name, kg, limit) => `${name}: ${kg} kg, Grenze ${limit} kg`,
  because: {
    'no-fuel': 'kein Kraftstoff',
    'not-in-aircraft': 'nicht angegeben',
  },

  within: 'Innerhalb der angegebenen Grenzen: Massen, Tanks, Stationen.',
  withinEnvelope:
    'Innerhalb der angegebenen Grenzen: Massen, Tanks, Stationen, Schwerpunktbereich.',
  takeoffOver: (kg) => `Die Startmasse liegt ${kg}${NO_BREAK_SPACE}kg über ihrer Grenze.`,
  landingOver: (kg) => `Die Landemasse liegt ${kg}${NO_BREAK_SPACE}kg über ihrer Grenze.`,
  fuelOver: (kg) => `Es sind ${kg}${NO_BREAK_SPACE}kg Kraftstoff mehr, als die Tanks fassen.`,
  fuelShort: (kg) =>
    `Es sind ${kg}${NO_BREAK_SPACE}kg Kraftstoff weniger, als bei der Landung übrig sein sollen.`,
  noFuel: 'Es ist kein Kraftstoff an Bord, also gibt es keine Masse zum Starten.',
  stationOver: (station, kg) => `${station}: ${kg}${NO_BREAK_SPACE}kg mehr, als dort sein dürfen.`,
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
  fuelKg: 'Kraftstoff, kg',
  tanks: (max, landing) =>
    `Die Tanks fassen ${max}${NO_BREAK_SPACE}kg; ${landing}${NO_BREAK_SPACE}kg sollen bei der Landung übrig sein.`,
  litres: (litres) => `${litres}${NO_BREAK_SPACE}L`,
  numberBad: 'Eine Masse ist eine Zahl in Kilogramm von 0 bis 99 999.',
  empty: 'nichts',
  nothing: 'Nichts',
  nobody: 'Niemand',
  each: (kg) => `je ${kg}${NO_BREAK_SPACE}kg`,
  upTo: (kg) => `bis ${kg}${NO_BREAK_SPACE}kg`,
  choice: (name, kg) => `${name}, ${kg}`,
  people: 'Personen',
  peopleBad: 'Die Zahl der Personen ist eine ganze Zahl.',
  stationKg: (name) => `${name}, kg`,

  envelope: 'Schwerpunkt',
  noArms:
    'Das Dokument des Flugzeugs gibt keine Hebelarme an: Der Schwerpunkt wird nicht berechnet.',
  noEnvelope:
    'Das Dokument des Flugzeugs gibt keinen Schwerpunktbereich an, an dem er zu messen wäre.',
  aftOfDatum: 'Meter hinter der Bezugsebene und Kilogramm. Die Linie ist der Kraftstoffverbrauch.',
  stays: 'Vom Start bis zur Landung im Schwerpunktbereich.',
  envelopeLabel: (told, takeoff, landing) =>
    `Schwerpunktbereich. ${told} Start: ${takeoff}. Landung: ${landing}.`,
  point: (m, kg) => `${m} m bei ${kg} kg`,

  sheet: 'Rechnung',
  emptyAircraft: 'Leeres Flugzeug',
  item: 'Posten',
  mass: 'kg',
  arm: 'Hebelarm, m',
};
