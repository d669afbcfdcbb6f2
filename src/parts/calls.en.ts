/** What is read of a radio call, beside what is said: that is English on every page, in radio/calls.ts. */

import type { CallKind, Compass, Readback } from '../core';
import { COMPASS } from './radio/calls';

/** Where a departure turns to, as it is chosen on the screen. */
export const compass: Record<Compass, string> = COMPASS;

/** What is called at which moment. */
export const callTitles: Record<CallKind, string> = {
  taxi: 'Taxi',
  crossing: 'Crossing',
  'line-up': 'Line-up',
  departure: 'Departure',
  inbound: 'Inbound',
  vacated: 'Runway vacated',
};

/** What of an answer has to be read back, round what is said of it, which is English on every page. */
export const readbackWords: Readonly<Record<Readback['code'], (said: string) => string>> = {
  runway: (said) => said,
  'holding-point': (said) => said,
  'hold-short': (said) => `${said}, if told to`,
  cross: (said) => `${said}, if told to`,
  backtrack: (said) => `${said}, if told to`,
  'line-up': (said) => said,
  'take-off': (said) => `what is said of take-off, word for word, ${said}`,
  land: (said) => `what is said of landing, word for word, ${said}`,
};
