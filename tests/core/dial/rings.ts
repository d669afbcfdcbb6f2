/** Rings to check with. */

import type { Ring } from '../../../src/parts/dial/ring';

/** A ring in which each end is best over the directions given, first and last included, clockwise. */
export function ringOf(spans: readonly (readonly [string | null, number, number])[]): Ring {
  const ring: (string | null)[] = Array.from({ length: 360 }, () => null);
  for (const [end, from, to] of spans) {
    for (let deg = from; deg <= (to < from ? to + 360 : to); deg += 1) ring[deg % 360] = end;
  }
  return ring;
}
