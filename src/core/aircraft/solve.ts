/** Where a function crosses zero. */

const MOST_ROUNDS = 60;

/**
 * A zero of `f` between two places where its signs differ, to within `near`: false position with
 * the Illinois modification (Dowell and Jarratt, BIT 11, 1971). If the signs agree, the end with
 * the smaller value.
 */
export function zeroBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  near: number,
): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa * fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  for (let round = 0; round < MOST_ROUNDS && Math.abs(b - a) > near; round++) {
    const c = fa === fb ? (a + b) / 2 : b - (fb * (b - a)) / (fb - fa);
    const fc = f(c);
    if (fc === 0) return c;
    if (fc * fb < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    const moved = Math.abs(c - b);
    b = c;
    fb = fc;
    if (moved < near) return b;
  }
  return b;
}
