/** How radio calls read on screen, in German; the calls themselves are English. */

import type * as english from './calls.en';

/** Where a departure turns, as chosen on screen; the call says it in English. */
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

export const callTitles: typeof english.callTitles = {
  taxi: 'Rollen',
  crossing: 'Kreuzen',
  'line-up': 'Aufrollen',
  departure: 'Abflug',
  inbound: 'Anflug',
  vacated: 'Piste verlassen',
};

/** What to read back of an answer, around its own words, which are English. */
export const readbackWords: typeof english.readbackWords = {
  runway: (said) => said,
  'holding-point': (said) => said,
  'hold-short': (said) => `${said}, falls angewiesen`,
  cross: (said) => `${said}, falls angewiesen`,
  backtrack: (said) => `${said}, falls angewiesen`,
  'line-up': (said) => said,
  qnh: (said) => said,
  via: (said) => said,
  'take-off': (said) => `was zum Start gesagt wird, Wort für Wort: ${said}`,
  land: (said) => `was zur Landung gesagt wird, Wort für Wort: ${said}`,
};
