/** How firm a choice is: how far the wind can turn, and how strong it can get. */

import { degreesOf, type TrueDeg, trueDeg } from '../angle';
import { clockwiseDeg, envelopeOf } from '../weather/envelope';
import {
  type Blow,
  blowFrom,
  crosswindWorstKt,
  exceeds,
  gustSpreadKt,
  tailwindWorstKt,
} from './judge';
import { bestIn } from './order';
import type { EndsQuestion, HoldsTo, HoldsUntil } from './question';
import { type Candidate, inOwnNorth, type Situation } from './situation';

/** Reports are rounded to 10°, so 5° or less may already be gone. */
const CLOSE_DEG = 5;

/** How firm `best` is in the wind from `from`. */
export function holdsUntil(
  best: Candidate,
  from: TrueDeg,
  situation: Situation,
  question: EndsQuestion,
): HoldsUntil {
  const left = holdsTo(best, from, -1, situation, question);
  // An end that stays best all the way round one way does so the other way.
  const right = left === 'never' ? left : holdsTo(best, from, 1, situation, question);
  const swing = swingOf(question);
  const swings = leaves(left, swing.leftDeg) || leaves(right, swing.rightDeg);
  return {
    left,
    right,
    ...breakingSpeed(best, blowFrom(from, situation)),
    swings,
    close: swings || isClose(left) || isClose(right),
  };
}

/** How far the report itself swings to either side of its mean, degrees. */
function swingOf({ wind }: EndsQuestion): { readonly leftDeg: number; readonly rightDeg: number } {
  const envelope = envelopeOf(wind);
  if (envelope.kind !== 'sector') return { leftDeg: 0, rightDeg: 0 };
  const leftDeg = clockwiseDeg(envelope.fromDeg, wind.fromDeg ?? 0);
  return { leftDeg, rightDeg: envelope.widthDeg - leftDeg };
}

/** Whether the swing goes beyond where the best end changes. */
const leaves = (side: HoldsTo, swingDeg: number): boolean =>
  side !== 'never' && swingDeg > side.spareDeg;

const isClose = (side: HoldsTo): boolean => side !== 'never' && side.spareDeg <= CLOSE_DEG;

/** Turns the wind a whole degree at a time, `step` 1 clockwise or −1, until the best end changes. */
function holdsTo(
  best: Candidate,
  from: TrueDeg,
  step: 1 | -1,
  situation: Situation,
  question: EndsQuestion,
): HoldsTo {
  const turned = (deg: number) => trueDeg(degreesOf(from) + step * deg);
  for (let deg = 1; deg < 360; deg++) {
    const now = bestIn(blowFrom(turned(deg), situation));
    if (now === best) continue;
    return {
      lastDeg: inOwnNorth(turned(deg - 1), question),
      spareDeg: deg - 1,
      // biome-ignore lint/suspicious/noThenProperty: it holds a designator or null, never a function.
      then: now?.designator ?? null,
    };
  }
  return 'never';
}

/**
 * The steady speed at which today's direction reaches a wind limit. Every component grows with the
 * speed, so the wind can grow by the ratio of limit to worst component; the gust grows with it.
 */
function breakingSpeed(best: Candidate, blow: Blow): Pick<HoldsUntil, 'speedKt' | 'limit'> {
  const { shape, limits } = blow.situation;
  let first: Pick<HoldsUntil, 'speedKt' | 'limit'> = { speedKt: null, limit: null };
  const reach = (limit: HoldsUntil['limit'], limitKt: number, worstKt: number) => {
    if (!shape.speedKt || !exceeds(worstKt, 0)) return;
    const speedKt = (shape.speedKt * limitKt) / worstKt;
    if (speedKt < (first.speedKt ?? Number.POSITIVE_INFINITY)) first = { speedKt, limit };
  };
  reach('crosswind', limits.crosswindKt, crosswindWorstKt(best, blow));
  reach('tailwind', limits.tailwindKt, tailwindWorstKt(best, blow));
  reach('gust-spread', limits.gustSpreadKt, gustSpreadKt(blow));
  return first;
}
