import { expect, test } from 'vitest';
import type { Needs, NoNeeds } from '../../../src/core/runway/needs';
import { needsByWind } from '../../../src/core/runway/needsByWind';

/** A run that goes with the square of the ground speed, as at a lift-off of 80 kt from 800 m. */
const run = (headwindKt: number) => 800 * (1 - headwindKt / 80) ** 2;

const tora = (m: number): Needs => ({ lengthsM: { tora: m } });

const toraOf = (needed: Needs | NoNeeds | number | null): number =>
  typeof needed === 'object' && needed !== null && 'lengthsM' in needed
    ? (needed.lengthsM.tora ?? Number.NaN)
    : Number.NaN;

test('it answers within a metre of the function it stands for, exactly on its rows', () => {
  const needed = needsByWind((_, headwindKt) => tora(run(headwindKt)));
  for (let headwindKt = -20; headwindKt <= 40; headwindKt += 0.25) {
    const error = toraOf(needed('10', headwindKt)) - run(headwindKt);
    // A chord of a square lies above it, by at most the square's half step: 800 (2.5/80)² = 0.78 m.
    expect(error).toBeGreaterThanOrEqual(-1e-9);
    expect(error).toBeLessThan(0.782);
    if (headwindKt % 5 === 0) expect(error).toBeCloseTo(0, 9);
  }
});

test('so it does by what the wind adds to the speed', () => {
  const landing = (headwindKt: number, addedKt: number) =>
    6 * (100 + addedKt - headwindKt) ** 2 * 0.01;
  const needed = needsByWind(
    (_, headwindKt, addedKt) => tora(landing(headwindKt, addedKt)),
    (headwindKt, gustKt) => Math.min(20, Math.max(headwindKt, 0) / 2 + gustKt),
  );
  expect(toraOf(needed('10', 10, 20, 5))).toBeCloseTo(landing(10, 15), 9);
  const error = toraOf(needed('10', 7, 13, 6)) - landing(7, 12.5);
  expect(Math.abs(error)).toBeLessThan(1);
  // A swing lowers the headwind that is counted on, not the speed that is flown.
  expect(toraOf(needed('10', 0, 20, 0))).toBeCloseTo(landing(0, 10), 9);
});

test('it asks once for each end and each 2.5 kt', () => {
  const asked: string[] = [];
  const needed = needsByWind((end, headwindKt) => {
    asked.push(`${end} ${headwindKt}`);
    return tora(run(headwindKt));
  });
  for (let headwindKt = -7; headwindKt <= 7; headwindKt += 0.5) {
    needed('10', headwindKt);
    needed('28', headwindKt);
  }
  const rows = [-7.5, -5, -2.5, 0, 2.5, 5, 7.5];
  expect(asked.sort()).toEqual(
    ['10', '28'].flatMap((end) => rows.map((kt) => `${end} ${kt}`)).sort(),
  );
});

test('there is no answer without a speed, and beside a row where no length is enough none is', () => {
  const needed = needsByWind((_, headwindKt) =>
    headwindKt < 0 ? { cannot: 'never-lifts-off' } : tora(500),
  );
  expect(needed('10', null)).toBeNull();
  expect(needed('10', -0.1)).toEqual({ cannot: 'never-lifts-off' });
  expect(needed('10', 0)).toEqual(tora(500));
});

test('in more wind than a row has an answer for there is none either', () => {
  const needed = needsByWind((_, headwindKt) =>
    headwindKt > 10 ? { cannot: 'wind-unreasonable' } : tora(500),
  );
  expect(needed('10', 10)).toEqual(tora(500));
  expect(needed('10', 10.1)).toEqual({ cannot: 'wind-unreasonable' });
});

test('what a twin goes on from and what the tyres take lie on the line between two rows as well', () => {
  // On a row, and half way between two.
  const needed = needsByWind((_, headwindKt) => ({
    lengthsM: { tora: 500 },
    tyres: { groundKt: 160 - headwindKt, limitKt: 170 },
    goOn: { lowestKt: 100 - 2 * headwindKt, stopKt: 90 + headwindKt },
  }));
  expect(needed('10', 7.5)).toMatchObject({
    tyres: { groundKt: 152.5, limitKt: 170 },
    goOn: { lowestKt: 85, stopKt: 97.5 },
  });
  expect(needed('10', 6.25)).toMatchObject({ goOn: { lowestKt: 87.5, stopKt: 96.25 } });
});
