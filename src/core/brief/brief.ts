/**
 * Everything the pilot is told, worked out in one call: facts → wind → numbers → taxi → steps.
 *
 * The app composes the same stages as signals, so that a changed wind does not recompute the steps;
 * tests, benches and scripts call {@link brief}.
 */

import { factStage, purposeOf, type SettledFacts } from './facts';
import { type NumbersBrief, numbersStage } from './numbers';
import type { BriefInputs, Documents, Tables } from './questions';
import { type StepsBrief, stepFacts, stepsStage } from './steps';
import { type TaxiBrief, taxiStage } from './taxi';
import { type WindBrief, windStage } from './wind';

/** Everything the pilot is told. Numbers, taxi and steps are null without an aircraft or a procedure. */
export interface Brief {
  readonly settled: SettledFacts;
  readonly wind: WindBrief;
  readonly numbers: NumbersBrief | null;
  readonly taxi: TaxiBrief | null;
  readonly steps: StepsBrief | null;
}

/** The brief of the moment. Never throws for inputs that passed their schemas. */
export function brief(moment: BriefInputs, documents: Documents, tables: Tables): Brief {
  const { inputs, at, wind: entered, run, list, stamps } = moment;
  const settled = factStage(inputs, at, documents, tables);
  const wind = windStage(settled, entered, purposeOf(inputs, stamps), inputs.chosen, at);
  const numbers = numbersStage(documents.aircraft);
  const facts = stepFacts(settled, wind, entered, numbers, inputs);
  return {
    settled,
    wind,
    numbers,
    taxi: taxiStage(documents.aircraft, documents.field),
    steps: stepsStage(documents.procedure, run, list, stamps, facts),
  };
}
