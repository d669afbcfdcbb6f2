/** A table in place of a slow function of the wind. */

import type { Designator } from '../airfield/field';
import { type Needs, type NoNeeds, needsNothing } from './needs';
import type { LengthNeeded } from './question';

/**
 * Between rows the need is interpolated linearly. The curve departs from that by a metre or two, and by
 * up to 7 m where it bends, as at the highest speed of a parachute.
 */
const ROW_KT = 2.5;

/** What an end needs in a headwind, with some kt added to the speed for the wind. */
export type NeededAt = (end: Designator, headwindKt: number, additiveKt: number) => Needs | NoNeeds;

/**
 * Answers as `neededAt` does, but calls it once for each end, each 2.5 kt of headwind and each
 * 2.5 kt added, and interpolates linearly in between. If one row has an answer and the next has none, it
 * calls it for each whole knot between them; next to one without an answer there is none. Null if
 * the wind's speed is unknown. `additiveKt` is what the reported steady headwind and the gust over
 * it add to the speed; nothing if absent.
 */
export function needsByWind(
  neededAt: NeededAt,
  additiveKt: (reportedHeadwindKt: number, gustSpreadKt: number) => number = () => 0,
): LengthNeeded {
  const rows = new Map<string, Needs | NoNeeds>();
  const row = (end: Designator, headKt: number, addedKt: number) => {
    const key = `${end} ${headKt} ${addedKt}`;
    const before = rows.get(key);
    if (before !== undefined) return before;
    const needed = neededAt(end, headKt, addedKt);
    rows.set(key, needed);
    return needed;
  };
  return (end, headwindKt, reportedKt = headwindKt, gustSpreadKt = 0) => {
    if (headwindKt === null) return null;
    const addedKt = additiveKt(reportedKt ?? headwindKt, gustSpreadKt);
    const along = (added: number) => between(headwindKt, (kt) => row(end, kt, added));
    return between(addedKt, along);
  };
}

/** A value between two rows, by linear interpolation. */
function between(
  atKt: number,
  row: (kt: number) => Needs | NoNeeds,
  stepKt = ROW_KT,
): Needs | NoNeeds {
  const index = Math.floor(atKt / stepKt);
  const part = atKt / stepKt - index;
  const less = row(index * stepKt);
  // Exactly on a row the neighbour isn't needed; it may have no answer.
  if (part === 0) return less;
  const more = row((index + 1) * stepKt);
  const isPartly = hasAnswer(less) !== hasAnswer(more);
  if (isPartly && stepKt > LEAST_ROW_KT) return between(atKt, row, LEAST_ROW_KT);
  if (needsNothing(less)) return less;
  return needsNothing(more) ? more : mixed(less, more, part);
}

/** Between a row that has an answer and one that has none. */
const LEAST_ROW_KT = 1;

const hasAnswer = (needed: Needs | NoNeeds): boolean =>
  !needsNothing(needed) && Number.isFinite(needed.goOn?.lowestKt ?? 0);

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
    ...(less.brakes && more.brakes
      ? { brakes: { ...less.brakes, energyMJ: mix(less.brakes.energyMJ, more.brakes.energyMJ) } }
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
