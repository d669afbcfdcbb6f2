/**
 * Everything the pilot is told, worked out in one call: facts → wind → weather → numbers → taxi → steps.
 *
 * The app composes the same stages as signals, so that a changed wind does not recompute the steps;
 * tests, benches and scripts call {@link brief}.
 */

import { loadSheet } from '../aircraft/loadSheet';
import { readReport } from '../weather/readReport';
import { type AirBrief, airOf } from './air';
import { factStage, purposeOf, type SettledFacts } from './facts';
import { type NumbersBrief, numbersStage } from './numbers';
import type { BriefInputs, Documents, Tables } from './questions';
import { stepFacts } from './stepFacts';
import { type StepsBrief, stepsStage } from './steps';
import { type TaxiBrief, taxiStage } from './taxi';
import { type DayGiven, type TodayBrief, todayStage } from './today';
import { type WeatherBrief, weatherStage } from './weather';
import { type WindBrief, windStage } from './wind';

/**
 * Everything the pilot is told. Numbers, taxi and steps are null without an aircraft or a procedure,
 * weather without a report, air without a field, today also where the aircraft has only book figures.
 */
export interface Brief {
  readonly settled: SettledFacts;
  readonly wind: WindBrief;
  readonly weather: WeatherBrief | null;
  readonly air: AirBrief | null;
  readonly numbers: NumbersBrief | null;
  readonly today: TodayBrief | null;
  readonly taxi: TaxiBrief | null;
  readonly steps: StepsBrief | null;
}

/** The brief of the moment. Never throws for inputs that passed their schemas. */
export function brief(moment: BriefInputs, documents: Documents, tables: Tables): Brief {
  const { inputs, at, wind: entered, run, list, stamps } = moment;
  const { field, aircraft, procedure } = documents;
  const settled = factStage(inputs, at, documents, tables);
  const wind = windStage(settled, entered, purposeOf(inputs, stamps), inputs.chosen, at);
  const weather = weatherOf(entered?.text ?? '', settled);
  const air = field === null ? null : airOf(field.place.elevationFt, inputs, weather);
  const load = aircraft === null ? null : loadSheet(aircraft, inputs.load);
  const numbers = numbersStage(aircraft);
  const given = field && aircraft?.performance && air && load && { field, aircraft, air, load };
  const today = given ? todayOf({ ...given, inputs }, wind) : null;
  const facts = stepFacts({
    settled,
    wind,
    entered,
    numbers,
    today,
    awaited: false,
    air,
    load,
    crossesRunway: null,
    procedure,
    inputs,
  });
  return {
    settled,
    wind,
    weather,
    air,
    numbers,
    today,
    taxi: taxiStage(aircraft, field),
    steps: stepsStage(procedure, inputs.ties, run, list, stamps, facts),
  };
}

function weatherOf(text: string, settled: SettledFacts): WeatherBrief | null {
  const report = readReport(text);
  return report.kind === 'report' ? weatherStage(report, settled) : null;
}

/** Today's numbers on the end in use, or else the best. */
function todayOf(given: DayGiven, { using, inUse, ranked, wind }: WindBrief): TodayBrief {
  const end = inUse ?? ranked?.best ?? null;
  const { speedKt, gustKt } = wind ?? { speedKt: null, gustKt: null };
  const spreadKt = speedKt === null || gustKt === null ? 0 : gustKt - speedKt;
  return todayStage(given, end?.designator ?? using, end?.headwindLeastKt ?? null, spreadKt);
}
