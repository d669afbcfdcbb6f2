/** The whole day in one call: loads everything and works it out with the plain memo. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field } from '../airfield/field';
import * as sun from '../earth/sunlight';
import { type VariationTable, variationTableFor } from '../earth/variationTable';
import type { Procedure } from '../procedure/procedure';
import { FRESH_INPUTS, type Inputs } from '../sortie/entry';
import { NO_SORTIE, type Sortie } from '../sortie/fold';
import * as taxi from '../taxi/taxi';
import type { Conditions } from './conditions';
import { type Day, day } from './day';
import type { Ladder } from './ladder';
import { plainMemo } from './memo';
import type { NumbersBrief } from './numbers';
import * as physics from './performance';
import type { OnTheGround } from './route';
import type { Sources, WindText } from './sources';
import type { StepsBrief } from './steps';
import type { TaxiBrief } from './taxi';
import type { TodayBrief } from './today';
import type { Verdict } from './verdict';
import * as reports from './wholeReports';
import { type WindBrief, wholeWind } from './wholeWind';
import { northOf } from './wind';

export interface DayQuestion {
  readonly field: Field | null;
  readonly aircraft: Aircraft | null;
  readonly procedure?: Procedure | null;
  /** The sortie's own time. */
  readonly at: Date;
  /** Where it differs from a new sortie's inputs. */
  readonly inputs?: Partial<Inputs>;
  /** Without its north: as read, and true if the text doesn't say. */
  readonly wind?: Pick<WindText, 'text'> & Partial<WindText>;
}

export interface AskedDay {
  readonly conditions: Conditions;
  readonly wind: WindBrief;
  readonly numbers: {
    /** From the aircraft's document. */
    readonly book: NumbersBrief | null;
    readonly today: TodayBrief | null;
    readonly ladder: Ladder | null;
  };
  readonly verdict: Verdict;
  readonly taxi: Pick<OnTheGround, 'out' | 'back' | 'route' | 'fault' | 'told' | 'turns'> & {
    /** What to keep in mind on any route. */
    readonly reminder: TaxiBrief | null;
  };
  readonly steps: StepsBrief | null;
}

/** The whole day. If no magnetic model covers the date, the variation is unknown. */
export async function askDay(question: DayQuestion): Promise<AskedDay> {
  const { at, inputs, wind } = question;
  const variation = await variationTableFor(at).catch((fault: unknown): 'failed' => {
    if (fault instanceof RangeError) return 'failed';
    throw fault;
  });
  const all = { ...FRESH_INPUTS, ...inputs };
  const north = wind && (wind.north ?? northOf(wind.text, question.field, all.typedNorth));
  const sortie = sortieWith(all, wind && north ? { ...wind, north } : null, at);
  return wholeDay(day(settledSources(sortie, question, at, variation), plainMemo));
}

/** A sortie with nothing done yet and a wind in use. */
function sortieWith(inputs: Inputs, wind: WindText | null, at: Date): Sortie {
  const ms = at.getTime();
  const entered = wind && {
    ...wind,
    id: 'asked',
    field: inputs.field,
    at: { wallMs: ms, sortieMs: ms },
  };
  return { ...NO_SORTIE, inputs, winds: entered === null ? [] : [entered] };
}

/** Sources that never change, with every part loaded. */
export function settledSources(
  sortie: Sortie,
  documents: Pick<DayQuestion, 'field' | 'aircraft' | 'procedure'>,
  at: Date,
  variation: VariationTable | 'loading' | 'failed',
): Sources {
  return {
    sortie: () => sortie,
    documents: {
      field: () => documents.field,
      aircraft: () => documents.aircraft,
      procedure: () => documents.procedure ?? null,
    },
    fieldCode: () => null,
    minuteMs: () => at.getTime(),
    secondMs: () => at.getTime(),
    parts: {
      reports: () => reports,
      physics: () => physics,
      taxi: () => taxi,
      sun: () => sun,
      variation: () => variation,
    },
  };
}

/** All stages of a day as they stand. */
export function wholeDay(asked: Day): AskedDay {
  const { out, back, route, fault, told, turns } = asked;
  return {
    conditions: asked.conditions(),
    wind: wholeWind(asked.read(), asked.wind(), asked.settled()),
    numbers: { book: asked.numbers(), today: asked.today(), ladder: asked.ladder() },
    verdict: asked.verdict(),
    taxi: {
      out: out(),
      back: back(),
      route: route(),
      fault: fault(),
      told: told(),
      turns: turns(),
      reminder: asked.taxi(),
    },
    steps: asked.steps(),
  };
}
