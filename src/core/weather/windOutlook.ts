/** When the wind, if it goes on as it does, would change which end is best. */

import type { Designator } from '../airfield/field';
import { wrapDeg } from '../angle';
import {
  type ThinBasis,
  type TimedWind,
  type TrendBasis,
  windsToGoBy,
  windTrend,
} from './windTrend';

/** A wind the trend leads to. */
export interface ComingWind {
  /** Where it would come from, degrees true, above 0 up to 360. */
  readonly fromTrueDeg: number;
  /** Steady speed, kt; never negative. */
  readonly speedKt: number;
  /** Gust, kt, as far above the steady wind as in the last one; null if that has none. */
  readonly gustKt: number | null;
}

/** When the answer would change, if the wind goes on as it does. */
export type WindOutlook =
  | { readonly kind: 'thin'; readonly because: ThinBasis; readonly basis: TrendBasis }
  | {
      readonly kind: 'changes';
      /** Minutes from now, in steps of 5; 0 if it may have changed since the last wind. */
      readonly minutes: number;
      /** The best end in the last wind; null if none is. */
      readonly now: Designator | null;
      /** The best end then; null if none is. */
      readonly then: Designator | null;
      /** The wind then. */
      readonly wind: ComingWind;
      readonly basis: TrendBasis;
    }
  | {
      /** The answer holds for longer than `minutes` from now. */
      readonly kind: 'holds';
      readonly minutes: number;
      readonly now: Designator | null;
      readonly basis: TrendBasis;
    };

/** A straight line isn't extrapolated further. Common practice, no published source. */
const AHEAD_MIN = 120;
const STEP_MIN = 5;
const MINUTE_MS = 60_000;

/**
 * Asks `askAt` for the best end in the last wind, and then in the wind the trend leads to, every 5
 * minutes for the next 2 hours, until the answer changes. Only what {@link windTrend} calls a turn
 * or a change of strength is extrapolated; what is steady stays.
 */
export function windOutlook(
  winds: readonly TimedWind[],
  nowMs: number,
  askAt: (wind: ComingWind) => Designator | null,
): WindOutlook {
  const trend = windTrend(winds, nowMs);
  const last = windsToGoBy(winds).at(-1);
  const { basis } = trend;
  if (trend.kind === 'thin') return trend;
  if (last === undefined) return { kind: 'thin', because: 'few-winds', basis };

  const degPerMin = trend.turn === 'steady' ? 0 : trend.turnDeg / basis.minutes;
  const ktPerMin = trend.strength === 'steady' ? 0 : trend.changeKt / basis.minutes;
  const spreadKt = last.gustKt === null ? null : last.gustKt - last.speedKt;
  const windAfter = (minutes: number): ComingWind => {
    const speedKt = Math.max(0, last.speedKt + ktPerMin * minutes);
    return {
      fromTrueDeg: compassDeg(last.fromTrueDeg + degPerMin * minutes),
      speedKt,
      gustKt: spreadKt === null ? null : speedKt + spreadKt,
    };
  };

  const now = askAt(windAfter(0));
  const sinceLast = Math.max(0, (nowMs - last.timeMs) / MINUTE_MS);
  for (let minutes = 0; minutes <= AHEAD_MIN; minutes += STEP_MIN) {
    const wind = windAfter(sinceLast + minutes);
    const then = askAt(wind);
    if (then !== now) return { kind: 'changes', minutes, now, then, wind, basis };
  }
  return { kind: 'holds', minutes: AHEAD_MIN, now, basis };
}

/** As reports write it: north is 360, because 0 is the direction of a calm. */
const compassDeg = (deg: number): number => wrapDeg(deg) || 360;
