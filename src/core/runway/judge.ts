/**
 * Judging an end in the wind from one direction: one function per quantity, so that the ring, which
 * asks at every degree, computes no more than finding the best takes.
 */

import { degreesOf, type TrueDeg, trueDeg } from '../angle';
import { across, along, type Bearing, bearingOf, leastAlong, mostAcross } from './components';
import { type Needs, type NoNeeds, needsNothing } from './needs';
import type { LengthAsked } from './question';
import { type Candidate, lengthOf, type Situation } from './situation';

/** The wind of a situation, from one direction. */
export interface Blow {
  readonly situation: Situation;
  /** The reported direction; null if from anywhere. */
  readonly mean: Bearing | null;
  /** The middle of the envelope. */
  readonly middle: Bearing;
}

/** The wind of a situation from any direction, reported or not; null is from anywhere. */
export function blowFrom(from: TrueDeg | null, situation: Situation): Blow {
  const turn = from === null ? 0 : degreesOf(from);
  const mean = from === null ? null : bearingOf(from);
  const { middleDeg } = situation.shape;
  // A wind that doesn't swing is its own middle; the ring asks for it at every degree.
  const middle = mean !== null && middleDeg === 0 ? mean : bearingOf(trueDeg(turn + middleDeg));
  return { situation, mean, middle };
}

/** A component of the steady wind in the reported direction, kt; null if either is unknown. */
const steadyKt =
  (of1Kt: typeof along) =>
  ({ bearing }: Candidate, { mean, situation }: Blow): number | null => {
    const { speedKt } = situation.shape;
    return speedKt === null || mean === null ? null : component(speedKt, of1Kt(mean, bearing));
  };

/** Steady headwind in the reported direction, kt; null if direction or speed is unknown. */
export const headwindKt = steadyKt(along);

/** Steady crosswind in that direction, kt, positive from the right; null likewise. */
export const crosswindKt = steadyKt(across);

/** The least headwind of a wind of 1 kt in the envelope. */
const leastOf1Kt = ({ bearing }: Candidate, { middle, situation }: Blow): number =>
  leastAlong(along(middle, bearing), across(middle, bearing), situation.shape.half);

/** The least steady headwind in the envelope, kt; null when the speed is not known. */
export function headwindLeastKt(candidate: Candidate, blow: Blow): number | null {
  const { speedKt } = blow.situation.shape;
  return speedKt === null ? null : component(speedKt, leastOf1Kt(candidate, blow));
}

/** Greatest crosswind in the envelope, gust included, kt; 0 when the speed is not known. */
export function crosswindWorstKt({ bearing }: Candidate, { middle, situation }: Blow): number {
  const { strongestKt, half } = situation.shape;
  const of1Kt = mostAcross(along(middle, bearing), across(middle, bearing), half);
  return (strongestKt ?? 0) * of1Kt;
}

/** Greatest tailwind in the envelope, gust included, kt; 0 when the speed is not known. */
export function tailwindWorstKt(candidate: Candidate, blow: Blow): number {
  const { strongestKt } = blow.situation.shape;
  return (strongestKt ?? 0) * Math.max(0, -leastOf1Kt(candidate, blow));
}

/** How much the gust exceeds the steady wind, kt; 0 if there is none, or no speed is known. */
export const gustSpreadKt = ({ situation: { shape } }: Blow): number =>
  (shape.strongestKt ?? 0) - (shape.speedKt ?? 0);

/** The place of an end among the preferred, from 1; Infinity if it has none in this wind. */
export function preferredPlace(candidate: Candidate, blow: Blow): number {
  const { preferred } = blow.situation;
  const index = preferred?.ends.indexOf(candidate.designator) ?? -1;
  return !preferred ||
    index < 0 ||
    exceeds(crosswindWorstKt(candidate, blow), preferred.maxCrosswindKt) ||
    exceeds(tailwindWorstKt(candidate, blow), preferred.maxTailwindKt)
    ? Number.POSITIVE_INFINITY
    : index + 1;
}

/** What the end needs; null if unknown, or if nobody asked. */
export function neededOf(candidate: Candidate, blow: Blow): Needs | NoNeeds | null {
  const { lengthNeededM, purpose } = blow.situation;
  if (lengthNeededM === null) return null;
  const leastKt = headwindLeastKt(candidate, blow);
  const reportedKt = headwindKt(candidate, blow);
  const needed = lengthNeededM(candidate.designator, leastKt, reportedKt, gustSpreadKt(blow));
  if (typeof needed !== 'number') return needed;
  return { lengthsM: { [lengthOf(purpose)]: needed } };
}

const DECLARED = ['tora', 'toda', 'asda', 'lda'] as const;

export function asked({ declaredM }: Candidate, { lengthsM }: Needs): LengthAsked[] {
  const all: LengthAsked[] = [];
  for (const of of DECLARED) {
    const neededM = lengthsM[of];
    if (neededM !== undefined) all.push({ of, neededM, availableM: declaredM[of] });
  }
  return all;
}

/** Faster over the ground than the tyres allow. */
export const tearsTyres = ({ tyres }: Needs): boolean =>
  tyres !== undefined && exceeds(tyres.groundKt, tyres.limitKt);

/** More for the brakes to take up than they may. */
export const overheats = ({ brakes }: Needs): boolean =>
  brakes !== undefined && exceeds(brakes.energyMJ, brakes.limitMJ);

/** With an engine out there are speeds from which it can neither stop nor go on. */
export const cannotGoOn = ({ goOn }: Needs): boolean =>
  goOn !== undefined && exceeds(goOn.lowestKt, goOn.stopKt);

/** The declared length with least to spare; null if the need is unknown or nothing is enough. */
export function tightest(candidate: Candidate, blow: Blow): LengthAsked | null {
  const needed = neededOf(candidate, blow);
  if (needed === null || needsNothing(needed)) return null;
  const left = (one: LengthAsked) => one.availableM - one.neededM;
  let least: LengthAsked | null = null;
  for (const one of asked(candidate, needed)) {
    if (least === null || left(one) < left(least)) least = one;
  }
  return least;
}

/** What is left over of it, metres, negative if too short; null as {@link tightest}. */
export function leftM(candidate: Candidate, blow: Blow): number | null {
  const least = tightest(candidate, blow);
  return least === null ? null : least.availableM - least.neededM;
}

/** Whether the end offers what is needed. */
function hasLength(candidate: Candidate, blow: Blow): boolean {
  const needed = neededOf(candidate, blow);
  if (needed === null) return true;
  if (needsNothing(needed)) return false;
  if (tearsTyres(needed) || overheats(needed) || cannotGoOn(needed)) return false;
  return asked(candidate, needed).every(({ neededM, availableM }) => !exceeds(neededM, availableM));
}

/** The share of the crosswind limit the worst crosswind takes; above 1 is too much. */
export const crosswindShare = (candidate: Candidate, blow: Blow): number =>
  crosswindWorstKt(candidate, blow) / Math.max(blow.situation.limits.crosswindKt, LEAST_WHOLE);

/**
 * Whether the end is usable and keeps every limit: all in one go, because the ring asks for every
 * end at every degree.
 */
export function keepsLimits(candidate: Candidate, blow: Blow): boolean {
  if (!candidate.usable) return false;
  const { middle, situation } = blow;
  const { limits, shape } = situation;
  const strongestKt = shape.strongestKt ?? 0;
  const alongKt = along(middle, candidate.bearing);
  const acrossKt = across(middle, candidate.bearing);
  const least = leastAlong(alongKt, acrossKt, shape.half);
  if (exceeds(strongestKt * -least, limits.tailwindKt)) return false;
  if (exceeds(strongestKt * mostAcross(alongKt, acrossKt, shape.half), limits.crosswindKt)) {
    return false;
  }
  if (exceeds(gustSpreadKt(blow), limits.gustSpreadKt)) return false;
  return hasLength(candidate, blow);
}

/** By what share the end exceeds the limit it exceeds most; 0 for none, Infinity if unusable. */
export function failsBy(candidate: Candidate, blow: Blow): number {
  const { limits } = blow.situation;
  if (!candidate.usable) return Number.POSITIVE_INFINITY;
  return Math.max(
    excessShare(crosswindWorstKt(candidate, blow), limits.crosswindKt),
    excessShare(tailwindWorstKt(candidate, blow), limits.tailwindKt),
    excessShare(gustSpreadKt(blow), limits.gustSpreadKt),
    lengthExcess(candidate, blow),
  );
}

/** The same for lengths, tyres, brakes and going on; Infinity if no length is enough, or it can't go on. */
function lengthExcess(candidate: Candidate, blow: Blow): number {
  const needed = neededOf(candidate, blow);
  if (needed === null) return 0;
  if (needsNothing(needed)) return Number.POSITIVE_INFINITY;
  const { tyres, brakes, goOn } = needed;
  return Math.max(
    ...asked(candidate, needed).map(({ neededM, availableM }) => excessShare(neededM, availableM)),
    tyres === undefined ? 0 : excessShare(tyres.groundKt, tyres.limitKt),
    brakes === undefined ? 0 : excessShare(brakes.energyMJ, brakes.limitMJ),
    goOn === undefined ? 0 : excessShare(goOn.lowestKt, goOn.stopKt),
  );
}

/** Anything below this is rounding error of sines and products, and decides nothing. */
export const ROUNDING = 1e-9;

/** Whether a value is over its limit. Rounding must not push it over one that it only reaches. */
export const exceeds = (value: number, limit: number): boolean => value > limit + ROUNDING;

/** A limit below 1 counts as 1 when a share of it is taken, because 0 has no shares. */
const LEAST_WHOLE = 1;

/** By what share a value exceeds its limit; 0 if it doesn't. */
const excessShare = (value: number, limit: number): number =>
  exceeds(value, limit) ? (value - limit) / Math.max(limit, LEAST_WHOLE) : 0;

/** Adding 0 turns the −0 of a calm into 0, which would otherwise show its sign. */
const component = (speedKt: number, of1Kt: number): number => speedKt * of1Kt + 0;
