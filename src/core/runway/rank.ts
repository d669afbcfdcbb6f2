/** Ranking the ends of a field in today's wind. */

import { degreesOf, toMagnetic } from '../angle';
import { crosswindKt } from './components';
import { holdsUntil } from './holds';
import { exceeds, type Judged, judge } from './judge';
import { bestOf, inOrder, type Placed } from './order';
import type { EndsQuestion, NoBest, RankedEnd, RankedEnds, Shortfall } from './question';
import { type Situation, situationOf } from './situation';

/**
 * The ends of a field, best first, each with its wind, what it falls short of and why it stands
 * where it does; and how firm the best is.
 *
 * - Ends within every limit come first. With 5 kt or more they are ordered by steady headwind; all
 *   within 2 kt of the best are settled by the smaller share of the crosswind limit, then by runway
 *   left over, then by taxi distance. FAA JO 7110.65, 3-5-1, for the wind; the band is common
 *   practice, no published source.
 * - In light wind: the field's calm-wind end, else the shortest taxi, else the most runway left.
 * - With a wind from anywhere (`VRB`), runway left over decides.
 * - Ends outside limits follow by how little they fail; those that cannot be used come last.
 * - There is no best where none is within limits, where a speed is only known to be above a number,
 *   and where no speed was reported.
 */
export function rankRunwayEnds(question: EndsQuestion): RankedEnds {
  const situation = situationOf(question);
  const judged = judge(situation, situation.from);
  const ends = inOrder(judged, situation).map((placed) => rankedEnd(placed, situation, question));
  const winner = bestOf(judged, situation);
  return {
    best: winner ? (ends[0] ?? null) : null,
    because: winner ? null : whyNoBest(situation),
    ends,
    holdsUntil:
      winner && situation.from && situation.rule === 'into-wind'
        ? holdsUntil(winner, situation.from, situation, question)
        : null,
    light: situation.rule === 'light',
  };
}

function whyNoBest({ shape, unbounded }: Situation): NoBest {
  if (shape.speedKt === null) return 'speed-not-known';
  return unbounded ? 'speed-unbounded' : 'none-within-limits';
}

function rankedEnd(
  { judged, reasons }: Placed,
  situation: Situation,
  question: EndsQuestion,
): RankedEnd {
  const { end, availableM } = judged.candidate;
  const { speedKt } = situation.shape;
  const shortfalls = shortfallsOf(judged, situation, question);
  return {
    designator: end.designator,
    headingTrueDeg: degreesOf(end.heading),
    headingMagneticDeg: degreesOf(toMagnetic(end.heading, question.variationDeg)),
    headwindKt: judged.headwindKt,
    headwindLeastKt: judged.headwindLeastKt,
    crosswindKt:
      speedKt === null || judged.angleDeg === null ? null : crosswindKt(speedKt, judged.angleDeg),
    crosswindWorstKt: speedKt === null ? null : judged.crosswindWorstKt,
    tailwindWorstKt: speedKt === null ? null : judged.tailwindWorstKt,
    withinLimits: shortfalls.length === 0,
    shortfalls,
    reasons,
    availableM,
    leftM: judged.leftM,
  };
}

/** Everything for which an end is not within the limits given: what rules it out first. */
function shortfallsOf(
  { candidate, crosswindWorstKt, tailwindWorstKt, neededM }: Judged,
  { shape, limits, unbounded }: Situation,
  { purpose }: EndsQuestion,
): Shortfall[] {
  const { closed } = candidate.end.given;
  const { availableM } = candidate;
  /** How much of the strongest wind blows without the gust. */
  const steadyShare = (shape.speedKt ?? 0) / (shape.strongestKt || 1);
  const overLimit = (code: 'crosswind' | 'tailwind', worstKt: number, limitKt: number) => {
    const gust = !exceeds(worstKt * steadyShare, limitKt);
    return exceeds(worstKt, limitKt) ? [{ code, worstKt, limitKt, gust }] : [];
  };
  const short: Shortfall[] = [];
  if (closed !== undefined) short.push({ code: 'closed', why: closed });
  if (availableM === 0) short.push({ code: 'not-for-purpose', purpose });
  short.push(...overLimit('tailwind', tailwindWorstKt, limits.tailwindKt));
  short.push(...overLimit('crosswind', crosswindWorstKt, limits.crosswindKt));
  if (availableM > 0 && neededM !== null && exceeds(neededM, availableM)) {
    short.push({ code: 'length', neededM, availableM });
  }
  if (unbounded) short.push({ code: 'speed-unbounded' });
  if (shape.speedKt === null) short.push({ code: 'speed-not-known' });
  return short;
}
