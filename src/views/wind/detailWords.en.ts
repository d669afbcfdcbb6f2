/** The words of what comes after the first answer: the dial, every end, the winds entered, what is rare. */

import type { NoBest, RankedEnd, Shortfall } from '../../core';
import { againstLimit, whole } from '../../parts/format';

const noBest: Record<NoBest, string> = {
  'speed-not-known': 'No speed was reported: a direction alone does not choose a runway.',
  'speed-unbounded':
    'The speed is only known to be above a number: nothing can be called within limits.',
  'none-within-limits': 'No end is within the limits given.',
};

function shortfall(fall: Shortfall): string {
  const worst = (what: string, gust: boolean, worstKt: number, limitKt: number) =>
    `${gust ? `Gust ${what}` : what} ${againstLimit(worstKt, limitKt)}, limit ${whole(limitKt)}`;
  switch (fall.code) {
    case 'closed':
      return `Closed: ${fall.why}`;
    case 'not-for-purpose':
      return fall.purpose === 'take-off' ? 'Not for take-off' : 'Not for landing';
    case 'crosswind':
      return capital(worst('across', fall.gust, fall.worstKt, fall.limitKt));
    case 'tailwind':
      return capital(worst('tail', fall.gust, fall.worstKt, fall.limitKt));
    case 'length':
      return `Book run ${whole(fall.neededM)} m, has ${whole(fall.availableM)} m`;
    case 'closed-today':
      return 'Closed today';
    case 'gust-spread':
      return `Gust ${whole(fall.spreadKt)} kt above the wind, limit ${whole(fall.limitKt)}`;
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

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const words = {
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
    crosswind: 'Across, steady; from the right positive',
    crosswindWorst: 'Across at worst',
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
  holdShort: 'Hold short after, m',
  holdShortBad: 'A length from 1 to 9999 m.',
  holdShortNone: 'whole length',
  head: (value: string) => `head ${value}`,
  tail: (value: string) => `tail ${value}`,
  worstTail: (value: string) => `tail ${value} at worst`,
  acrossBar: (steady: string, worst: string, limit: string) =>
    `across ${steady}/${worst} of ${limit}`,
  acrossBarSpoken: (steady: string, worst: string, limit: string) =>
    `Crosswind ${steady} knots steady, ${worst} at worst, limit ${limit}`,
  endsTitle: 'Every end, best first',
  history: 'Winds entered',
  dial: {
    letters: { n: 'N', e: 'E', s: 'S', w: 'W' },
    noWind: 'Dial: the runways, no wind.',
    calm: 'Dial: calm.',
    wind: (text: string) => `Dial. ${text}.`,
    best: (arcs: string) => `Runway ring: ${arcs}.`,
    arc: (end: string, from: string, to: string) => `${end} best from ${from} to ${to} true`,
    arcNone: (from: string, to: string) => `no end within limits from ${from} to ${to} true`,
    always: (end: string) => `${end} best from every direction`,
    alwaysNone: 'no end within limits from any direction',
  },
} as const;
