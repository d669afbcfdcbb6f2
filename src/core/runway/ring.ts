/** The runway ring: which end would be best from wherever the wind came. */

import type { Designator } from '../airfield/field';
import { trueDeg } from '../angle';
import { blowFrom } from './judge';
import { bestIn } from './order';
import type { EndsQuestion } from './question';
import { situationOf } from './situation';

/**
 * Which end would be best for a wind from every whole degree true; null where none would. Index 0
 * is north; 360 entries.
 */
export type RunwayRing = readonly (Designator | null)[];

/**
 * For every whole degree true that the wind might come from, at the strength and with the swing it
 * has, which end would be best: what {@link rankRunwayEnds} would answer there. It does not depend
 * on today's direction. Null where there is nothing to turn: in a calm, in a wind from anywhere, and
 * where no speed was reported.
 */
export function runwayRing(question: EndsQuestion): RunwayRing | null {
  const situation = situationOf(question);
  if (situation.from === null || !situation.shape.strongestKt) return null;
  return Array.from({ length: 360 }, (_, deg) => {
    return bestIn(blowFrom(trueDeg(deg), situation))?.designator ?? null;
  });
}
