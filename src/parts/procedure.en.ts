/**
 * The words for phases, moments and the speeds of the roll and the climb, the same wherever they
 * stand.
 */

import type { ClimbRung, ListGroup, Moment, Phase, Rung } from '../core';
import { length } from './units';

/** The phases of a sortie. */
export const phaseWords: Record<Phase, string> = {
  ramp: 'Ramp',
  taxi: 'Taxi',
  'line-up': 'Line-up',
  roll: 'Roll',
  climb: 'Climb',
  recovery: 'Recovery',
  after: 'After',
};

/** The moments that are stamped. */
export const momentWords: Record<Moment, string> = {
  'off chocks': 'Off chocks',
  'brakes released': 'Brakes released',
  stopping: 'Stopping',
  airborne: 'Airborne',
  landed: 'Landed',
  'on chocks': 'On chocks',
};

/** The headings under which lists are offered. */
export const listGroupWords: Record<ListGroup, string> = {
  emergency: 'Emergencies',
  malfunction: 'Malfunctions',
  'go-around': 'Go-around',
};

/** A speed of the roll; the mark by its distance along it, m. */
export const rungWords: Record<Rung['what'], (markM: number) => string> = {
  mark: (m) => `At the ${length(m)} mark`,
  'last-stop': () => 'Stop up to',
  rotate: () => 'Rotate',
  'lift-off': () => 'Lift-off',
};

/** A speed of the climb. */
export const climbRungWords: Record<ClimbRung['what'], string> = {
  'gear-up': 'Gear up',
  'flaps-up': 'Flaps up',
  'reheat-off': 'Reheat off',
  climb: 'Climb',
};
