/** What is due, as far as keys care: which step it is, and since when. */

import { computed, effect } from '@preact/signals';
import type { Walk } from '../../core';
import { day, sortie } from '../board';
import { elapsedNowMs } from '../flight/time';
import { bigCard, place, sheet, typing } from '../places';
import { stepsShown } from './leavingSteps';
import { offered } from './stepping';

/** The walk in progress: through the open list, or through the procedure; null without one. */
export const walked = computed((): Walk | null => {
  const brief = day.steps();
  return brief === null ? null : (brief.abnormal?.walk ?? brief.walk);
});

/**
 * Names what is due; it changes with anything that a key press meant for the step before must not
 * touch.
 */
export const dueName = computed((): string => {
  const main = offered.value?.main;
  const { list, run } = sortie.value;
  const within = list?.id ?? '';
  switch (main?.what) {
    case undefined:
      return '';
    case 'tick':
    case 'supply': {
      const { pass, step, state } = main.row;
      return `${within}/${pass}/${step.id}/${state.kind}/${main.what}`;
    }
    case 'stamp':
      return `${within}/${run?.passes.roll ?? 1}/${main.moment}`;
    default:
      return `${within}/${main?.what}`;
  }
});

let sinceMs = Number.NEGATIVE_INFINITY;

/**
 * Since when the due step has been in front of the pilot, by the time since the app started, ms.
 */
export const dueSinceMs = (): number => sinceMs;

let rollingMs = Number.NEGATIVE_INFINITY;

/**
 * Since when the roll, or whatever is due, has been due, wherever it is shown, by the time since the
 * app started, ms.
 */
export const rollingSinceMs = (): number => rollingMs;

/** Starts noting when the due step, or what is shown of it, changes. */
export function followDue(): void {
  effect(() => {
    void dueName.value;
    rollingMs = elapsedNowMs();
  });
  effect(() => {
    void [dueName.value, stepsShown.value, bigCard.value, place.value, sheet.value, typing.value];
    sinceMs = elapsedNowMs();
  });
  // A press while nobody could see the step wasn't meant for it.
  document.addEventListener('visibilitychange', () => {
    sinceMs = elapsedNowMs();
  });
}
