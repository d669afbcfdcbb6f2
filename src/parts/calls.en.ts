/** What is read of a radio call, beside what is said: that is English on every page, in radio/calls.ts. */

import type { CallKind, Compass, Readback } from '../core';
import { saidPoint, saidRunway } from './radio/spelling';

/** Where a departure turns to, as it is chosen on the screen. */
export const compass: Record<Compass, string> = {
  n: 'north',
  ne: 'north-east',
  e: 'east',
  se: 'south-east',
  s: 'south',
  sw: 'south-west',
  w: 'west',
  nw: 'north-west',
};

/** What is called at which moment. */
export const callTitles: Record<CallKind, string> = {
  taxi: 'Taxi',
  crossing: 'Crossing',
  'line-up': 'Line-up',
  departure: 'Departure',
  inbound: 'Inbound',
  vacated: 'Runway vacated',
};

/** What of the answer has to be said back. */
export function sayReadback(back: Readback): string {
  switch (back.code) {
    case 'runway':
      return `runway ${saidRunway(back.end)}`;
    case 'holding-point':
      return `holding point ${saidPoint(back.hold)}`;
    case 'hold-short':
      return `hold short runway ${saidRunway(back.runway)}, if told to`;
    case 'cross':
      return `cross runway ${saidRunway(back.runway)}, if told to`;
    case 'backtrack':
      return `backtrack runway ${saidRunway(back.end)}, if told to`;
    case 'line-up':
      return `line up or hold, runway ${saidRunway(back.end)}`;
    case 'take-off':
      return `what is said of take-off, word for word, runway ${saidRunway(back.end)}`;
    case 'land':
      return `what is said of landing, word for word, runway ${saidRunway(back.end)}`;
  }
}
