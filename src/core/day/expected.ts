/** What is forecast for the field, judged for the runway as the present wind is. */

import type { Designator } from '../airfield/field';
import type { Purpose, RankedEnd } from '../runway/question';
import { judgeEnd } from '../runway/rank';
import {
  type Forecast,
  type ForecastPart,
  forecastsIn,
  prevailingAt,
} from '../weather/whole/forecast';
import type { Report } from '../weather/whole/report';
import type { SettledFacts } from './settled';
import { windQuestion } from './wind';
import type { PlacedWind } from './winds';

/** A part of what is forecast, in its wind on the runway. */
export interface JudgedPart extends ForecastPart {
  readonly of: Forecast['of'];
  /** Whose it is, if the text says. */
  readonly station: string | null;
  /** It counts now, or begins to within the hour. */
  readonly isNear: boolean;
  /** It is the wind in use, because no other was entered. */
  readonly isInUse: boolean;
  /** The runway in its wind; null if it expects no wind, or none can be judged. */
  readonly end: RankedEnd | null;
  /** What it exceeds most; null if nothing. */
  readonly beyond: BeyondLimit | null;
}

export interface BeyondLimit {
  readonly code: 'crosswind' | 'tailwind' | 'gust-spread';
  /** Gust included. */
  readonly valueKt: number;
  readonly limitKt: number;
}

export interface ExpectedBrief {
  readonly forecasts: readonly Forecast[];
  /** Of all of them, in the text's order. */
  readonly parts: readonly JudgedPart[];
  /** Of those that count now or within the hour, the one nearest to a limit, or furthest beyond. */
  readonly worst: JudgedPart | null;
}

const HOUR_MS = 3_600_000;

/**
 * The forecasts in force at the field: the trend of the report in use, or one entered after it, and
 * the newest TAF, the field's own before any other.
 */
export function forecastsHere(
  winds: readonly PlacedWind[],
  report: { readonly report: Report; readonly place: number } | null,
  code: string | null,
): readonly Forecast[] {
  let taf: Forecast | null = null;
  let trend: Forecast | null = null;
  for (const { entered, place } of winds) {
    for (const one of forecastsIn(entered.text, entered.at.sortieMs)) {
      if (one.of === 'taf') {
        if (taf === null || replaces(one, taf)) taf = one;
      } else if (place >= (report?.place ?? 0)) {
        const isOther = place === report?.place && one.station !== report.report.station;
        if (!isOther) trend = one;
      }
    }
  }
  return [trend, taf].filter((one) => one !== null);

  function replaces(one: Forecast, before: Forecast): boolean {
    const [isOwn, wasOwn] = [one.station === code, before.station === code];
    if (isOwn !== wasOwn) return isOwn;
    return (one.issuedMs ?? -Infinity) >= (before.issuedMs ?? -Infinity);
  }
}

/** The wind a forecast gives for a moment, where no other was entered. */
export function windForecast(forecasts: readonly Forecast[], at: Date): ForecastPart | null {
  const taf = forecasts.find(({ of }) => of === 'taf');
  return taf === undefined ? null : prevailingAt(taf, at.getTime());
}

/** Judges every part on a runway end; `inUse` is the part that is the wind in use, if one is. */
export function expectedStage(
  forecasts: readonly Forecast[],
  settled: SettledFacts,
  purpose: Purpose,
  end: Designator | null,
  at: Date,
  inUse: ForecastPart | null,
): ExpectedBrief {
  const nowMs = at.getTime();
  const parts = forecasts.flatMap(({ of, station, parts }) =>
    parts.map((part): JudgedPart => {
      const question =
        part.wind === null ? 'no-wind' : windQuestion(settled, part.wind, 'true', purpose, at);
      const judged = end === null || typeof question === 'string' ? null : judgeEnd(question, end);
      return {
        ...part,
        of,
        station,
        isNear: part.fromMs <= nowMs + HOUR_MS && nowMs < part.untilMs,
        isInUse: part === inUse,
        end: judged,
        beyond: judged && beyondOf(judged),
      };
    }),
  );
  const near = parts.filter(({ isNear, isInUse, end }) => isNear && !isInUse && end !== null);
  const share = (part: JudgedPart) => shareOf(part, settled);
  const worst = near.reduce<JudgedPart | null>(
    (most, part) => (most === null || share(part) > share(most) ? part : most),
    null,
  );
  return { forecasts, parts, worst };
}

const ratio = (value: number, limit: number): number => (value === 0 ? 0 : value / limit);

/** The greatest share of a limit. */
function shareOf({ end, beyond }: JudgedPart, settled: SettledFacts): number {
  const of = (value: number | null | undefined, limit: number | null) =>
    ratio(value ?? 0, limit ?? Number.POSITIVE_INFINITY);
  return Math.max(
    of(end?.crosswindWorstKt, settled.crosswindLimit.value),
    of(end?.tailwindWorstKt, settled.tailwindLimit.value),
    beyond === null ? 0 : ratio(beyond.valueKt, beyond.limitKt),
  );
}

function beyondOf({ shortfalls }: RankedEnd): BeyondLimit | null {
  const beyond = shortfalls.flatMap((one): BeyondLimit[] => {
    if (one.code === 'gust-spread') {
      return [{ code: one.code, valueKt: one.spreadKt, limitKt: one.limitKt }];
    }
    if (one.code !== 'crosswind' && one.code !== 'tailwind') return [];
    return [{ code: one.code, valueKt: one.worstKt, limitKt: one.limitKt }];
  });
  return beyond.reduce<BeyondLimit | null>(
    (most, one) =>
      most === null || ratio(one.valueKt, one.limitKt) > ratio(most.valueKt, most.limitKt)
        ? one
        : most,
    null,
  );
}
