import { expect, test } from 'vitest';
import { lengthByHeadwind } from '../../../src/core/runway/lengthByHeadwind';

/** A run that goes with the square of the ground speed, as at a lift-off of 80 kt from 800 m. */
const run = (headwindKt: number) => 800 * (1 - headwindKt / 80) ** 2;

test('it answers within a metre of the function it stands for, exactly on its rows', () => {
  const needed = lengthByHeadwind((_, headwindKt) => run(headwindKt));
  for (let headwindKt = -20; headwindKt <= 40; headwindKt += 0.25) {
    const error = (needed('10', headwindKt) ?? Number.NaN) - run(headwindKt);
    // A chord of a square lies above it, by at most the square's half step: 800 (2.5/80)² = 0.78 m.
    expect(error).toBeGreaterThanOrEqual(-1e-9);
    expect(error).toBeLessThan(0.782);
    if (headwindKt % 5 === 0) expect(error).toBeCloseTo(0, 9);
  }
});

test('it asks once for each end and each 5 kt', () => {
  const asked: string[] = [];
  const needed = lengthByHeadwind((end, headwindKt) => {
    asked.push(`${end} ${headwindKt}`);
    return run(headwindKt);
  });
  for (let headwindKt = -7; headwindKt <= 7; headwindKt += 0.5) {
    needed('10', headwindKt);
    needed('28', headwindKt);
  }
  const rows = [-10, -5, 0, 5, 10];
  expect(asked.sort()).toEqual(
    ['10', '28'].flatMap((end) => rows.map((kt) => `${end} ${kt}`)).sort(),
  );
});

test('there is no answer without a speed, nor beside a row that has none', () => {
  const needed = lengthByHeadwind((_, headwindKt) => (headwindKt < 0 ? null : 500));
  expect(needed('10', null)).toBeNull();
  expect(needed('10', -0.1)).toBeNull();
  expect(needed('10', 0)).toBe(500);
});
