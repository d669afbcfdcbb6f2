/** The documents that the sortie is flown with, as far as they are in hand. */

import { computed, signal } from '@preact/signals';
import type { Aircraft, Field, Hash, Procedure } from '../../core';
import { record, sortie } from '../record/sortie';
import { documentOf } from './documents';
import { usualFor } from './procedures';

/** The first answer stands, or was waited for long enough: from now on everything may be loaded. */
export const answerStands = signal(false);

/** The field; null while it is not chosen, or not in hand. */
export const field = computed(() => documentOf<Field>(record, sortie.value.inputs.field));

/** The aircraft, likewise. Without a field nothing is asked of one, and the pilot may yet take another. */
export const aircraft = computed(() =>
  field.value === null && !answerStands.value
    ? null
    : documentOf<Aircraft>(record, sortie.value.inputs.aircraft),
);

/** The procedure that is flown next: the pilot's choice, or what the aircraft is usually flown with. */
export const chosenProcedure = computed((): Hash | null => {
  const { procedure } = sortie.value.inputs;
  return procedure ?? (aircraft.value === null ? null : usualFor(aircraft.value.code));
});

/** The procedure: a sortie that is being flown keeps to the one it was begun with. */
export const procedure = computed(() =>
  documentOf<Procedure>(record, sortie.value.run?.procedure ?? chosenProcedure.value),
);
