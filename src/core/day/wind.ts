/** Third stage: what the wind means for the field's runway ends. */

import type { Designator, Field } from '../airfield/field';
import { degreesOf, magneticDeg, type North, toMagnetic, toTrue, trueDeg } from '../angle';
import type { EndsQuestion, Purpose, RankedEnd, RankedEnds } from '../runway/question';
import { rankRunwayEnds } from '../runway/rank';
import type { EndChosen } from '../sortie/entry';
import { readWind as readWindText } from '../weather/readWind';
import type { Wind, WindReport } from '../weather/report';
import type { SettledFacts } from './settled';
import type { WindText } from './sources';

/** Why there is no ranking of ends. */
export type NoRanking = 'no-field' | 'no-limits' | 'no-wind' | 'no-variation';

/** A text, read. */
export interface ReadWind {
  /** Null where nothing was entered. */
  readonly report: WindReport | null;
  /** The north that the report's wind is given to. */
  readonly north: North;
}

/** What a wind means for the ends. */
export interface WindAnswer {
  /** The wind that was judged; null where the text has none. */
  readonly wind: Wind | null;
  /** Where the wind comes from, to both norths, degrees; null where it has no direction, or the variation is not known. */
  readonly fromTrueDeg: number | null;
  readonly fromMagneticDeg: number | null;
  /** The swing, true, clockwise. */
  readonly sectorTrueDeg: readonly [number, number] | null;
  readonly purpose: Purpose;
  readonly ranked: RankedEnds | null;
  /** Why `ranked` is null. */
  readonly because: NoRanking | null;
  /** The question about the ends that was asked; null where none could be. */
  readonly question: EndsQuestion | null;
  /** The end the pilot uses for this purpose, judged in this wind. */
  readonly inUse: RankedEnd | null;
  /** The end the pilot uses, also while there is no wind to judge it in. */
  readonly using: Designator | null;
}

/** What the text says. */
export function readEnteredWind(entered: WindText | null): ReadWind {
  const report = entered === null ? null : readWindText(entered.text);
  return { report, north: report?.north === 'true' ? 'true' : (entered?.north ?? 'true') };
}

/** The other of the two. */
export const otherNorth = (north: North): North => (north === 'true' ? 'magnetic' : 'true');

/**
 * The north of a text that someone enters: what they type in, but for a spoken text, which is
 * magnetic, or true where the field's numbers are (FAA AIM 4-3-6), unless they turned it. Of no
 * effect on a whole report, which is true.
 */
export function northOf(
  text: string,
  field: Pick<Field, 'numbersFrom'> | null,
  typed: North,
  turned = false,
): North {
  if (readWindText(text).north !== 'magnetic') return typed;
  const spoken = field?.numbersFrom ?? 'magnetic';
  return turned ? otherNorth(spoken) : spoken;
}

/** What its wind means. Another text with the same wind has the same answer. */
export function answerWind(
  settled: SettledFacts,
  wind: Wind | null,
  north: North,
  purpose: Purpose,
  chosen: EndChosen | null,
  at: Date,
): WindAnswer {
  const using = chosen?.purpose === purpose ? chosen.end : null;
  const question = windQuestion(settled, wind, north, purpose, at);
  const none: WindAnswer = {
    wind,
    ...windDirections(wind, north, settled.variation.value),
    purpose,
    ranked: null,
    because: null,
    question: null,
    inUse: null,
    using,
  };
  if (typeof question === 'string') return { ...none, because: question };
  const ranked = rankRunwayEnds(question);
  return {
    ...none,
    ranked,
    question,
    inUse: ranked.ends.find((end) => end.designator === using) ?? null,
  };
}

/** The question about the ends, or why it cannot be asked. */
export function windQuestion(
  settled: SettledFacts,
  wind: Wind | null,
  north: North,
  purpose: Purpose,
  at: Date,
): EndsQuestion | NoRanking {
  const { field, surface, variation, crosswindLimit, tailwindLimit, rules } = settled;
  const { lengthNeededM, taxiDistanceM } = settled;
  if (field === null) return 'no-field';
  if (crosswindLimit.value === null || tailwindLimit.value === null) return 'no-limits';
  if (wind === null) return 'no-wind';
  // A true wind can be judged without variation; only headings to magnetic north are then unknown.
  const directed = wind.fromDeg !== null && wind.fromDeg !== 0 && !wind.variable;
  if (variation.value === null && north === 'magnetic' && directed) return 'no-variation';
  const { gustSpreadKt, ...ends } = rules;
  return {
    field,
    wind,
    north,
    at,
    limits: {
      crosswindKt: crosswindLimit.value,
      tailwindKt: tailwindLimit.value,
      ...(gustSpreadKt === undefined ? {} : { gustSpreadKt }),
    },
    ...ends,
    surface,
    purpose,
    variationDeg: variation.value ?? 0,
    ...(lengthNeededM === null ? {} : { lengthNeededM: lengthNeededM[purpose] }),
    // Only the way out begins where the aircraft is; the way in begins where it will have stopped.
    ...(taxiDistanceM === null || purpose === 'landing' ? {} : { taxiDistanceM }),
  };
}

/** Where a wind comes from, to both norths, and its swing, true. */
export function windDirections(wind: Wind | null, north: North, variation: number | null) {
  const inTrue = (deg: number): number | null => {
    if (north === 'true') return degreesOf(trueDeg(deg));
    return variation === null ? null : degreesOf(toTrue(magneticDeg(deg), variation));
  };
  const fromDeg = wind === null || wind.variable ? null : wind.fromDeg;
  const fromTrueDeg = fromDeg === null ? null : inTrue(fromDeg);
  const sector = (wind?.sectorDeg ?? []).map(inTrue);
  const [first, last] = sector;
  return {
    fromTrueDeg,
    fromMagneticDeg:
      fromTrueDeg === null || variation === null
        ? null
        : degreesOf(toMagnetic(trueDeg(fromTrueDeg), variation)),
    sectorTrueDeg:
      typeof first === 'number' && typeof last === 'number' ? ([first, last] as const) : null,
  };
}
