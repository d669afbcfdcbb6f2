/** How firm the choice of the best end is, in figures that can be asked why. */

import { type Figure, known, unknown } from '../figure';
import type { HoldsTo, RankedEnd } from '../runway/question';
import type { SettledFacts } from './settled';
import type { WindAnswer } from './wind';

/** How far the wind may turn or rise while the end stays best and within limits. */
export interface FirmFigures {
  /** Degrees the wind can turn on the side with less to spare. */
  readonly spare: Figure<'deg'>;
  /** The steady wind that reaches a limit from today's direction, gust scaled with it. */
  readonly limitSpeed: Figure<'kt'>;
}

/** An end's figures; unknown unless it is the best, in a wind with a direction. */
export function firmFigures(
  end: RankedEnd,
  { ranked, wind }: Pick<WindAnswer, 'ranked' | 'wind'>,
  settled: SettledFacts,
): FirmFigures {
  const holds = ranked?.best?.designator === end.designator ? ranked.holdsUntil : null;
  if (holds === null) return { spare: unknown('not-firm'), limitSpeed: unknown('not-firm') };
  const spares = {
    ...spareOf('spareLeftDeg', holds.left),
    ...spareOf('spareRightDeg', holds.right),
  };
  const sides = Object.values(spares);
  return {
    spare:
      sides.length === 0
        ? unknown('never-changes')
        : known(Math.min(...sides), 'deg', {
            formula: 'smaller-spare',
            inputs: spares,
            source: 'turned-by-degrees',
          }),
    limitSpeed: limitSpeed(holds, wind, end, settled),
  };
}

const spareOf = (name: string, side: HoldsTo): Record<string, number> =>
  side === 'never' ? {} : { [name]: side.spareDeg };

/** Every component grows with the wind's speed, so the speed at the limit is in proportion. */
function limitSpeed(
  { speedKt, limit }: NonNullable<NonNullable<WindAnswer['ranked']>['holdsUntil']>,
  wind: WindAnswer['wind'],
  end: RankedEnd,
  { crosswindLimit, tailwindLimit, rules }: SettledFacts,
): Figure<'kt'> {
  if (speedKt === null || limit === null || wind?.speedKt == null)
    return unknown('no-limit-reached');
  const reached = {
    crosswind: { limitKt: crosswindLimit.value, worstKt: end.crosswindWorstKt },
    tailwind: { limitKt: tailwindLimit.value, worstKt: end.tailwindWorstKt },
    'gust-spread': {
      limitKt: rules.gustSpreadKt ?? null,
      worstKt: (wind.gustKt ?? 0) - wind.speedKt,
    },
  };
  const { limitKt, worstKt } = reached[limit];
  if (limitKt === null || worstKt === null) return unknown('no-limit-reached');
  return known(speedKt, 'kt', {
    formula: 'limit-speed',
    inputs: { speedKt: wind.speedKt, limitKt, worstKt },
    source: 'wind-components',
  });
}
