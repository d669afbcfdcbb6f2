/**
 * Putting judged ends in order.
 *
 * The rules are sieves, used one after another: each keeps the ends that do best by it, and those
 * within its slack of the best. What comes through first is the winner; it is removed and the rest
 * are sieved again. So a slack is a band below the best of those left, never a chain of near ties.
 */

import type { Judged } from './judge';
import type { Reason } from './question';
import type { Rule, Situation } from './situation';

/** A rule by which some ends are better than others. */
interface Sieve {
  /** What it goes by; the better, the greater. */
  readonly worth: (end: Judged, situation: Situation) => number;
  /** How much less than the best is as good as the best. */
  readonly slack: number;
  /** The reason to give where it puts `end` above `next`. */
  readonly reason: (end: Judged, next: Judged, situation: Situation) => Reason;
}

/** Headwinds this close to the best are as good, kt. Common practice, no published source. */
const HEADWIND_BAND_KT = 2;
/** Parallels differ by a hundredth of a degree; what cannot be read off a page must not decide. */
const SHARE_SLACK = 0.005;
const METRE = 1;
const DEGREE = 1;

/** The worst of those that a value can be known for is still better than one it cannot. */
const known = (value: number | null): number => value ?? Number.NEGATIVE_INFINITY;

const shareOf = (end: Judged, { limits }: Situation): number =>
  end.crosswindWorstKt / Math.max(limits.crosswindKt, 1);

const failsLeast: Sieve = {
  worth: (end) => -end.failsBy,
  slack: SHARE_SLACK,
  reason: (end, next) => ({
    code: 'fails-least',
    share: end.failsBy,
    nextShare: next.candidate.usable ? next.failsBy : null,
  }),
};

const keepsLimits: Sieve = {
  worth: (end) => (end.failsBy === 0 ? 1 : 0),
  slack: 0,
  reason: (end, next, situation) =>
    canKeepLimits(situation) ? { code: 'within-limits' } : failsLeast.reason(end, next, situation),
};

const headwind: Sieve = {
  worth: (end) => known(end.headwindKt),
  slack: HEADWIND_BAND_KT,
  reason: (end, next) => ({
    code: 'most-headwind',
    headwindKt: end.headwindKt ?? 0,
    nextKt: next.headwindKt ?? 0,
  }),
};

const crosswindShare: Sieve = {
  worth: (end, situation) => -shareOf(end, situation),
  slack: SHARE_SLACK,
  reason: (end, next, situation) => ({
    code: 'least-crosswind-share',
    share: shareOf(end, situation),
    nextShare: shareOf(next, situation),
  }),
};

const runwayLeft: Sieve = {
  worth: (end) => known(end.leftM),
  slack: METRE,
  reason: (end, next) => ({ code: 'most-runway-left', leftM: end.leftM ?? 0, nextM: next.leftM }),
};

const longestRunway: Sieve = {
  // Where what is needed is known, the runway left has decided already.
  worth: (end) => (end.leftM === null ? end.candidate.availableM : 0),
  slack: METRE,
  reason: (end, next) => ({
    code: 'longest-runway',
    availableM: end.candidate.availableM,
    nextM: next.candidate.availableM,
  }),
};

const shortestTaxi: Sieve = {
  worth: (end) => -(end.candidate.taxiM ?? Number.POSITIVE_INFINITY),
  slack: METRE,
  reason: (end, next) => ({
    code: 'shortest-taxi',
    taxiM: end.candidate.taxiM ?? 0,
    nextM: next.candidate.taxiM,
  }),
};

const calmWindEnd: Sieve = {
  worth: (end) => (end.candidate.isCalmWindEnd ? 1 : 0),
  slack: 0,
  reason: () => ({ code: 'calm-wind-end' }),
};

const aligned: Sieve = {
  worth: (end) => -Math.abs(end.angleDeg ?? 180),
  slack: DEGREE,
  reason: (end, next) => ({
    code: 'most-aligned',
    offDeg: Math.abs(end.angleDeg ?? 180),
    nextDeg: Math.abs(next.angleDeg ?? 180),
  }),
};

const first = [keepsLimits, failsLeast];
const byLength = [runwayLeft, longestRunway];

const sievesFor: Readonly<Record<Rule, readonly Sieve[]>> = {
  'into-wind': [...first, headwind, crosswindShare, ...byLength, shortestTaxi],
  light: [...first, calmWindEnd, shortestTaxi, ...byLength],
  'from-anywhere': [...first, ...byLength, shortestTaxi],
  'direction-only': [...first, aligned, ...byLength, shortestTaxi],
};

/** Whether the wind is known well enough for any end to be called within limits. */
export const canKeepLimits = ({ unbounded, shape }: Situation): boolean =>
  !unbounded && shape.speedKt !== null;

/** The best of these, if it keeps every limit; null where none does. */
export function bestOf(judged: readonly Judged[], situation: Situation): Judged | null {
  if (!canKeepLimits(situation)) return null;
  const winner = winnerOf(judged, situation);
  return winner?.failsBy === 0 ? winner : null;
}

/** An end in its place. */
export interface Placed {
  readonly judged: Judged;
  /** The rule that put it above the next; none for the last. */
  readonly reasons: readonly Reason[];
}

/** All of these, best first. */
export function inOrder(judged: readonly Judged[], situation: Situation): Placed[] {
  const placed: Placed[] = [];
  let rest = judged;
  let winner = winnerOf(rest, situation);
  while (winner) {
    const end = winner;
    const others = rest.filter((each) => each !== end);
    const next = winnerOf(others, situation);
    placed.push({ judged: end, reasons: next ? [whatSeparates(end, next, rest, situation)] : [] });
    rest = others;
    winner = next;
  }
  return placed;
}

function winnerOf(among: readonly Judged[], situation: Situation): Judged | undefined {
  let through = among;
  for (const sieve of sievesFor[situation.rule]) {
    if (through.length < 2) break;
    through = sift(through, sieve, situation);
  }
  return through[0];
}

/** The rule by which the winner's next one fell away in the round that the winner won. */
function whatSeparates(
  winner: Judged,
  next: Judged,
  among: readonly Judged[],
  situation: Situation,
): Reason {
  let through = among;
  for (const sieve of sievesFor[situation.rule]) {
    through = sift(through, sieve, situation);
    if (through.includes(next)) continue;
    const reason = sieve.reason(winner, next, situation);
    // Among all ends, the next one outside the limits means that every other is.
    const onlyOne = reason.code === 'within-limits' && among.length === situation.candidates.length;
    return onlyOne ? { code: 'only-one-within-limits' } : reason;
  }
  return { code: 'alike' };
}

/** Those that do best by one rule, and those within its slack of the best. */
function sift(among: readonly Judged[], sieve: Sieve, situation: Situation): readonly Judged[] {
  let best = Number.NEGATIVE_INFINITY;
  for (const end of among) best = Math.max(best, sieve.worth(end, situation));
  return among.filter((end) => sieve.worth(end, situation) >= best - sieve.slack);
}
