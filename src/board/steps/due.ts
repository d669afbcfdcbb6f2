/** What is due, as far as it matters for pressing keys: which it is, and since when it has been. */

import { computed, effect } from '@preact/signals';
import { interruptedAt, type Walk } from '../../core';
import { sortie } from '../board';
import { steps } from '../flight/flight';
import { elapsedNowMs } from '../flight/time';
import { bigCard, place, sheet, typing } from '../places';
import { stepsShown } from './leavingSteps';

/** The walk that is walked: through the list that is open, or through the procedure; null without one. */
export const walked = computed((): Walk | null => {
  const brief = steps.value;
  return brief === null ? null : (brief.abnormal?.walk ?? brief.walk);
});

/** Whether the pilot was called away from the steps, and has not come back. */
export const isAway = computed(() => interruptedAt(sortie.value) !== null);

/** Names what is due; it changes with everything that a key meant for before must not touch. */
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

/** Since when what is due has stood before the pilot's eyes, by the time since the app started, ms. */
export const dueSinceMs = (): number => sinceMs;

/** Begins to note when what is due, or what is shown of it, changes. */
export function followDue(): void {
  effect(() => {
    void [dueName.value, stepsShown.value, bigCard.value, place.value, sheet.value, typing.value];
    sinceMs = elapsedNowMs();
  });
  // What was pressed while nobody could see it was not meant.
  document.addEventListener('visibilitychange', () => {
    sinceMs = elapsedNowMs();
  });
}
