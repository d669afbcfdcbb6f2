/** Ranking the ends of a field in today's wind. */

import type { Designator } from '../airfield/field';
import { degreesOf, toMagnetic } from '../angle';
import { holdsUntil } from './holds';
import {
  asked,
  type Blow,
  blowFrom,
  cannotGoOn,
  crosswindKt,
  crosswindWorstKt,
  exceeds,
  gustSpreadKt,
  headwindKt,
  headwindLeastKt,
  leftM,
  neededOf,
  overheats,
  tailwindWorstKt,
  tearsTyres,
  tightest,
} from './judge';
import { type Needs, type NoNeeds, needsNothing } from './needs';
import { bestIn, inOrder, type PlacedEnd } from './order';
import type { EndsQuestion, NoBestReason, RankedEnd, RankedEnds, Shortfall } from './question';
import { type Candidate, type Situation, situationOf } from './situation';

/**
 * The ends of a field, best first, each with its wind, what it falls short of and why it stands
 * where it does; and how firm the best is.
 *
 * - Ends within every limit come first. At 5 kt or more they are ordered by steady headwind; those
 *   within 2 kt of the best by the smaller share of the crosswind limit, then by runway left over,
 *   then by taxi distance. FAA JO 7110.65, 3-5-1, for the wind; the band is common practice, no
 *   published source.
 * - Ends the field prefers come before all these while the scheme and its wind allow.
 * - In light wind: the field's calm-wind end, else the most runway left, else the shortest taxi. If
 *   all that ties, the greater headwind after all.
 * - In a wind from anywhere (`VRB`), runway left over decides.
 * - Ends outside limits follow by how little they fail; unusable ones come last.
 * - There is no best if none is within limits, if a speed is only known to be above a number, or if
 *   no speed was reported.
 */
export function rankRunwayEnds(question: EndsQuestion): RankedEnds {
  const situation = situationOf(question);
  const { from, rule } = situation;
  const blow = blowFrom(from, situation);
  const ends = inOrder(blow).map((placed) => rankedEnd(placed, blow, question));
  const best = bestIn(blow);
  return {
    best: best ? (ends[0] ?? null) : null,
    because: best ? null : whyNoBest(situation),
    ends,
    holdsUntil:
      best && from !== null && rule === 'into-wind'
        ? holdsUntil(best, from, situation, question)
        : null,
    light: rule === 'light',
  };
}

/** One end as {@link rankRunwayEnds} judges it, without its place; null if the field has none. */
export function judgeEnd(question: EndsQuestion, designator: Designator): RankedEnd | null {
  const situation = situationOf(question);
  const end = situation.candidates.find((candidate) => candidate.designator === designator);
  const blow = blowFrom(situation.from, situation);
  return end === undefined ? null : rankedEnd({ end, reasons: [] }, blow, question);
}

function whyNoBest({ shape, unbounded }: Situation): NoBestReason {
  if (shape.speedKt === null) return 'speed-not-known';
  return unbounded ? 'speed-unbounded' : 'none-within-limits';
}

function rankedEnd({ end, reasons }: PlacedEnd, blow: Blow, question: EndsQuestion): RankedEnd {
  const { heading, designator } = end;
  const speedKnown = blow.situation.shape.speedKt !== null;
  const shortfalls = shortfallsOf(end, blow, question);
  return {
    designator,
    headingTrueDeg: degreesOf(heading),
    headingMagneticDeg: degreesOf(toMagnetic(heading, question.variationDeg)),
    headwindKt: headwindKt(end, blow),
    headwindLeastKt: headwindLeastKt(end, blow),
    crosswindKt: crosswindKt(end, blow),
    crosswindWorstKt: speedKnown ? crosswindWorstKt(end, blow) : null,
    tailwindWorstKt: speedKnown ? tailwindWorstKt(end, blow) : null,
    withinLimits: shortfalls.length === 0,
    shortfalls,
    reasons,
    availableM: end.availableM,
    tightest: tightest(end, blow),
    leftM: leftM(end, blow),
  };
}

/** Everything that puts an end outside the limits given; what rules it out comes first. */
function shortfallsOf(end: Candidate, blow: Blow, { purpose }: EndsQuestion): Shortfall[] {
  const { shape, limits, unbounded } = blow.situation;
  const { availableM } = end;
  const { closed } = end.given;
  const needed = availableM > 0 ? neededOf(end, blow) : null;
  /** The share of the strongest wind that blows without the gust. */
  const steadyShare = (shape.speedKt ?? 0) / (shape.strongestKt || 1);
  const over = (code: 'crosswind' | 'tailwind', worstKt: number, limitKt: number): Shortfall[] => {
    const gust = !exceeds(worstKt * steadyShare, limitKt);
    return exceeds(worstKt, limitKt) ? [{ code, worstKt, limitKt, gust }] : [];
  };
  const short: Shortfall[] = [];
  if (closed !== undefined) short.push({ code: 'closed', why: closed });
  if (end.closedByReport) short.push({ code: 'closed-by-report' });
  if (end.closedToday) short.push({ code: 'closed-today' });
  if (end.narrow !== null) short.push({ code: 'narrow', ...end.narrow });
  if (end.dark) short.push({ code: 'no-lights' });
  if (availableM === 0) short.push({ code: 'not-for-purpose', purpose });
  short.push(...over('tailwind', tailwindWorstKt(end, blow), limits.tailwindKt));
  short.push(...over('crosswind', crosswindWorstKt(end, blow), limits.crosswindKt));
  const spreadKt = gustSpreadKt(blow);
  if (exceeds(spreadKt, limits.gustSpreadKt)) {
    short.push({ code: 'gust-spread', spreadKt, limitKt: limits.gustSpreadKt });
  }
  if (needed !== null) short.push(...lengthShortfalls(end, needed));
  if (unbounded) short.push({ code: 'speed-unbounded' });
  if (shape.speedKt === null) short.push({ code: 'speed-not-known' });
  return short;
}

/** What the end falls short of in lengths, tyres and engine failure. */
function lengthShortfalls(end: Candidate, needed: Needs | NoNeeds): Shortfall[] {
  if (needsNothing(needed)) return [{ code: 'no-length', because: needed.cannot }];
  const short: Shortfall[] = asked(end, needed)
    .filter(({ neededM, availableM }) => exceeds(neededM, availableM))
    .map((one) => ({ code: 'length', ...one }));
  const { tyres, brakes, goOn } = needed;
  if (tyres !== undefined && tearsTyres(needed)) short.push({ code: 'tyres', ...tyres });
  if (brakes !== undefined && overheats(needed)) short.push({ code: 'brake-energy', ...brakes });
  if (goOn !== undefined && cannotGoOn(needed)) {
    const lowestKt = Number.isFinite(goOn.lowestKt) ? goOn.lowestKt : null;
    short.push({ code: 'go-on', lowestKt, stopKt: goOn.stopKt });
  }
  return short;
}
