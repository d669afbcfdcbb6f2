/** The words of Wind, in German, with soft hyphens where a narrow key or row may break a word. */

import type { Wind } from '../../core';
import { direction, wholeNumber } from '../../parts/format';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

const kt = (value: number) => `${wholeNumber(value)} kt`;

/** With its lead-in: ` mit 12 kt`, or after a comma that it was not reported. */
function speedWords(wind: Wind): string {
  if (wind.speedKt === null) return ', Geschwindigkeit nicht gemeldet';
  const steady = `${wind.speedIsMinimum ? 'über ' : ''}${wholeNumber(wind.speedKt)}`;
  if (wind.gustKt === null) return ` mit ${steady} kt`;
  return ` mit ${steady}, in Böen ${wind.gustIsMinimum ? 'über ' : ''}${kt(wind.gustKt)}`;
}

/** A wind in words, its direction to both norths. */
function windWords(wind: Wind, trueDeg: number | null, magneticDeg: number | null): string {
  if (wind.speedKt === 0 && wind.gustKt === null && !wind.speedIsMinimum) return 'Windstill';
  const swing =
    wind.sectorDeg === null
      ? ''
      : `, schwankt von ${direction(wind.sectorDeg[0])} bis ${direction(wind.sectorDeg[1])}`;
  if (wind.variable) return `Umlaufend${speedWords(wind)}${swing}`;
  if (wind.fromDeg === null) {
    return wind.speedKt === null
      ? `Richtung und Geschwindigkeit nicht gemeldet${swing}`
      : `Wind${speedWords(wind)}, Richtung nicht gemeldet${swing}`;
  }
  const both =
    trueDeg === null
      ? `${direction(wind.fromDeg)} missweisend`
      : magneticDeg === null
        ? `${direction(trueDeg)} rechtweisend`
        : `${direction(trueDeg)} rechtweisend (${direction(magneticDeg)} missweisend)`;
  return `Aus ${both}${speedWords(wind)}${swing}`;
}

export const words: Translated<typeof english> = {
  noRanking: {
    'no-field': 'Platz wählen.',
    'no-limits': 'Flugzeug wählen, wegen seiner Windgrenzen.',
    'no-wind': 'Wind eingeben oder Meldung einfügen.',
    'no-variation':
      'Kein Magnetfeldmodell gilt für das Datum des Flugs. Ortsmissweisung unter „Flug“ setzen oder den Wind rechtweisend angeben.',
  },
  windWords,
  forecastNow: (wind) => `Vorhersage, nicht beobachtet. ${wind}`,
  forecastWithout: 'Vorhersage: Für jetzt nennt sie keinen Wind.',
  forecastBeside: 'Vorhersage: für die nächste Stunde geprüft; der Wind bleibt, wie er ist.',
  incomplete: 'Weitertippen: Der Wind ist noch nicht vollständig.',
  forPurpose: (purpose) => (purpose === 'take-off' ? 'Beste Piste' : 'Beste zur Landung'),
  entry: 'Wind oder Meldung',
  entryHint: 'Wind oder Meldung',
  paste: 'Einfügen',
  pasteByHand: 'Lange auf das Feld oben drücken, dann „Einfügen“ wählen.',
  trueNorth: 'Recht\u00adweisend',
  magneticNorth: 'Miss\u00adweisend',
  northHint:
    'Bezug des eingegebenen Windes; schaltet auf den anderen um. Eine ganze Meldung ist immer rechtweisend.',
  letters: 'ABC',
  set: 'Wind setzen',
  setAndClose: 'Schließen',
  drop: 'Eingabe verwerfen',
  use: (end) => `${end} nehmen`,
  inUse: (end) => `Piste ${end}, gewählt`,
  usingOther: (using, best) => `Gewählt ${using}, beste ${best}`,
  none: 'Keine',
  old: 'Noch für den vorigen Wind',
  magnetic: (deg) => `${deg} mw.`,
  headwind: 'Gegenwind',
  knots: kt,
  ofLimit: (worst, limit) => `${worst} von ${limit} kt`,
  across: (side, gust) => {
    const from = { none: '', right: ' von rechts', left: ' von links' }[side];
    return `Seitenwind${from}${gust ? ', Bö' : ''}`;
  },
  acrossWorst: (gust) => (gust ? 'Größter Seitenwind, Bö' : 'Größter Seitenwind'),
  tailWorst: (gust) => (gust ? 'Größter Rückenwind, Bö' : 'Größter Rückenwind'),
  firm: (left, right) => `Beste Piste bei Wind aus ${left} bis ${right}`,
  firmLeft: (left) => `Beste Piste, links\u00addrehend bis ${left}`,
  firmRight: (right) => `Beste Piste, rechts\u00addrehend bis ${right}`,
  toSpare: (deg) => `noch ${deg}°`,
  close: (deg) => `knapp: ${deg}°`,
  firmAlways: 'Aus jeder Richtung, bei dieser Stärke',
  firmAlwaysValue: 'dieselbe Piste',
  lightWind: 'Wenig Wind: Grenzen gelten, er wählt nicht',
  anywhere: 'Keine Richtung: Die längste Strecke zählt',
  upTo: {
    crosswind: 'Seitenwind\u00adgrenze erreicht bei',
    tailwind: 'Rückenwind\u00adgrenze erreicht bei',
    'gust-spread': 'Böengrenze erreicht bei',
  },
  reachedAt: (speed, gust) => (gust === null ? `${speed} kt` : `${speed} Bö ${gust} kt`),
  decidedBy: 'Ausschlag gibt',
  reason: {
    'only-one-within-limits': 'Als einzige innerhalb der angegebenen Grenzen',
    'within-limits': 'Innerhalb der angegebenen Grenzen, die nächste nicht',
    preferred: 'Vom Platz bevorzugt',
    'calm-wind-end': 'Piste des Platzes für schwachen Wind',
    'most-headwind': 'Am meisten Gegenwind',
    'least-crosswind-share': 'Seitenwind\u00adgrenze am wenigsten ausgeschöpft',
    'most-runway-left': 'Größte Reserve',
    'shortest-taxi': 'Kürzester Rollweg',
    'fails-least': 'Am wenigsten außerhalb der Grenzen',
    'longest-runway': 'Längste Piste',
    'most-aligned': 'Zeigt am genauesten in den Wind',
    alike: 'Keine Regel trennt die ersten beiden',
  },
  ask: 'zeigt, woher dieser Wert kommt',
  purpose: {
    'take-off': 'Für den Start',
    landing: 'Für die Landung',
    change: (now) =>
      now === 'take-off'
        ? 'Für den Start beurteilt; auf Landung umschalten'
        : 'Für die Landung beurteilt; auf Start umschalten',
  },
  chooseField: 'Platz',
  chooseAircraft: 'Flugzeug',
  someUnread: 'Ein Teil war nicht lesbar; er ist markiert.',
  leftOver: (length, of) => `Reserve ${length}, ${of}`,
  pad: {
    erase: 'Rück',
    clear: 'Neu',
    calm: 'Stille',
    space: 'Lücke',
    unit: 'KT',
    spoken: {
      G: 'G, Bö',
      V: 'V, schwankt bis',
      VRB: 'VRB, umlaufend',
      P: 'P, über',
      '/': 'Schrägstrich',
      erase: 'das letzte Zeichen löschen',
      unit: 'Einheit: KT, noch einmal für MPS und KMH',
    },
  },
};
