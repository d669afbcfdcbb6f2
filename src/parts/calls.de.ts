/** What is read of a radio call, in German; what is said is English. */

import type * as english from './calls.en';
import { saidPoint, saidRunway } from './radio/spelling';

/** Where a departure turns to, as it is chosen on the screen; the call says it in English. */
export const compass: typeof english.compass = {
  n: 'Nord',
  ne: 'Nordost',
  e: 'Ost',
  se: 'Südost',
  s: 'Süd',
  sw: 'Südwest',
  w: 'West',
  nw: 'Nordwest',
};

/** What is called at which moment. */
export const callTitles: typeof english.callTitles = {
  taxi: 'Rollen',
  crossing: 'Kreuzen',
  'line-up': 'Aufrollen',
  departure: 'Abflug',
  inbound: 'Anflug',
  vacated: 'Piste verlassen',
};

/** What of the answer has to be said back: what is said in English, what is to be known of it in German. */
export const sayReadback: typeof english.sayReadback = (back) => {
  switch (back.code) {
    case 'runway':
      return `runway ${saidRunway(back.end)}`;
    case 'holding-point':
      return `holding point ${saidPoint(back.hold)}`;
    case 'hold-short':
      return `hold short runway ${saidRunway(back.runway)}, falls angewiesen`;
    case 'cross':
      return `cross runway ${saidRunway(back.runway)}, falls angewiesen`;
    case 'backtrack':
      return `backtrack runway ${saidRunway(back.end)}, falls angewiesen`;
    case 'line-up':
      return `line up oder hold, runway ${saidRunway(back.end)}`;
    case 'take-off':
      return `was zum Start gesagt wird, Wort für Wort, runway ${saidRunway(back.end)}`;
    case 'land':
      return `was zur Landung gesagt wird, Wort für Wort, runway ${saidRunway(back.end)}`;
  }
};
