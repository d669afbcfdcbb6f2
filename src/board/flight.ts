/** The stages of the brief that Wind can do without: numbers, taxi and steps. */

import { computed } from '@preact/signals';
import { numbersStage, phaseTimes, stepFacts, stepsStage, taxiStage } from '../core';
import { documents, enteredText, inputs, settled, sortie, steady, wind } from './board';
import { procedure } from './flown';
import { sheetOfToday } from './load';
import { out } from './taxi';
import { air, lookUps, today } from './today';

export const numbers = computed(() => numbersStage(documents.value.aircraft));

export const taxi = computed(() => taxiStage(documents.value.aircraft, documents.value.field));

/** Whether the way to the runway crosses another; null where no way is known. */
const crossesRunway = steady(() => {
  const route = out.value?.route ?? null;
  return route === null ? null : route.crossings.length > 0;
});

const facts = steady(() =>
  stepFacts({
    settled: settled.value,
    wind: wind.value,
    entered: enteredText.value,
    numbers: numbers.value,
    today: today.value,
    awaited: lookUps.value === null && documents.value.aircraft?.performance !== undefined,
    air: air.value,
    load: sheetOfToday.value,
    crossesRunway: crossesRunway.value,
    procedure: procedure.value,
    inputs: inputs.value,
  }),
);

const ties = steady(() => inputs.value.ties);

/** Where the pilot is in the steps. */
export const steps = computed(() => {
  const { run, list, stamps } = sortie.value;
  return stepsStage(procedure.value, ties.value, run, list, stamps, facts.value);
});

/** How long each phase took so far. */
export const times = computed(() => {
  const { run, stamps } = sortie.value;
  return steps.value === null ? null : phaseTimes(steps.value.procedure, run, stamps);
});
