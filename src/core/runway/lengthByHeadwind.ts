/** A table in place of a slow function of the wind. */

import type { Designator } from '../airfield/field';
import type { LengthNeeded } from './question';

/** Between rows the length is taken from a straight line; over 5 kt it bends by about a metre. */
const ROW_KT = 5;

/**
 * Answers as `neededM` does, but asks it once for each end and each 5 kt, and takes what lies
 * between from a straight line. Null where a row is null, and where the speed is not known.
 */
export function lengthByHeadwind(
  neededM: (end: Designator, headwindKt: number) => number | null,
): LengthNeeded {
  const rowsOf = new Map<Designator, Map<number, number | null>>();
  const row = (end: Designator, rows: Map<number, number | null>, number: number) => {
    const before = rows.get(number);
    if (before !== undefined) return before;
    const needed = neededM(end, number * ROW_KT);
    rows.set(number, needed);
    return needed;
  };
  return (end, headwindKt) => {
    if (headwindKt === null) return null;
    let rows = rowsOf.get(end);
    if (rows === undefined) {
      rows = new Map();
      rowsOf.set(end, rows);
    }
    const below = Math.floor(headwindKt / ROW_KT);
    const part = headwindKt / ROW_KT - below;
    const less = row(end, rows, below);
    // On a row its neighbour is not asked, since it may have no answer.
    const more = part === 0 ? less : row(end, rows, below + 1);
    return less === null || more === null ? null : less + part * (more - less);
  };
}
