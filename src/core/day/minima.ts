/** The pilot's own minima: the least visibility and ceiling to fly in. */

import type { Inputs } from '../sortie/entry';
import type { ExpectedBrief } from './expected';
import type { Caution, CautionCode } from './verdict';

/** Metres and feet; null where the pilot has set none. */
export type Minima = Pick<Inputs, 'ownVisibilityM' | 'ownCeilingFt'>;

interface Seen {
  readonly visibilityM: number | null;
  /** Infinite under a clear sky; null if nothing is said. */
  readonly ceilingFt: number | null;
}

/** What is below the minima now. What no report gives isn't judged. */
export const belowMinima = (seen: Seen | undefined, minima: Minima): readonly Caution[] => [
  ...below('visibility', seen?.visibilityM ?? null, minima.ownVisibilityM),
  ...below('ceiling', seen?.ceilingFt ?? null, minima.ownCeilingFt),
];

/** What is forecast below them, now or within the hour: the lowest of all parts. */
export function forecastBelowMinima(
  expected: ExpectedBrief | null,
  minima: Minima,
): readonly Caution[] {
  const near = expected?.parts.filter(({ isNear }) => isNear) ?? [];
  const least = (of: keyof Seen) =>
    near.reduce<number | null>(
      (most, { [of]: value }) => (value === null || (most ?? value) < value ? most : value),
      null,
    );
  return [
    ...below('forecast-visibility', least('visibilityM'), minima.ownVisibilityM),
    ...below('forecast-ceiling', least('ceilingFt'), minima.ownCeilingFt),
  ];
}

const below = (
  code: CautionCode,
  value: number | null,
  limit: number | null,
): readonly Caution[] =>
  value === null || limit === null || value >= limit ? [] : [{ code, value, limit }];
