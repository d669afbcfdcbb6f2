/** Third stage: what the wind means for the field's ends. */

import type { Designator, Field } from '../airfield/field';
import { degreesOf, magneticDeg, type North, toMagnetic, toTrue, trueDeg } from '../angle';
import type { EndsQuestion, Purpose, RankedEnd, RankedEnds } from '../runway/question';
import { rankRunwayEnds } from '../runway/rank';
import type { EndChosen } from '../sortie/entry';
import { readWind as readWindText } from '../weather/readWind';
import type { Wind, WindReport } from '../weather/report';
import type { SettledFacts } from './settled';
import type { WindText } from './sources';

export type NoRanking = 'no-field' | 'no-limits' | 'no-wind' | 'no-variation';

export interface ReadWind {
  /** Null if nothing was entered. */
  readonly report: WindReport | null;
  /** The north the report's wind is measured from. */
  readonly north: North;
}

export interface WindAnswer {
  /** The wind judged; null if the text has none. */
  readonly wind: Wind | null;
  /** Degrees from either north; null without a direction, or a variation to convert it. */
  readonly fromTrueDeg: number | null;
  readonly fromMagneticDeg: number | null;
  /** The swing, true, clockwise. */
  readonly sectorTrueDeg: readonly [number, number] | null;
  readonly purpose: Purpose;
  readonly ranked: RankedEnds | null;
  /** Why `ranked` is null. */
  readonly because: NoRanking | null;
  /** The question asked about the ends; null if none could be. */
  readonly question: EndsQuestion | null;
  /** The end in use for this purpose, judged in this wind. */
  readonly inUse: RankedEnd | null;
  /** The end in use, even without a wind to judge it in. */
  readonly using: Designator | null;
}

export function readEnteredWind(entered: WindText | null): ReadWind {
  const report = entered === null ? null : readWindText(entered.text);
  return { report, north: report?.north === 'true' ? 'true' : (entered?.north ?? 'true') };
}

export const otherNorth = (north: North): North => (north === 'true' ? 'magnetic' : 'true');

/**
 * The north of an entered text: as chosen on entry. A spoken text is magnetic, or true where the
 * field's numbers are (FAA AIM 4-3-6), unless turned by hand. A whole report is true regardless.
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

/** What its wind means. Texts with the same wind get the same answer. */
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

/** The question about the ends, or why it can't be asked. */
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
  // A true wind needs no variation; only magnetic headings are then unknown.
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
    // The taxi out begins where the aircraft is; the taxi in, where it will have stopped.
    ...(taxiDistanceM === null || purpose === 'landing' ? {} : { taxiDistanceM }),
  };
}

/** A wind's direction to both norths, and its true swing. */
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
