/** The stages of the brief that Wind can do without: numbers, taxi and steps. */

import { computed } from '@preact/signals';
import { numbersStage, type Procedure, stepFacts, stepsStage, taxiStage } from '../core';
import { documents, enteredText, inputs, record, settled, sortie, steady, wind } from './board';
import { documentOf } from './documents';

/** The procedure: a sortie that is being flown keeps to the one it was begun with. */
const procedure = computed(() =>
  documentOf<Procedure>(record, sortie.value.run?.procedure ?? inputs.value.procedure),
);

export const numbers = computed(() => numbersStage(documents.value.aircraft));

export const taxi = computed(() => taxiStage(documents.value.aircraft, documents.value.field));

const facts = steady(() =>
  stepFacts(settled.value, wind.value, enteredText.value, numbers.value, inputs.value),
);

/** Where the pilot is in the steps. */
export const steps = computed(() => {
  const { run, list, stamps } = sortie.value;
  return stepsStage(procedure.value, run, list, stamps, facts.value);
});
