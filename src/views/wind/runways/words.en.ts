/** The words of what comes after the first answer: the dial, every end, the winds entered, what is rare. */

import type { NoBest, Problem, RankedEnd, Shortfall } from '../../../core';
import { againstLimit, wholeNumber } from '../../../parts/format';
import { aboutLength, length } from '../../../parts/units';

const noBest: Record<NoBest, string> = {
  'speed-not-known': 'No speed was reported: a direction alone does not choose a runway.',
  'speed-unbounded':
    'The speed is only known to be above a number: nothing can be called within limits.',
  'none-within-limits': 'No runway is within the limits given.',
};

/** Why no length is enough. */
const noLength: Readonly<Record<(Shortfall & { code: 'no-length' })['because'], string>> = {
  'no-performance': 'No performance data',
  'not-a-number': 'Not worked out',
  'under-empty': 'Lighter than the empty aircraft',
  'over-mass': 'Over maximum mass',
  'no-fuel': 'No fuel on board',
  'slope-unreasonable': 'Steeper than 10 %',
  'wind-unreasonable': 'More than 80 kt along the runway',
  'air-unreasonable': 'No performance in this air',
  'never-lifts-off': 'Cannot lift off here today',
  'never-stops': 'Cannot stop here today',
  'cannot-climb': 'Cannot climb to 50 ft here today',
  'beyond-atmosphere': 'No performance in this air',
};

function shortfall(fall: Shortfall): string {
  const worst = (what: string, gust: boolean, worstKt: number, limitKt: number) =>
    `${what}${gust ? ' gust' : ''} ${againstLimit(worstKt, limitKt)}, limit ${wholeNumber(limitKt)}`;
  switch (fall.code) {
    case 'closed':
      return `Closed: ${fall.why}`;
    case 'not-for-purpose':
      return fall.purpose === 'take-off' ? 'Not for take-off' : 'Not for landing';
    case 'crosswind':
      return worst('Crosswind', fall.gust, fall.worstKt, fall.limitKt);
    case 'tailwind':
      return worst('Tailwind', fall.gust, fall.worstKt, fall.limitKt);
    case 'length':
      return `${fall.of.toUpperCase()}: needs ${aboutLength(fall.neededM, 'up')}, has ${length(fall.availableM, 'down')}`;
    case 'no-length':
      return noLength[fall.because];
    case 'tyres':
      return `Tyres: ${wholeNumber(fall.groundKt)} kt over ground, limit ${wholeNumber(fall.limitKt)}`;
    case 'brake-energy':
      return `Brakes: ${wholeNumber(fall.energyMJ)} MJ to take up, limit ${wholeNumber(fall.limitMJ)}`;
    case 'go-on':
      return fall.lowestKt === null
        ? 'Too short to continue on one engine'
        : `Engine out: min go speed ${wholeNumber(fall.lowestKt)} kt, max abort speed ${wholeNumber(fall.stopKt)}`;
    case 'closed-by-report':
      return 'Closed, by the report';
    case 'closed-today':
      return 'Closed today';
    case 'narrow':
      return `${length(fall.widthM)} wide, ${length(fall.limitM)} needed`;
    case 'no-lights':
      return 'Night, and no runway lights';
    case 'gust-spread':
      return `Gust ${wholeNumber(fall.spreadKt)} kt above the wind, limit ${wholeNumber(fall.limitKt)}`;
    case 'speed-unbounded':
      return 'Speed only known to be above a number';
    case 'speed-not-known':
      return 'Speed not reported';
  }
}

/** Which end fails by least, and how, for when none is within limits. */
function leastFailing([end]: readonly RankedEnd[]): string {
  return end === undefined
    ? ''
    : `Fails by least: ${end.designator}. ${end.shortfalls.map(shortfall).join('. ')}.`;
}

/** What cannot be used of a text, or was used in part; an entry that is not complete yet is none of it. */
function problem({ code, values = {} }: Problem): string | null {
  switch (code) {
    case 'no-wind':
      return 'No wind could be read in this. Type it as 24012, 24012G20 or 240/12.';
    case 'forecast':
      return 'This is a forecast, but no period can be read in it.';
    case 'wind-not-reported':
      return 'The station did not report the wind.';
    case 'direction-out-of-range':
      return `Direction ${values.deg ?? ''} does not exist: directions go from 010 to 360.`;
    case 'speed-out-of-range':
      return `A speed of ${values.speedKt ?? ''} kt is taken as a slip; below 250 kt it is used.`;
    case 'gust-below-mean':
      return 'The gust is below the steady wind, so it is left out.';
    case 'gust-in-calm':
      return 'A gust out of a calm: it counts from every direction.';
    case 'wind-unread':
      return 'Part of the wind may not have been read: nothing is called within limits.';
    case 'mean-outside-swing':
      return 'The mean direction lies outside the swing; both are used.';
    case 'too-long':
      return 'The text is very long; only its beginning was read.';
    case 'incomplete':
      return null;
  }
}

export const words = {
  selected: (end: string) => `Runway ${end}, selected:`,
  useShort: 'Use',
  usingShort: 'Selected',
  bigCard: 'Big card',
  problem,
  noBest,
  leastFailing,
  shortfall,
  lowSun: (side: string, time: string) => `Low sun ${side}, until ${time}`,
  lowSunLater: (side: string, time: string) => `Low sun ${side} from ${time}`,
  sunSide: (deg: number) =>
    Math.round(deg) === 0 ? 'ahead' : `${Math.abs(Math.round(deg))}° ${deg > 0 ? 'right' : 'left'}`,
  sunHigh: (deg: number) => `${Math.round(deg)}° high`,
  close: 'Close',
  again: 'takes this wind again',
  endTitle: (end: string) => `Runway ${end}`,
  ranked: (end: string, next: string | null, reason: string | null) =>
    next === null || reason === null ? `${end}.` : `${end} before ${next}: ${reason}.`,
  openEnd: (end: string) => `opens runway ${end}: its numbers, and the rule that sets it apart`,
  figures: {
    headwind: 'Headwind, steady',
    crosswind: 'Crosswind, steady; from right positive',
    crosswindWorst: 'Crosswind at worst',
    tailwindWorst: 'Tailwind at worst',
    headingMagnetic: 'Heading, magnetic',
    available: 'Available',
  },
  unknown: '—',
  yes: 'yes',
  no: 'no',
  compared: (first: string, second: string) => `Why ${first} before ${second}`,
  rule: 'Rule, in order',
  rules: {
    'within-limits': 'Within the limits given',
    alike: 'Order of the numbers',
  } as Partial<Record<string, string>>,
  decides: 'decides',
  alike: 'alike here',
  notApplied: 'not applied',
  closeToday: 'Close it for today',
  closedToday: 'Closed today; open it',
  holdShort: (unit: string) => `Hold short after, ${unit}`,
  holdShortBad: (least: string, most: string, unit: string) =>
    `A length from ${least} to ${most} ${unit}.`,
  holdShortNone: 'whole length',
  head: (value: string) => `headwind ${value}`,
  tail: (value: string) => `tailwind ${value}`,
  worstTail: (value: string) => `tailwind ${value} at worst`,
  acrossBar: (steady: string, worst: string, limit: string) =>
    `crosswind ${steady}/${worst} of ${limit}`,
  acrossBarSpoken: (steady: string, worst: string, limit: string) =>
    `Crosswind ${steady} knots steady, ${worst} at worst, limit ${limit}`,
  endsTitle: 'Every runway, best first',
  history: 'Winds entered',
  dial: {
    letters: { n: 'N', e: 'E', s: 'S', w: 'W' },
    noWind: 'Dial: the runways, no wind.',
    calm: 'Dial: calm.',
    wind: (text: string) => `Dial. ${text}.`,
    best: (arcs: string) => `Runway ring: ${arcs}.`,
    arc: (end: string, from: string, to: string) => `${end} best from ${from} to ${to} true`,
    arcNone: (from: string, to: string) => `no runway within limits from ${from} to ${to} true`,
    always: (end: string) => `${end} best from every direction`,
    alwaysNone: 'no runway within limits from any direction',
  },
} as const;
