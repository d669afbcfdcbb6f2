/**
 * What a pilot reads about a radio call. What is said is English on every page, in radio/calls.ts.
 */

import type { CallKind, Compass, Readback } from '../core';
import { saidCompass } from './radio/calls';

/** Where a departure turns, as chosen on the screen. */
export const compass: Record<Compass, string> = saidCompass;

/** What is called at which moment. */
export const callTitles: Record<CallKind, string> = {
  taxi: 'Taxi',
  crossing: 'Crossing',
  'line-up': 'Line-up',
  departure: 'Departure',
  inbound: 'Inbound',
  vacated: 'Runway vacated',
};

/** What must be read back of an answer, around the words said, which are English on every page. */
export const readbackWords: Readonly<Record<Readback['code'], (said: string) => string>> = {
  runway: (said) => said,
  'holding-point': (said) => said,
  'hold-short': (said) => `${said}, if told to`,
  cross: (said) => `${said}, if told to`,
  backtrack: (said) => `${said}, if told to`,
  'line-up': (said) => said,
  qnh: (said) => said,
  via: (said) => said,
  'take-off': (said) => `what is said of take-off, word for word, ${said}`,
  land: (said) => `what is said of landing, word for word, ${said}`,
};
