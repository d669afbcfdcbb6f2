/** The words for phases, moments and the speeds of the roll and the climb, in German. */

import type * as english from './procedure.en';
import { lengthDigits, unitFor } from './units';

export const phaseWords: typeof english.phaseWords = {
  ramp: 'Vorfeld',
  taxi: 'Rollen',
  'line-up': 'Aufrollen',
  roll: 'Start',
  climb: 'Steigflug',
  recovery: 'Anflug',
  after: 'Danach',
};

export const momentWords: typeof english.momentWords = {
  'off chocks': 'Off-Block',
  'brakes released': 'Bremsen los',
  stopping: 'Abbruch',
  airborne: 'In der Luft',
  landed: 'Gelandet',
  'on chocks': 'On-Block',
};

export const listGroupWords: typeof english.listGroupWords = {
  emergency: 'Notverfahren',
  malfunction: 'Störungen',
  'go-around': 'Durchstarten',
};

/** Speeds of the roll; the mark is named by its distance, m. */
export const rungWords: typeof english.rungWords = {
  mark: (m) => `An der ${lengthDigits(m)}-${unitFor('m')}-Marke`,
  'last-stop': () => 'Abbruch bis',
  rotate: () => 'Rotieren',
  'lift-off': () => 'Abheben',
};

export const climbRungWords: typeof english.climbRungWords = {
  'gear-up': 'Fahrwerk ein',
  'flaps-up': 'Klappen ein',
  'reheat-off': 'Nachbrenner aus',
  climb: 'Steigflug',
};
