/** Judging the ends in the wind from one direction: numbers only, as it is done for every degree. */

import { relativeDeg, type TrueDeg } from '../angle';
import { headwindKt, leastAlong, mostAcross } from './components';
import type { WindLimits } from './question';
import type { Candidate, Situation } from './situation';

/** One end in the wind from one direction. */
export interface Judged {
  readonly candidate: Candidate;
  /** From the runway's heading clockwise to where the wind comes from, degrees, −180 to 180; null from anywhere. */
  readonly angleDeg: number | null;
  /** Steady wind along the runway at the reported direction, kt; null when direction or speed is not known. */
  readonly headwindKt: number | null;
  /** The least of it in the envelope, kt; null when the speed is not known. */
  readonly headwindLeastKt: number | null;
  /** Greatest crosswind and tailwind in the envelope, gust included, kt; 0 when the speed is not known. */
  readonly crosswindWorstKt: number;
  readonly tailwindWorstKt: number;
  readonly neededM: number | null;
  readonly leftM: number | null;
  /** 0 when it keeps every limit, else by how large a share it exceeds one; Infinity when not usable. */
  readonly failsBy: number;
}

/** Rounding in sines must not carry a wind over a limit that it only reaches, kt. */
const ROUNDING_KT = 1e-9;

/** A value is over its limit, rounding aside. */
export const exceeds = (value: number, limit: number): boolean => value > limit + ROUNDING_KT;

/** Every end in the wind from `from`, in the order of their designators; null is from anywhere. */
export function judge(situation: Situation, from: TrueDeg | null): Judged[] {
  return situation.candidates.map((candidate) => judgeEnd(situation, candidate, from));
}

function judgeEnd(situation: Situation, candidate: Candidate, from: TrueDeg | null): Judged {
  const { speedKt, strongestKt, middleDeg, halfDeg } = situation.shape;
  const angleDeg = from === null ? null : relativeDeg(from, candidate.end.heading);
  const middle = fold((angleDeg ?? 0) + middleDeg);
  const along = leastAlong(middle, halfDeg);
  const headwindLeastKt = speedKt === null ? null : speedKt * along + 0;
  const crosswindWorstKt = (strongestKt ?? 0) * mostAcross(middle, halfDeg);
  const tailwindWorstKt = (strongestKt ?? 0) * Math.max(0, -along);
  const neededM = situation.lengthNeededM(candidate.end.designator, headwindLeastKt);
  return {
    candidate,
    angleDeg,
    headwindKt: speedKt === null || angleDeg === null ? null : headwindKt(speedKt, angleDeg),
    headwindLeastKt,
    crosswindWorstKt,
    tailwindWorstKt,
    neededM,
    leftM: neededM === null ? null : candidate.availableM - neededM,
    failsBy: failsBy(candidate, situation.limits, crosswindWorstKt, tailwindWorstKt, neededM),
  };
}

/** An angle beyond a half turn either way, as the angle from 0 to 180 with the same cosine. */
function fold(deg: number): number {
  const size = Math.abs(deg);
  return size > 180 ? 360 - size : size;
}

function failsBy(
  candidate: Candidate,
  limits: WindLimits,
  crosswindWorstKt: number,
  tailwindWorstKt: number,
  neededM: number | null,
): number {
  if (!candidate.usable) return Number.POSITIVE_INFINITY;
  return Math.max(
    excessShare(crosswindWorstKt, limits.crosswindKt),
    excessShare(tailwindWorstKt, limits.tailwindKt),
    excessShare(neededM ?? 0, candidate.availableM),
  );
}

/** By how large a share a value exceeds its limit; a limit under 1 counts as 1, to have a share of it. */
const excessShare = (value: number, limit: number): number =>
  exceeds(value, limit) ? (value - limit) / Math.max(limit, 1) : 0;
