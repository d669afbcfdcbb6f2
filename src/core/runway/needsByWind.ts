/** A table in place of a slow function of the wind. */

import type { Designator } from '../airfield/field';
import { type Needs, type NoNeeds, needsNothing } from './needs';
import type { LengthNeeded } from './question';

/** Between rows what is needed is taken from a straight line; over 5 kt it bends by about a metre. */
const ROW_KT = 5;

/** What is needed on an end in a headwind, with so much added to the speed for the wind, kt. */
export type NeededAt = (end: Designator, headwindKt: number, additiveKt: number) => Needs | NoNeeds;

/**
 * Answers as `neededAt` does, but asks it once for each end, each 5 kt of headwind and each 5 kt
 * added, and takes what lies between from a straight line. Where a row says that no length is enough,
 * nothing beside it is; null where the speed of the wind is not known. `additiveKt` is what the
 * steady headwind reported and the gust over it add to the speed; left out, nothing.
 */
export function needsByWind(
  neededAt: NeededAt,
  additiveKt: (reportedHeadwindKt: number, gustSpreadKt: number) => number = () => 0,
): LengthNeeded {
  const rows = new Map<string, Needs | NoNeeds>();
  const row = (end: Designator, headwind: number, additive: number) => {
    const key = `${end} ${headwind} ${additive}`;
    const before = rows.get(key);
    if (before !== undefined) return before;
    const needed = neededAt(end, headwind * ROW_KT, additive * ROW_KT);
    rows.set(key, needed);
    return needed;
  };
  return (end, headwindKt, reportedKt = headwindKt, gustSpreadKt = 0) => {
    if (headwindKt === null) return null;
    const added = additiveKt(reportedKt ?? headwindKt, gustSpreadKt) / ROW_KT;
    const head = headwindKt / ROW_KT;
    // On a row its neighbour is not asked, since it may have no answer.
    const along = (additive: number) => between(head, (index) => row(end, index, additive));
    return between(added, along);
  };
}

/** What lies between two rows, by a straight line. */
function between(at: number, row: (index: number) => Needs | NoNeeds): Needs | NoNeeds {
  const below = Math.floor(at);
  const part = at - below;
  const less = row(below);
  if (part === 0 || needsNothing(less)) return less;
  const more = row(below + 1);
  return needsNothing(more) ? more : mixed(less, more, part);
}

function mixed(less: Needs, more: Needs, part: number): Needs {
  const mix = (a: number, b: number) => (a === b ? a : (1 - part) * a + part * b);
  const lengthsM: Partial<Record<keyof Needs['lengthsM'], number>> = {};
  for (const declared of ['tora', 'toda', 'asda', 'lda'] as const) {
    const [a, b] = [less.lengthsM[declared], more.lengthsM[declared]];
    if (a !== undefined && b !== undefined) lengthsM[declared] = mix(a, b);
  }
  return {
    lengthsM,
    ...(less.tyres && more.tyres
      ? { tyres: { ...less.tyres, groundKt: mix(less.tyres.groundKt, more.tyres.groundKt) } }
      : {}),
    ...(less.goOn && more.goOn
      ? {
          goOn: {
            lowestKt: mix(less.goOn.lowestKt, more.goOn.lowestKt),
            stopKt: mix(less.goOn.stopKt, more.goOn.stopKt),
          },
        }
      : {}),
  };
}
