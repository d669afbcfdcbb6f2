/** The documents the sortie is flown with, as far as loaded. */

import { computed, signal } from '@preact/signals';
import type { Aircraft, Field, Hash, Procedure } from '../../core';
import { record, sortie } from '../record/sortie';
import { documentOf } from './documents';
import { usualFor } from './procedures';

/**
 * The first answer is on screen, or was waited for long enough: from now on anything may be loaded.
 */
export const answerStands = signal(false);

/** The field; null if not chosen, or not loaded. */
export const field = computed(() => documentOf<Field>(record, sortie.value.inputs.field));

/** The code of any field; null until it is loaded, which the first call starts. */
export const fieldCode = (hash: Hash): string | null =>
  documentOf<Field>(record, hash)?.code ?? null;

/**
 * The aircraft, likewise. Without a field nothing needs one, and the pilot may yet take another.
 */
export const aircraft = computed(() =>
  field.value === null && !answerStands.value
    ? null
    : documentOf<Aircraft>(record, sortie.value.inputs.aircraft),
);

/** The procedure to fly next: the pilot's choice, or the aircraft's usual one. */
export const chosenProcedure = computed((): Hash | null => {
  const { procedure } = sortie.value.inputs;
  return procedure ?? (aircraft.value === null ? null : usualFor(aircraft.value.code));
});

/** The procedure: a sortie in progress keeps the one it began with. */
export const procedure = computed(() =>
  documentOf<Procedure>(record, sortie.value.run?.procedure ?? chosenProcedure.value),
);
