/**
 * Putting the ends in order.
 *
 * The rules are sieves, applied in turn: each keeps the ends that do best by it, and those within
 * its slack of the best. The first to come through is the winner; it is removed and the rest are
 * sieved again. So a slack is a band below the best of those left, never a chain of near ties.
 */

import { relativeDeg } from '../angle';
import {
  type Blow,
  crosswindShare,
  failsBy,
  headwindKt,
  keepsLimits,
  leftM,
  preferredPlace,
  ROUNDING,
} from './judge';
import type { Reason } from './question';
import type { Candidate, Rule, Situation } from './situation';

/** A rule by which some ends are better than others. */
export interface Sieve {
  /** What it goes by; greater is better. */
  readonly worth: (end: Candidate, blow: Blow) => number;
  /** How much less than the best counts as equal to the best. */
  readonly slack: number;
  /** The reason to give when it puts `end` above `next`. */
  readonly reason: (end: Candidate, next: Candidate, blow: Blow) => Reason;
}

/** Headwinds this close to the best count as equal, kt. Common practice, no published source. */
const HEADWIND_BAND_KT = 2;
/** Parallels differ by a hundredth of a degree; what can't be read off a page must not decide. */
const SHARE_SLACK = 0.005;
const METRE = 1;
const DEGREE = 1;

/** An unknown is worth less than anything known. */
const known = (value: number | null): number => value ?? Number.NEGATIVE_INFINITY;

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** Orders the ends that fail. */
export const failsLeast: Sieve = {
  worth: (end, blow) => -failsBy(end, blow),
  slack: SHARE_SLACK,
  reason: (end, next, blow) => ({
    code: 'fails-least',
    share: failsBy(end, blow),
    nextShare: finite(failsBy(next, blow)),
  }),
};

/** Before wind and calm-wind end: both yield to runway-use programmes. FAA JO 7110.65, 3-5-1. */
const preferredFirst: Sieve = {
  worth: (end, blow) => -preferredPlace(end, blow),
  slack: 0,
  reason: (end, next, blow) => {
    const nextPlace = preferredPlace(next, blow);
    return {
      code: 'preferred',
      place: preferredPlace(end, blow),
      nextPlace: Number.isFinite(nextPlace) ? nextPlace : null,
    };
  },
};

const mostHeadwind: Sieve = {
  worth: (end, blow) => known(headwindKt(end, blow)),
  slack: HEADWIND_BAND_KT,
  reason: (end, next, blow) => ({
    code: 'most-headwind',
    headwindKt: headwindKt(end, blow) ?? 0,
    nextKt: headwindKt(next, blow) ?? 0,
  }),
};

const leastCrosswindShare: Sieve = {
  worth: (end, blow) => -crosswindShare(end, blow),
  slack: SHARE_SLACK,
  reason: (end, next, blow) => ({
    code: 'least-crosswind-share',
    share: crosswindShare(end, blow),
    nextShare: crosswindShare(next, blow),
  }),
};

const mostRunwayLeft: Sieve = {
  worth: (end, blow) => known(leftM(end, blow)),
  slack: METRE,
  reason: (end, next, blow) => ({
    code: 'most-runway-left',
    leftM: leftM(end, blow) ?? 0,
    nextM: leftM(next, blow),
  }),
};

const longestRunway: Sieve = {
  // If the need is known, the runway left over has already decided.
  worth: (end, blow) => (leftM(end, blow) === null ? end.availableM : 0),
  slack: METRE,
  reason: (end, next) => ({
    code: 'longest-runway',
    availableM: end.availableM,
    nextM: next.availableM,
  }),
};

const shortestTaxi: Sieve = {
  worth: (end) => -(end.taxiM ?? Number.POSITIVE_INFINITY),
  slack: METRE,
  reason: (end, next) => ({ code: 'shortest-taxi', taxiM: end.taxiM ?? 0, nextM: next.taxiM }),
};

const calmWindEnd: Sieve = {
  worth: (end) => (end.isCalmWindEnd ? 1 : 0),
  slack: 0,
  reason: () => ({ code: 'calm-wind-end' }),
};

/** How far a runway points off the wind, degrees; 180 if the wind is from anywhere. */
export const offDeg = ({ heading }: Candidate, { situation: { from } }: Blow): number =>
  from === null ? 180 : Math.abs(relativeDeg(from, heading));

const mostAligned: Sieve = {
  worth: (end, blow) => -offDeg(end, blow),
  slack: DEGREE,
  reason: (end, next, blow) => ({
    code: 'most-aligned',
    offDeg: offDeg(end, blow),
    nextDeg: offDeg(next, blow),
  }),
};

/** The last tie-breaker: half a knot is as little as one can read off a page. */
const anyHeadwind: Sieve = { ...mostHeadwind, slack: 0.5 };

const byLength = [mostRunwayLeft, longestRunway];

const sievesFor: Readonly<Record<Rule, readonly Sieve[]>> = {
  'into-wind': [mostHeadwind, leastCrosswindShare, ...byLength, shortestTaxi, anyHeadwind],
  light: [calmWindEnd, ...byLength, shortestTaxi, anyHeadwind],
  'from-anywhere': [...byLength, shortestTaxi],
  'direction-only': [mostAligned, ...byLength, shortestTaxi],
};

/** The rules of a situation, in the order they apply. */
export const sievesOf = ({ rule, preferred }: Situation): readonly Sieve[] =>
  preferred ? [preferredFirst, ...sievesFor[rule]] : sievesFor[rule];

/** Whether the wind is known well enough for any end to be called within limits. */
export const canKeepLimits = ({ unbounded, shape }: Situation): boolean =>
  !unbounded && shape.speedKt !== null;

/** The best of the ends that keep every limit; null if none does. */
export function bestIn(blow: Blow): Candidate | null {
  const { situation } = blow;
  if (!canKeepLimits(situation)) return null;
  const within = situation.candidates.filter((end) => keepsLimits(end, blow));
  return winnerOf(within, sievesOf(situation), blow) ?? null;
}

export interface PlacedEnd {
  readonly end: Candidate;
  /** The rule that put it above the next; none for the last. */
  readonly reasons: readonly Reason[];
}

/** All ends, best first: those that keep every limit, then the others by how little they fail. */
export function inOrder(blow: Blow): PlacedEnd[] {
  const { candidates } = blow.situation;
  const sieves = sievesOf(blow.situation);
  const within = candidates.filter((end) => keepsLimits(end, blow));
  const failing = candidates.filter((end) => !within.includes(end));
  const upper = sorted(within, sieves, blow);
  const lower = sorted(failing, [failsLeast, ...sieves], blow);
  const last = upper.pop();
  const next = lower[0];
  if (!last) return lower;
  const reasons = next ? [whyAboveFailing(last.end, next.end, within.length, blow)] : [];
  return [...upper, { end: last.end, reasons }, ...lower];
}

function whyAboveFailing(end: Candidate, next: Candidate, within: number, blow: Blow): Reason {
  if (!canKeepLimits(blow.situation)) return failsLeast.reason(end, next, blow);
  return { code: within === 1 ? 'only-one-within-limits' : 'within-limits' };
}

function sorted(ends: readonly Candidate[], sieves: readonly Sieve[], blow: Blow): PlacedEnd[] {
  const placed: PlacedEnd[] = [];
  let rest = ends;
  let winner = winnerOf(rest, sieves, blow);
  while (winner) {
    const end = winner;
    const others = rest.filter((other) => other !== end);
    const next = winnerOf(others, sieves, blow);
    placed.push({ end, reasons: next ? [whatSeparates(end, next, rest, sieves, blow)] : [] });
    rest = others;
    winner = next;
  }
  return placed;
}

function winnerOf(
  ends: readonly Candidate[],
  sieves: readonly Sieve[],
  blow: Blow,
): Candidate | undefined {
  let through = ends;
  for (const sieve of sieves) {
    if (through.length < 2) break;
    through = sift(through, sieve, blow);
  }
  return through[0];
}

/** The rule that eliminated `next` in the round `winner` won. */
function whatSeparates(
  winner: Candidate,
  next: Candidate,
  ends: readonly Candidate[],
  sieves: readonly Sieve[],
  blow: Blow,
): Reason {
  let through = ends;
  for (const sieve of sieves) {
    through = sift(through, sieve, blow);
    if (!through.includes(next)) return sieve.reason(winner, next, blow);
  }
  return { code: 'alike' };
}

/** The ends that do best by one rule, and those within its slack of the best. */
export function sift(
  ends: readonly Candidate[],
  { worth, slack }: Pick<Sieve, 'worth' | 'slack'>,
  blow: Blow,
): readonly Candidate[] {
  let enough = Number.NEGATIVE_INFINITY;
  for (const end of ends) enough = Math.max(enough, worth(end, blow) - slack - ROUNDING);
  return ends.filter((end) => worth(end, blow) >= enough);
}
