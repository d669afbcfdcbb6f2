/** Turns a wind as written into a usable one; each slip is refused, with its problem. */

import { isInSwing } from './envelope';
import type { Problem, TextSpan, Wind } from './report';
import type { WrittenSpeed, WrittenWind } from './writtenWind';

/**
 * Speeds from here on are taken for typing errors. The strongest surface gust on record is 220 kt
 * (113.2 m/s, Barrow Island 1996; WMO World Weather and Climate Extremes Archive).
 */
const SLIP_KT = 250;

const FULL_CIRCLE_DEG = 360;

/** Two directions as written, clockwise from the first to the second, with their place. */
export interface WrittenSwing {
  readonly degs: readonly [number, number];
  readonly at: TextSpan;
}

/** The usable wind, null if there is none, and what was refused or needs care. */
export interface JudgedWind {
  readonly wind: Wind | null;
  readonly problems: Problem[];
}

export function judgeWind(written: WrittenWind, swing: WrittenSwing | null): JudgedWind {
  const { fromDeg, variable, speed, gust, at } = written;
  const refused = (problem: Problem) => ({ wind: null, problems: [problem] });

  if (fromDeg !== null && fromDeg > FULL_CIRCLE_DEG) {
    return refused({ code: 'direction-out-of-range', at, values: { deg: fromDeg } });
  }
  if (fromDeg === null && !variable && speed.kt === null && gust === null) {
    return refused({ code: 'wind-not-reported', at });
  }
  const greatestKt = Math.max(speed.kt ?? 0, gust?.kt ?? 0);
  if (greatestKt >= SLIP_KT) {
    return refused({ code: 'speed-out-of-range', at, values: { speedKt: greatestKt } });
  }

  const problems: Problem[] = [];
  const kept = usableGust(speed, gust);
  if (gust && !kept && speed.kt !== null && gust.kt !== null) {
    const values = { meanKt: speed.kt, gustKt: gust.kt };
    problems.push({ code: 'gust-below-mean', at, values });
  }
  if (speed.kt === 0 && !speed.above && fromDeg === 0 && kept?.kt) {
    problems.push({ code: 'gust-in-calm', at, values: { gustKt: kept.kt } });
  }
  const wind: Wind = {
    // 000 stands for no direction only without a wind; with a speed it is a careless north.
    fromDeg: fromDeg === 0 && speed.kt !== 0 ? FULL_CIRCLE_DEG : fromDeg,
    speedKt: speed.kt,
    gustKt: kept?.kt ?? null,
    sectorDeg: swing ? usableSwing(swing, problems) : null,
    variable,
    speedIsMinimum: speed.above && speed.kt !== null,
    gustIsMinimum: kept?.above === true,
  };
  if (swing && wind.sectorDeg && isOutsideSwing(wind, wind.sectorDeg)) {
    const [firstDeg, secondDeg] = wind.sectorDeg;
    const values = { fromDeg: wind.fromDeg ?? 0, firstDeg, secondDeg };
    problems.push({ code: 'mean-outside-swing', at: swing.at, values });
  }
  return { wind, problems };
}

/** The gust, unless it contradicts the mean. One "above" a number may be as strong as it likes. */
function usableGust(speed: WrittenSpeed, gust: WrittenSpeed | null): WrittenSpeed | null {
  if (gust === null || gust.kt === null) return null;
  return gust.above || gust.kt >= (speed.kt ?? 0) ? gust : null;
}

/** The swing, its directions from 1 to 360; null, with a problem, if one is above 360. */
function usableSwing({ degs, at }: WrittenSwing, problems: Problem[]): [number, number] | null {
  const deg = Math.max(...degs);
  if (deg > FULL_CIRCLE_DEG) {
    problems.push({ code: 'direction-out-of-range', at, values: { deg } });
    return null;
  }
  return [degs[0] || FULL_CIRCLE_DEG, degs[1] || FULL_CIRCLE_DEG];
}

function isOutsideSwing(wind: Wind, sectorDeg: readonly [number, number]): boolean {
  const hasDirection = wind.fromDeg !== null && wind.fromDeg !== 0;
  return hasDirection && !wind.variable && !isInSwing(wind.fromDeg, sectorDeg);
}
