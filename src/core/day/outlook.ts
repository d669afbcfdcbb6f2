/** Where the winds are heading, and when that would change the choice. */

import type { Designator } from '../airfield/field';
import { bestEnd } from '../runway/bestEnd';
import type { Purpose } from '../runway/question';
import { type WindOutlook, windOutlook } from '../weather/windOutlook';
import { type TimedWind, type WindTrend, windTrend } from '../weather/windTrend';
import type { SettledFacts } from './settled';
import type { WindText } from './sources';
import { readEnteredWind, windDirections, windQuestion } from './wind';

export interface OutlookBrief {
  readonly trend: WindTrend;
  /** Null if the ends can't be judged. */
  readonly outlook: WindOutlook | null;
}

/** A wind as entered, and when. */
export interface EnteredText extends WindText {
  readonly timeMs: number;
}

/** Where the winds entered so far lead if the trend goes on. */
export function outlookStage(
  winds: readonly EnteredText[],
  settled: SettledFacts,
  purpose: Purpose,
  at: Date,
): OutlookBrief {
  const timed = winds.map((entered): TimedWind => {
    const { report, north } = readEnteredWind(entered);
    const wind = report?.wind ?? null;
    const { fromTrueDeg } = windDirections(wind, north, settled.variation.value);
    return {
      timeMs: entered.timeMs,
      fromTrueDeg,
      speedKt: wind?.speedKt ?? null,
      gustKt: wind?.gustKt ?? null,
    };
  });
  const trend = windTrend(timed, at.getTime());
  const askAt = (wind: Parameters<Parameters<typeof windOutlook>[2]>[0]): Designator | null => {
    const question = windQuestion(
      settled,
      {
        fromDeg: wind.fromTrueDeg,
        speedKt: wind.speedKt,
        gustKt: wind.gustKt,
        sectorDeg: null,
        variable: false,
        speedIsMinimum: false,
        gustIsMinimum: false,
      },
      'true',
      purpose,
      at,
    );
    return typeof question === 'string' ? null : bestEnd(question);
  };
  const canJudge = settled.field !== null && settled.crosswindLimit.value !== null;
  return { trend, outlook: canJudge ? windOutlook(timed, at.getTime(), askAt) : null };
}
