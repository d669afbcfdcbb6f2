/** What is due, as far as keys care: which step it is, and since when. */

import { computed, effect } from '@preact/signals';
import { interruptedAt, type Walk } from '../../core';
import { sortie } from '../board';
import { steps } from '../flight/flight';
import { elapsedNowMs } from '../flight/time';
import { bigCard, place, sheet, typing } from '../places';
import { stepsShown } from './leavingSteps';

/** The walk in progress: through the open list, or through the procedure; null without one. */
export const walked = computed((): Walk | null => {
  const brief = steps.value;
  return brief === null ? null : (brief.abnormal?.walk ?? brief.walk);
});

/** Whether the pilot was called away from the steps and hasn't come back. */
export const isAway = computed(() => interruptedAt(sortie.value) !== null);

/**
 * Names what is due; it changes with anything that a key press meant for the step before must not
 * touch.
 */
export const dueName = computed((): string => {
  const position = walked.value?.position;
  if (position === undefined) return '';
  const list = sortie.value.list?.id ?? '';
  const away = isAway.value ? 'away' : '';
  switch (position.kind) {
    case 'step': {
      const { pass, step, state } = position.row;
      return `${list}/${pass}/${step.id}/${state.kind}/${away}`;
    }
    case 'moment':
      return `${list}/${sortie.value.run?.passes.roll ?? 1}/${position.moment}/${away}`;
    default:
      return `${list}/${position.kind}/${away}`;
  }
});

let sinceMs = Number.NEGATIVE_INFINITY;

/**
 * Since when the due step has been in front of the pilot, by the time since the app started, ms.
 */
export const dueSinceMs = (): number => sinceMs;

/** Starts noting when the due step, or what is shown of it, changes. */
export function followDue(): void {
  effect(() => {
    void [dueName.value, stepsShown.value, bigCard.value, place.value, sheet.value, typing.value];
    sinceMs = elapsedNowMs();
  });
  // A press while nobody could see the step wasn't meant for it.
  document.addEventListener('visibilitychange', () => {
    sinceMs = elapsedNowMs();
  });
}
