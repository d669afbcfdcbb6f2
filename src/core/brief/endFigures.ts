/** The numbers about one runway end, each with what it was worked out from. */

import { type Figure, known, unknown } from '../figure';
import type { Purpose, RankedEnd } from '../runway/question';
import type { Wind } from '../weather/report';
import type { SettledFacts } from './facts';

/** What is said about an end, as figures that can be asked why. */
export interface EndFigures {
  /** Steady wind along the runway, negative from behind. */
  readonly headwind: Figure<'kt'>;
  /** Steady wind across the runway, positive from the right. */
  readonly crosswind: Figure<'kt'>;
  /** Greatest crosswind over the whole envelope, gust included. */
  readonly crosswindWorst: Figure<'kt'>;
  /** Greatest tailwind over the whole envelope, gust included; 0 when there is none. */
  readonly tailwindWorst: Figure<'kt'>;
  readonly headingMagnetic: Figure<'deg'>;
  /** TORA for take-off, LDA for landing. */
  readonly available: Figure<'m'>;
}

const DEG_PER_RADIAN = 180 / Math.PI;

/** The figures of an end in a wind that comes from `windTrueDeg`; null from anywhere. */
export function endFigures(
  end: RankedEnd,
  wind: Wind,
  windTrueDeg: number | null,
  purpose: Purpose,
  settled: SettledFacts,
): EndFigures {
  const strongestKt = Math.max(wind.speedKt ?? 0, wind.gustKt ?? 0);
  const why = (formula: string) => ({
    formula,
    inputs: {
      speedKt: wind.speedKt ?? 0,
      windTrueDeg: windTrueDeg ?? 0,
      runwayTrueDeg: end.headingTrueDeg,
    },
    source: 'wind-components',
  });
  const worst = (formula: string, value: number | null, angleDeg: number): Figure<'kt'> =>
    value === null
      ? unknown('no-speed')
      : known(value, 'kt', {
          formula,
          inputs: { strongestKt, angleDeg },
          source: 'wind-components',
        });
  const noDirection = unknown(wind.speedKt === null ? 'no-speed' : 'no-direction');
  return {
    headwind: end.headwindKt === null ? noDirection : known(end.headwindKt, 'kt', why('headwind')),
    crosswind:
      end.crosswindKt === null ? noDirection : known(end.crosswindKt, 'kt', why('crosswind')),
    crosswindWorst: worst(
      'crosswind-worst',
      end.crosswindWorstKt,
      strongestKt === 0 ? 0 : arcsinDeg((end.crosswindWorstKt ?? 0) / strongestKt),
    ),
    tailwindWorst: worst(
      'tailwind-worst',
      end.tailwindWorstKt,
      strongestKt === 0 ? 0 : 90 + arcsinDeg((end.tailwindWorstKt ?? 0) / strongestKt),
    ),
    headingMagnetic:
      settled.variation.value === null
        ? settled.variation
        : known(end.headingMagneticDeg, 'deg', {
            formula: 'magnetic',
            inputs: { runwayTrueDeg: end.headingTrueDeg, variation: settled.variation },
            source: 'field',
          }),
    available: known(end.availableM, 'm', {
      formula: purpose === 'take-off' ? 'tora' : 'lda',
      inputs: { given: end.availableM },
      source: 'field',
    }),
  };
}

/** The angle off the runway, 0 to 90, at which this share of the wind is across it. */
const arcsinDeg = (share: number): number => Math.asin(Math.min(1, share)) * DEG_PER_RADIAN;
