/** Words needed after the first answer, in German: dial, ends, entered winds, rarities. */

import type { Problem, RankedEnd, Shortfall } from '../../../core';
import { againstLimit, wholeNumber } from '../../../parts/format';
import type { Translated } from '../../../parts/translated';
import { aboutLength, length } from '../../../parts/units';
import type { words as english } from './words.en';

const noLength: Readonly<Record<(Shortfall & { code: 'no-length' })['because'], string>> = {
  'no-performance': 'Keine Leistungsdaten',
  'not-a-number': 'Nicht berechnet',
  'under-empty': 'Leichter als das leere Flugzeug',
  'over-mass': 'Über der Höchstmasse',
  'no-fuel': 'Kein Kraftstoff an Bord',
  'slope-unreasonable': 'Steiler als 10 %',
  'wind-unreasonable': 'Mehr als 80 kt längs der Piste',
  'air-unreasonable': 'Keine Leistungsdaten für diese Luft',
  'never-lifts-off': 'Hebt hier heute nicht ab',
  'never-stops': 'Kommt hier heute nicht zum Stehen',
  'cannot-climb': 'Steigt hier heute nicht auf 50 ft',
  'beyond-atmosphere': 'Keine Leistungsdaten für diese Luft',
};

function shortfall(fall: Shortfall): string {
  const worst = (what: string, gust: boolean, worstKt: number, limitKt: number) =>
    `${what}${gust ? 'bö' : ''} ${againstLimit(worstKt, limitKt)}, Grenze ${wholeNumber(limitKt)}`;
  switch (fall.code) {
    case 'closed':
      return `Gesperrt: ${fall.why}`;
    case 'not-for-purpose':
      return fall.purpose === 'take-off' ? 'Nicht für den Start' : 'Nicht für die Landung';
    case 'crosswind':
      return worst('Seitenwind', fall.gust, fall.worstKt, fall.limitKt);
    case 'tailwind':
      return worst('Rückenwind', fall.gust, fall.worstKt, fall.limitKt);
    case 'length':
      return `${fall.of.toUpperCase()}: braucht ${aboutLength(fall.neededM, 'up')}, hat ${length(fall.availableM, 'down')}`;
    case 'no-length':
      return noLength[fall.because];
    case 'tyres':
      return `Reifen: ${wholeNumber(fall.groundKt)} kt über Grund, Grenze ${wholeNumber(fall.limitKt)}`;
    case 'brake-energy':
      return `Bremsen: ${wholeNumber(fall.energyMJ)} MJ aufzunehmen, Grenze ${wholeNumber(fall.limitMJ)}`;
    case 'go-on':
      return fall.lowestKt === null
        ? 'Zu kurz für den Weiterstart mit einem Triebwerk'
        : `Triebwerksausfall: Weiterstart ab ${wholeNumber(fall.lowestKt)} kt, Abbruch bis ${wholeNumber(fall.stopKt)}`;
    case 'closed-by-report':
      return 'Gesperrt laut Meldung';
    case 'closed-today':
      return 'Heute gesperrt';
    case 'narrow':
      return `${length(fall.widthM)} breit, nötig ${length(fall.limitM)}`;
    case 'no-lights':
      return 'Nacht, und keine Pistenlichter';
    case 'gust-spread':
      return `Bö ${wholeNumber(fall.spreadKt)} kt über dem Wind, Grenze ${wholeNumber(fall.limitKt)}`;
    case 'speed-unbounded':
      return 'Geschwindigkeit nur als Mindestwert bekannt';
    case 'speed-not-known':
      return 'Geschwindigkeit nicht gemeldet';
  }
}

/** Which end fails least, and how, when none is within limits. */
function leastFailing([end]: readonly RankedEnd[]): string {
  return end === undefined
    ? ''
    : `Am wenigsten außerhalb: ${end.designator}. ${end.shortfalls.map(shortfall).join('. ')}.`;
}

/** What of a text can't be used, or only in part; an incomplete entry is no problem. */
function problem({ code, values = {} }: Problem): string | null {
  switch (code) {
    case 'no-wind':
      return 'Darin ist kein Wind zu erkennen. Eingeben als 24012, 24012G20 oder 240/12.';
    case 'forecast':
      return 'Das ist eine Vorhersage, aber kein Zeitraum ist darin zu erkennen.';
    case 'wind-not-reported':
      return 'Die Station hat den Wind nicht gemeldet.';
    case 'direction-out-of-range':
      return `Die Richtung ${values.deg ?? ''} gibt es nicht: Richtungen gehen von 010 bis 360.`;
    case 'speed-out-of-range':
      return `Eine Geschwindigkeit von ${values.speedKt ?? ''} kt gilt als Tippfehler; unter 250 kt wird sie verwendet.`;
    case 'gust-below-mean':
      return 'Die Bö liegt unter dem mittleren Wind, deshalb bleibt sie weg.';
    case 'gust-in-calm':
      return 'Eine Bö bei Windstille: Sie zählt aus jeder Richtung.';
    case 'wind-unread':
      return 'Vielleicht ist nicht der ganze Wind gelesen: Nichts gilt als innerhalb der Grenzen.';
    case 'mean-outside-swing':
      return 'Die mittlere Richtung liegt außerhalb der Schwankung; beide werden verwendet.';
    case 'too-long':
      return 'Der Text ist sehr lang; nur sein Anfang wurde gelesen.';
    case 'incomplete':
      return null;
  }
}

export const words: Translated<typeof english> = {
  selected: (end: string) => `Piste ${end}, gewählt:`,
  useShort: 'Nehmen',
  usingShort: 'Gewählt',
  bigCard: 'Großbild',
  problem,
  noBest: {
    'speed-not-known': 'Keine Geschwindigkeit gemeldet: Die Richtung allein wählt keine Piste.',
    'speed-unbounded':
      'Die Geschwindigkeit ist nur als Mindestwert bekannt: Nichts gilt als innerhalb der Grenzen.',
    'none-within-limits': 'Keine Piste liegt innerhalb der angegebenen Grenzen.',
  },
  leastFailing,
  shortfall,
  lowSun: (side, time) => `Tiefe Sonne ${side}, bis ${time}`,
  lowSunLater: (side, time) => `Tiefe Sonne ${side} ab ${time}`,
  sunSide: (deg) =>
    Math.round(deg) === 0
      ? 'voraus'
      : `${Math.abs(Math.round(deg))}° ${deg > 0 ? 'rechts' : 'links'}`,
  sunHigh: (deg) => `${Math.round(deg)}° hoch`,
  close: 'Schließen',
  again: 'nimmt diesen Wind noch einmal',
  endTitle: (end) => `Piste ${end}`,
  ranked: (end, next, reason) =>
    next === null || reason === null ? `${end}.` : `${end} vor ${next}: ${reason}.`,
  openEnd: (end) => `öffnet Piste ${end}: ihre Werte und die Regel, die den Unterschied macht`,
  figures: {
    headwind: 'Gegenwind im Mittel',
    crosswind: 'Seitenwind im Mittel; von rechts positiv',
    crosswindWorst: 'Größter Seitenwind',
    tailwindWorst: 'Größter Rückenwind',
    headingMagnetic: 'Richtung, missweisend',
    available: 'Verfügbar',
  },
  unknown: '—',
  yes: 'ja',
  no: 'nein',
  compared: (first, second) => `Warum ${first} vor ${second}`,
  rule: 'Regel, der Reihe nach',
  rules: {
    'within-limits': 'Innerhalb der angegebenen Grenzen',
    alike: 'Reihenfolge der Nummern',
  },
  decides: 'entscheidet',
  alike: 'hier gleich',
  notApplied: 'nicht angewandt',
  closeToday: 'Für heute sperren',
  closedToday: 'Heute gesperrt; öffnen',
  holdShort: (unit) => `Halten nach, ${unit}`,
  holdShortBad: (least, most, unit) => `Eine Länge von ${least} bis ${most} ${unit}.`,
  holdShortNone: 'ganze Länge',
  head: (value) => `Gegenwind ${value}`,
  tail: (value) => `Rückenwind ${value}`,
  worstTail: (value) => `Rückenwind bis ${value}`,
  acrossBar: (steady, worst, limit) => `Seitenwind ${steady}/${worst} von ${limit}`,
  acrossBarSpoken: (steady, worst, limit) =>
    `Seitenwind im Mittel ${steady} Knoten, höchstens ${worst}, Grenze ${limit}`,
  endsTitle: 'Alle Pisten, die beste zuerst',
  history: 'Eingegebene Winde',
  dial: {
    // E as on compasses and in reports: an O would look like one of the dial's zeros.
    letters: { n: 'N', e: 'E', s: 'S', w: 'W' },
    noWind: 'Windrose: die Pisten, kein Wind.',
    calm: 'Windrose: windstill.',
    wind: (text) => `Windrose. ${text}.`,
    best: (arcs) => `Pistenring: ${arcs}.`,
    arc: (end, from, to) => `${end} am besten von ${from} bis ${to} rechtweisend`,
    arcNone: (from, to) => `von ${from} bis ${to} rechtweisend keine Piste innerhalb der Grenzen`,
    always: (end) => `${end} aus jeder Richtung am besten`,
    alwaysNone: 'aus keiner Richtung eine Piste innerhalb der Grenzen',
  },
};
