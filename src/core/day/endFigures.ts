/** The numbers of one runway end, each with its inputs. */

import { relativeDeg, trueDeg } from '../angle';
import { type Figure, known, unknown } from '../figure';
import type { RankedEnd } from '../runway/question';
import { clockwiseDeg, envelopeOf } from '../weather/envelope';
import type { Wind } from '../weather/report';
import { declared } from './declared';
import { type FirmFigures, firmFigures } from './firmFigures';
import type { SettledFacts } from './settled';
import type { WindAnswer } from './wind';

/** An end's figures, each of which can be asked why. */
export interface EndFigures extends FirmFigures {
  /** Steady wind along the runway, negative from behind. */
  readonly headwind: Figure<'kt'>;
  /** The least steady wind along the runway anywhere in the envelope: what performance counts on. */
  readonly headwindLeast: Figure<'kt'>;
  /** Steady wind across the runway, positive from the right. */
  readonly crosswind: Figure<'kt'>;
  /** Greatest crosswind anywhere in the envelope, gust included. */
  readonly crosswindWorst: Figure<'kt'>;
  /** Greatest tailwind anywhere in the envelope, gust included; 0 if none. */
  readonly tailwindWorst: Figure<'kt'>;
  readonly headingMagnetic: Figure<'deg'>;
  /** TORA for take-off, LDA for landing. */
  readonly available: Figure<'m'>;
  /** What today's need, or the book's run, leaves of it; negative if too short. */
  readonly left: Figure<'m'>;
}

/** The figures of an end in the wind it was ranked in; null without one. */
export function endFigures(
  end: RankedEnd,
  answer: Pick<WindAnswer, 'wind' | 'fromTrueDeg' | 'purpose' | 'ranked'>,
  settled: SettledFacts,
): EndFigures | null {
  const { wind, fromTrueDeg: windTrueDeg, purpose } = answer;
  if (wind === null) return null;
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
  const angles = anglesOff(end, wind, windTrueDeg);
  const noDirection = unknown(wind.speedKt === null ? 'no-speed' : 'no-direction');
  return {
    headwind: end.headwindKt === null ? noDirection : known(end.headwindKt, 'kt', why('headwind')),
    headwindLeast:
      end.headwindLeastKt === null
        ? unknown('no-speed')
        : known(end.headwindLeastKt, 'kt', {
            formula: 'headwind-least',
            inputs: { speedKt: wind.speedKt ?? 0, angleDeg: angles.farthest },
            source: 'wind-components',
          }),
    crosswind:
      end.crosswindKt === null ? noDirection : known(end.crosswindKt, 'kt', why('crosswind')),
    crosswindWorst: worst('crosswind-worst', end.crosswindWorstKt, angles.nearestToAcross),
    tailwindWorst: worst('tailwind-worst', end.tailwindWorstKt, angles.farthest),
    headingMagnetic:
      settled.variation.value === null
        ? settled.variation
        : known(end.headingMagneticDeg, 'deg', {
            formula: 'magnetic',
            inputs: { runwayTrueDeg: end.headingTrueDeg, variation: settled.variation },
            source: 'field',
          }),
    available: declared(purpose === 'take-off' ? 'tora' : 'lda', end.availableM),
    left:
      end.tightest === null || end.leftM === null
        ? unknown('no-length-needed')
        : known(end.leftM, 'm', {
            formula: 'left-of-end',
            inputs: {
              [`${end.tightest.of}M`]: end.tightest.availableM,
              neededM: end.tightest.neededM,
            },
            source: 'planned-length',
          }),
    ...firmFigures(end, answer, settled),
  };
}

/** The worst angles off the runway at which the wind may blow, 0 to 180. */
function anglesOff(end: RankedEnd, wind: Wind, windTrueDeg: number | null) {
  const envelope = envelopeOf(wind);
  if (envelope.kind === 'calm') return { nearestToAcross: 0, farthest: 0 };
  if (envelope.kind !== 'sector' || windTrueDeg === null) {
    return { nearestToAcross: 90, farthest: 180 };
  }
  const half = envelope.widthDeg / 2;
  // Relative to the reported direction, since the envelope uses the wind's own north.
  const toMiddle = clockwiseDeg(wind.fromDeg ?? 0, envelope.fromDeg + half);
  const middle = trueDeg(windTrueDeg + toMiddle);
  const off = Math.abs(relativeDeg(middle, trueDeg(end.headingTrueDeg)));
  return {
    nearestToAcross: off < 90 ? Math.min(off + half, 90) : Math.max(off - half, 90),
    farthest: Math.min(off + half, 180),
  };
}
