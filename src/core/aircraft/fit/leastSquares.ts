/** Least squares by Levenberg and Marquardt (Marquardt, J. SIAM 11/2, 1963), for a few unknowns. */

/** Where the sum of the squares of what is left over is least, as far as it goes from `start`. */
export function leastSquares(
  leftOver: (x: readonly number[]) => readonly number[],
  start: readonly number[],
  isWithin: (x: readonly number[]) => readonly number[],
): readonly number[] {
  let best = start;
  let left = leftOver(best);
  let damping = 1e-3;
  for (let round = 0; round < MOST_ROUNDS && damping < MOST_DAMPING; round++) {
    const slopes = start.map((_, index) => slope(leftOver, best, left, index));
    const before = squares(left);
    while (damping < MOST_DAMPING) {
      const tried = isWithin(stepped(best, left, slopes, damping));
      const leftThen = leftOver(tried);
      if (squares(leftThen) < before) {
        [best, left] = [tried, leftThen];
        damping /= 5;
        break;
      }
      damping *= 5;
    }
    if (before - squares(left) <= ENOUGH * before) break;
  }
  return nearby((x) => squares(leftOver(x)), best, isWithin);
}

/** The least nearby, unknown by unknown: slopes mislead where what is worked out goes in steps. */
function nearby(
  f: (x: readonly number[]) => number,
  start: readonly number[],
  isWithin: (x: readonly number[]) => readonly number[],
): readonly number[] {
  let best = start;
  let least = f(best);
  let asked = 0;
  for (let step = FIRST_STEP; step > LAST_STEP && asked < MOST_ASKED; ) {
    const before = least;
    for (let index = 0; index < start.length; index++) {
      for (const sign of [1, -1]) {
        const tried = isWithin(best.map((x, at) => (at === index ? x + sign * step : x)));
        const value = f(tried);
        asked += 1;
        if (value < least) [best, least] = [tried, value];
      }
    }
    if (before - least <= ENOUGH * before) step /= 2;
  }
  return best;
}

const FIRST_STEP = 0.1;
const LAST_STEP = 1e-3;
const MOST_ASKED = 600;

const MOST_ROUNDS = 40;
const MOST_DAMPING = 1e6;

/** A round that lowers the sum by less than this share of it is the last. */
const ENOUGH = 1e-5;

/** The step by which slopes are measured. */
const STEP = 0.01;

const squares = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value * value, 0);

/** How each value goes with one unknown. */
function slope(
  leftOver: (x: readonly number[]) => readonly number[],
  x: readonly number[],
  left: readonly number[],
  index: number,
): readonly number[] {
  const moved = leftOver(x.map((value, at) => (at === index ? value + STEP : value)));
  return left.map((value, at) => ((moved[at] ?? value) - value) / STEP);
}

/** One step: (JᵀJ + λ diag JᵀJ) d = −Jᵀr. */
function stepped(
  x: readonly number[],
  left: readonly number[],
  slopes: readonly (readonly number[])[],
  damping: number,
): readonly number[] {
  const times = (a: readonly number[], b: readonly number[]) =>
    a.reduce((sum, value, at) => sum + value * (b[at] ?? 0), 0);
  const rows = slopes.map((a, i) => [
    ...slopes.map((b, j) => times(a, b) * (i === j ? 1 + damping : 1)),
    -times(a, left),
  ]);
  const by = solved(rows);
  return x.map((value, at) => value + (by[at] ?? 0));
}

/** Solves linear equations, each row its coefficients and then its right side (Gauss, with pivots). */
function solved(rows: readonly (readonly number[])[]): readonly number[] {
  let left = rows;
  const used: (readonly number[])[] = [];
  for (let column = 0; column < rows.length; column++) {
    const size = (row: readonly number[]) => Math.abs(row[column] ?? 0);
    const pivot = left.reduce((a, b) => (size(b) > size(a) ? b : a), left[0] ?? []);
    const by = pivot[column] ?? 0;
    const without = (row: readonly number[]) => {
      const factor = by === 0 ? 0 : (row[column] ?? 0) / by;
      return row.map((value, at) => value - factor * (pivot[at] ?? 0));
    };
    left = left.filter((row) => row !== pivot).map(without);
    used.push(pivot);
  }
  const x = rows.map(() => 0);
  for (let column = rows.length - 1; column >= 0; column--) {
    const row = used[column] ?? [];
    const rest = x.reduce(
      (sum, value, at) => (at > column ? sum + value * (row[at] ?? 0) : sum),
      0,
    );
    const by = row[column] ?? 0;
    x[column] = by === 0 ? 0 : ((row.at(-1) ?? 0) - rest) / by;
  }
  return x;
}
