/** Leaving the steps for another place, and coming back. */

import { signal } from '@preact/signals';
import { wasMoreThanLook } from '../../core';
import { type ClockMoment, goneMs, moment } from '../flight/time';
import { interrupt } from './interruption';

/** Whether the steps are on screen, with their keys. */
export const stepsShown = signal(false);

let leftSteps: ClockMoment | null = null;

/** The steps are no longer shown, because another place is. */
export function leaveSteps(): void {
  stepsShown.value = false;
  leftSteps = moment();
}

/** The steps are shown again: after more than a minute that is an interruption. */
export function comeBackToSteps(): void {
  stepsShown.value = true;
  if (leftSteps !== null && wasMoreThanLook(goneMs(leftSteps))) {
    interrupt(leftSteps.wallMs);
  }
  leftSteps = null;
}
