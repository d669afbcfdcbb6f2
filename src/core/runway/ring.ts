/** The runway ring: the best end for every direction the wind might come from. */

import type { Designator, Field } from '../airfield/field';
import { trueDeg } from '../angle';
import { blowFrom } from './judge';
import { bestIn } from './order';
import type { EndsQuestion } from './question';
import { type Situation, situationOf } from './situation';

/** The best end for a wind from each whole degree true, from 0 to 359; null if none is. */
export type RunwayRing = readonly (Designator | null)[];

/**
 * For every whole degree true the wind might come from, at its strength and with its swing, the end
 * that would be best: what {@link rankRunwayEnds} would answer there. It doesn't depend on today's
 * direction, and is the same array while nothing else changes. Null if there is nothing to turn: in
 * a calm, in a wind from anywhere, and if no speed was reported.
 */
export function runwayRing(question: EndsQuestion): RunwayRing | null {
  const situation = situationOf(question);
  if (situation.from === null || !situation.shape.strongestKt) return null;
  const asked = allButDirection(question, situation);
  const before = lastRings.get(question.field);
  if (before?.asked.every((value, i) => value === asked[i])) return before.ring;
  const ring = Array.from({ length: 360 }, (_, deg) => {
    return bestIn(blowFrom(trueDeg(deg), situation))?.designator ?? null;
  });
  lastRings.set(question.field, { asked, ring });
  return ring;
}

/** Each field's last ring: it is the most work of all, and directions are typed digit by digit. */
const lastRings = new WeakMap<Field, { asked: readonly unknown[]; ring: RunwayRing }>();

/** Everything a ring of one field depends on. */
function allButDirection(question: EndsQuestion, situation: Situation): readonly unknown[] {
  const { shape, rule, unbounded, limits } = situation;
  return [
    question.purpose,
    question.lengthNeededM,
    question.taxiDistanceM,
    limits.crosswindKt,
    limits.tailwindKt,
    limits.gustSpreadKt,
    question.closedToday,
    question.closedByReport,
    question.leastWidthM,
    question.night,
    question.preferred,
    question.holdShortM,
    rule,
    unbounded,
    shape.speedKt,
    shape.strongestKt,
    shape.middleDeg,
    shape.half.cos,
    shape.half.sin,
  ];
}
