/** What is read of a radio call, in German; what is said is English. */

import type * as english from './calls.en';

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

/** What of an answer has to be read back, round what is said of it, which is English. */
export const readbackWords: typeof english.readbackWords = {
  runway: (said) => said,
  'holding-point': (said) => said,
  'hold-short': (said) => `${said}, falls angewiesen`,
  cross: (said) => `${said}, falls angewiesen`,
  backtrack: (said) => `${said}, falls angewiesen`,
  'line-up': (said) => said,
  'take-off': (said) => `was zum Start gesagt wird, Wort für Wort: ${said}`,
  land: (said) => `was zur Landung gesagt wird, Wort für Wort: ${said}`,
};
