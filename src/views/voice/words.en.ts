/** What is read aloud. */

import type { ClimbRung, Moment, Rung } from '../../core';
import { saidDigits } from '../../parts/spoken.en';

const moment: Record<Moment, string> = {
  'off chocks': 'Off chocks',
  'brakes released': 'Brakes released is next',
  stopping: 'Stopping',
  airborne: 'Airborne is next',
  landed: 'Landed is next, once clear of the runway',
  'on chocks': 'the end of the sortie',
};

/** What counts comes first: gates may follow each other within a second, and each cuts the one before short. */
const gate: Record<(Rung | ClimbRung)['what'], (kt: number) => string> = {
  mark: (kt) => `Mark, expect ${saidDigits(kt)}.`,
  'last-stop': (kt) => `Max abort, expect ${saidDigits(kt)}.`,
  rotate: (kt) => `Rotate, expect ${saidDigits(kt)}.`,
  'lift-off': (kt) => `Lift-off, expect ${saidDigits(kt)}.`,
  'gear-up': (kt) => `Gear up, expect ${saidDigits(kt)}.`,
  'flaps-up': (kt) => `Flaps up, expect ${saidDigits(kt)}.`,
  'reheat-off': (kt) => `Reheat off, expect ${saidDigits(kt)}.`,
  climb: (kt) => `Climb, expect ${saidDigits(kt)}.`,
};

/** Signs that stand in steps, as they are said. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/(\d)\u00a0(?=\d{3}\b)/g, '$1'],
  [/(\d) (?=\d{3}\b)/g, '$1'],
  [/°C\b/g, ' degrees'],
  [/°/g, ' degrees'],
  [/(\d)\s*%/g, '$1 percent'],
  [/(\d)\s*kt\b/g, '$1 knots'],
  [/(\d)\s*kg\b/g, '$1 kilograms'],
  [/(\d)\s*lb\b/g, '$1 pounds'],
  [/(\d)\s*inHg\b/g, '$1 inches'],
  [/(\d)\s*hPa\b/g, '$1 hectopascals'],
  [/(\d)\s*ft\b/g, '$1 feet'],
  [/(\d)\s*m\b/g, '$1 metres'],
  [/(\d)\s*–\s*(?=\d)/g, '$1 to '],
  [/\bQNH\b/g, 'Q N H'],
  [/\bRPM\b/gi, 'R P M'],
];

export const words = {
  moment,
  gate,
  warning:
    'The gates of the roll and the climb will be spoken at expected times. They are times, not airspeed.',
  signs: (text: string) => SIGNS.reduce((said, [sign, word]) => said.replace(sign, word), text),
  step: (item: string, response: string) => `${item}: ${response}.`,
  call: (item: string, call: string) => `${item}. Say: ${call}`,
  again: (step: string) => `Again. ${step}`,
  heldBefore: (step: string) => `Outstanding, before you go on. ${step}`,
  barrier: (step: string) => `Runway check. ${step}`,
  listEnd: 'List complete.',
  end: 'Sortie complete.',
  unknown: 'not known',
  yourCallsign: 'your callsign',
  from: (deg: string) => `${deg} degrees`,
  variable: 'variable',
  notReported: 'direction not reported',
  wind: (from: string, speed: string, gust: string | null) =>
    [from, `${speed} knots`, ...(gust === null ? [] : [`gusting ${gust}`])].join(' '),
  calm: 'calm',
} as const;
