/** When the wind, going on as it does, would change which end is best. */

import type { Designator } from '../airfield/field';
import { wrapDeg } from '../angle';
import {
  type ThinBasis,
  type TimedWind,
  type TrendBasis,
  windsToGoBy,
  windTrend,
} from './windTrend';

/** A wind that the trend leads to. */
export interface ComingWind {
  /** Where it would come from, degrees true, above 0 up to 360. */
  readonly fromTrueDeg: number;
  /** Steady speed, kt; never negative. */
  readonly speedKt: number;
  /** Gust, kt, as much above the steady wind as it is in the last one; null when that has none. */
  readonly gustKt: number | null;
}

/** When the answer would change, if the wind goes on as it does. */
export type WindOutlook =
  | { readonly kind: 'thin'; readonly because: ThinBasis; readonly basis: TrendBasis }
  | {
      readonly kind: 'changes';
      /** Minutes from now, in steps of 5; 0 when it may have changed since the last wind. */
      readonly minutes: number;
      /** The best end in the last wind; null where none is. */
      readonly now: Designator | null;
      /** The best end then; null where none is. */
      readonly then: Designator | null;
      /** The wind then. */
      readonly wind: ComingWind;
      readonly basis: TrendBasis;
    }
  | {
      /** The answer stays for longer than `minutes` from now. */
      readonly kind: 'holds';
      readonly minutes: number;
      readonly now: Designator | null;
      readonly basis: TrendBasis;
    };

/** A straight line is not believed for longer. Common practice, no published source. */
const AHEAD_MIN = 120;
const STEP_MIN = 5;
const MINUTE_MS = 60_000;

/**
 * Asks `askAt` for the best end in the last wind, and then in the wind that the trend leads to from
 * there, every 5 minutes for the next 2 hours, until it answers otherwise. Only what is called a
 * turn or a change of strength by {@link windTrend} is carried on; what is steady stays.
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

/** As reports write it: north is 360, since 0 is the direction of a calm. */
const compassDeg = (deg: number): number => wrapDeg(deg) || 360;
