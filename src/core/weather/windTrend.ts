/**
 * Which way the winds entered so far are going.
 *
 * A least-squares line is fitted to direction and speed over time. Directions are first unwrapped
 * from one wind to the next, the shorter way round, so that a wind that has gone all the way round
 * has turned 360° rather than 0. All thresholds here are common practice, no published source; they
 * are set so that rounding alone is never called a trend.
 */

import { relativeDeg, trueDeg } from '../angle';

/** A wind, and when it was entered. */
export interface TimedWind {
  readonly timeMs: number;
  /** Where it comes from, degrees true; null if variable or not reported. */
  readonly fromTrueDeg: number | null;
  /** Steady speed, kt; null when not reported. */
  readonly speedKt: number | null;
  /** Gust, kt; null when there is none. */
  readonly gustKt: number | null;
}

/** A wind with the direction and speed a line can be fitted to. */
export interface FullWind extends TimedWind {
  readonly fromTrueDeg: number;
  readonly speedKt: number;
}

/** What a trend is based on. */
export interface TrendBasis {
  /** Winds used: the latest unbroken run with direction and speed, not light, within 3 hours. */
  readonly count: number;
  /** From the first of them to the last, minutes. */
  readonly minutes: number;
}

/** Why there is no trend. */
export type ThinBasis =
  /** The last wind is variable, without a speed, or below 5 kt: its direction says nothing. */
  | 'light-or-variable'
  /** Fewer than 3 usable winds. */
  | 'few-winds'
  /** Less than 20 minutes from the first to the last. */
  | 'short-span'
  /** The last wind is older than 90 minutes. */
  | 'last-too-old'
  /** Two successive winds lie more than 135° apart: which way it went round is a guess. */
  | 'way-round-unknown'
  /** The winds jump about more than they go anywhere. */
  | 'scattered';

/** Which way the wind goes, or why we can't tell. */
export type WindTrend =
  | { readonly kind: 'thin'; readonly because: ThinBasis; readonly basis: TrendBasis }
  | {
      readonly kind: 'known';
      readonly turn: 'veering' | 'backing' | 'steady';
      /**
       * Along the line, over `basis.minutes`, degrees; clockwise (veering) positive. Given even if
       * too small to be called a turn.
       */
      readonly turnDeg: number;
      readonly strength: 'strengthening' | 'easing' | 'steady';
      /** Steady speed along the line, over `basis.minutes`, kt; positive when strengthening. */
      readonly changeKt: number;
      readonly basis: TrendBasis;
    };

const MINUTE_MS = 60_000;
const LEAST_WINDS = 3;
const LEAST_SPAN_MIN = 20;
const LONGEST_SPAN_MIN = 180;
const OLDEST_MIN = 90;
const WIDEST_STEP_DEG = 135;

/** Rounding to 10° errs by up to 5° and can tilt a line through a constant wind by 15°. */
const TURN_DEG = 15;

/** Rounding to 1 kt can do as much as 1.5 kt, and ten-minute means of one wind differ too. */
const CHANGE_KT = 3;

/** Below this, kt, direction means little. FAA JO 7110.65, 3-5-1, calls it light. */
const LIGHT_BELOW_KT = 5;

/** Which way the wind goes at a moment, from the winds entered by then, in any order. */
export function windTrend(winds: readonly TimedWind[], nowMs: number): WindTrend {
  const used = windsToGoBy(winds);
  const minutes = minutesSince(used, used.at(-1));
  const basis = { count: used.length, minutes };
  const thin = (because: ThinBasis) => ({ kind: 'thin', because, basis }) as const;

  const last = used.at(-1);
  if (last === undefined) return thin(winds.length === 0 ? 'few-winds' : 'light-or-variable');
  if (nowMs - last.timeMs > OLDEST_MIN * MINUTE_MS) return thin('last-too-old');
  if (used.length < LEAST_WINDS) return thin('few-winds');
  if (minutes < LEAST_SPAN_MIN) return thin('short-span');

  const steps = stepsDeg(used);
  if (steps.some((deg) => Math.abs(deg) > WIDEST_STEP_DEG)) return thin('way-round-unknown');

  const times = used.map((wind) => minutesSince(used, wind));
  const turn = lineThrough(times, sums(steps));
  const change = lineThrough(
    times,
    used.map(({ speedKt }) => speedKt),
  );
  if (isScattered(turn, TURN_DEG) || isScattered(change, CHANGE_KT)) return thin('scattered');
  return {
    kind: 'known',
    turn: goes(turn.change, TURN_DEG, 'veering', 'backing'),
    turnDeg: turn.change,
    strength: goes(change.change, CHANGE_KT, 'strengthening', 'easing'),
    changeKt: change.change,
    basis,
  };
}

/**
 * The winds a trend is based on, oldest first: the latest ones with a direction and a speed of 5 kt
 * or more, gust included, back to the first without, and no further than 3 hours before the last.
 * Empty if the last of all is light or variable.
 */
export function windsToGoBy(winds: readonly TimedWind[]): readonly FullWind[] {
  const byTime = [...winds].sort((a, b) => a.timeMs - b.timeMs);
  const lastMs = byTime.at(-1)?.timeMs ?? 0;
  const used: FullWind[] = [];
  for (const wind of byTime.reverse()) {
    if (!isFull(wind) || lastMs - wind.timeMs > LONGEST_SPAN_MIN * MINUTE_MS) break;
    used.unshift(wind);
  }
  return used;
}

const isFull = (wind: TimedWind): wind is FullWind =>
  wind.fromTrueDeg !== null &&
  wind.speedKt !== null &&
  Math.max(wind.speedKt, wind.gustKt ?? 0) >= LIGHT_BELOW_KT;

const minutesSince = ([first]: readonly TimedWind[], wind: TimedWind | undefined): number =>
  first && wind ? (wind.timeMs - first.timeMs) / MINUTE_MS : 0;

/** From each wind to the next, the shorter way round, degrees clockwise. */
const stepsDeg = (winds: readonly FullWind[]): number[] =>
  winds
    .slice(1)
    .map(({ fromTrueDeg }, index) =>
      relativeDeg(trueDeg(fromTrueDeg), trueDeg(winds[index]?.fromTrueDeg ?? 0)),
    );

/** The running sum of the steps, from 0 before the first. */
function sums(steps: readonly number[]): number[] {
  const all = [0];
  for (const step of steps) all.push((all.at(-1) ?? 0) + step);
  return all;
}

/** A straight line through values over time. */
interface Line {
  /** Its rise from the first time to the last. */
  readonly change: number;
  /** Standard deviation of the values from it. */
  readonly scatter: number;
}

/** The least-squares line. Needs three values or more, and differing times. */
function lineThrough(times: readonly number[], values: readonly number[]): Line {
  const mean = (of: readonly number[]) => of.reduce((sum, x) => sum + x, 0) / of.length;
  const meanTime = mean(times);
  const meanValue = mean(values);
  let together = 0;
  let spread = 0;
  times.forEach((time, i) => {
    together += (time - meanTime) * ((values[i] ?? 0) - meanValue);
    spread += (time - meanTime) ** 2;
  });
  const slope = together / spread;
  const squares = times.map(
    (time, i) => ((values[i] ?? 0) - meanValue - slope * (time - meanTime)) ** 2,
  );
  return {
    change: slope * ((times.at(-1) ?? 0) - (times[0] ?? 0)),
    // The line itself uses up two degrees of freedom.
    scatter: Math.sqrt((mean(squares) * times.length) / (times.length - 2)),
  };
}

/** Values stray further from their line than it rises, and than would be called a trend. */
const isScattered = ({ change, scatter }: Line, least: number): boolean =>
  scatter > Math.max(Math.abs(change), least);

const goes = <T extends string>(change: number, least: number, up: T, down: T): T | 'steady' =>
  Math.abs(change) <= least ? 'steady' : change > 0 ? up : down;
