/** When to start down, and where slowing down begins. */

import type { TodayBrief } from '../../core';

/** Feet down a nautical mile on a 3° path: 6 076 × tan 3°. */
const FT_PER_NM = (1852 / 0.3048) * Math.tan((3 * Math.PI) / 180);

/** Nautical miles that a height takes on a 3° path, flown at one speed. */
export const downNm = (heightFt: number): number => heightFt / FT_PER_NM;

/** No faster below 10 000 ft. 14 CFR 91.117. */
const LOW_KT = 250;

/** A mile slows by so much on the way down. Common practice, no published source. */
const KT_PER_NM = 10;

/** From what speed it has to slow down, to which, and the miles that takes; null where it need not. */
export function slowing(
  { climb }: Pick<TodayBrief['aircraft'], 'climb'>,
  approachKt: number,
): { readonly fromKt: number; readonly toKt: number; readonly nm: number } | null {
  // A document has no speed to descend at: the fastest that it climbs at is as fast as it comes down.
  const fromKt = Math.min(climb.speedKt[1], LOW_KT);
  const nm = (fromKt - approachKt) / KT_PER_NM;
  return nm > 0 ? { fromKt, toKt: approachKt, nm } : null;
}
