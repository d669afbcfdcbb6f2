/** Only the best end, for callers that ask in many winds. */

import type { Designator } from '../airfield/field';
import { blowFrom } from './judge';
import { bestIn } from './order';
import type { EndsQuestion } from './question';
import { situationOf } from './situation';

/**
 * The end {@link rankRunwayEnds} would call best, null if it would call none so; without the order
 * of the others and without how firm it is, which is most of the work.
 */
export function bestEnd(question: EndsQuestion): Designator | null {
  const situation = situationOf(question);
  return bestIn(blowFrom(situation.from, situation))?.designator ?? null;
}
