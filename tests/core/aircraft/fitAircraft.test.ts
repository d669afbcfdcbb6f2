/** The fit to a handbook's table: tables worked out from a known profile, and what is wrong with others. */

import * as fc from 'fast-check';
import { parse } from 'valibot';
import { describe, expect, test } from 'vitest';
import tussock from '../../../airfields-demo/aircraft/tussock.json';
import { bookLeftOver, WELL_WITHIN } from '../../../src/core/aircraft/againstBook';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { aircraftSchema } from '../../../src/core/aircraft/aircraft.schema';
import { workedOut } from '../../../src/core/aircraft/bookFigures';
import { fitAircraft } from '../../../src/core/aircraft/fit/fitAircraft';
import type { HandbookRow } from '../../../src/core/aircraft/handbook';
import type { Performance } from '../../../src/core/aircraft/performance';
import { flying } from './invented';

const TRUE = flying(parse(aircraftSchema, tussock));

const CONDITIONS: readonly HandbookRow[] = [
  { pressureAltitudeFt: 0, temperatureC: 0 },
  { pressureAltitudeFt: 0, temperatureC: 30 },
  { pressureAltitudeFt: 2000, temperatureC: 10 },
  { pressureAltitudeFt: 2000, temperatureC: 30 },
  { pressureAltitudeFt: 4000, temperatureC: 5 },
  { pressureAltitudeFt: 4000, temperatureC: 30 },
  { massKg: 900, pressureAltitudeFt: 0, temperatureC: 15 },
  { massKg: 900, pressureAltitudeFt: 4000, temperatureC: 15, headwindKt: 10 },
];

const ASKED = { runM: 1, to50ftM: 1, climbFtMin: 1, landingRunM: 1, landingM: 1 };

/** What the known profile makes of the conditions, as a handbook would print it. */
const TABLE = CONDITIONS.map((row): HandbookRow => {
  const found = workedOut(TRUE, { ...row, ...ASKED });
  const printed = (value: number | null | undefined) => Math.round((value ?? 0) / 5) * 5;
  return {
    ...row,
    runM: printed(found.runM?.value),
    to50ftM: printed(found.to50ftM?.value),
    climbFtMin: printed(found.climbFtMin?.value),
    landingRunM: printed(found.landingRunM?.value),
    landingM: printed(found.landingM?.value),
  };
});

/** The known profile, guessed at: other drag, friction and brakes. */
const GUESSED: Performance = {
  ...TRUE.performance,
  wing: {
    ...TRUE.performance.wing,
    cleanCd: 0.03,
    induced: 0.07,
    ground: { ...TRUE.performance.wing.ground, cd: 0.04 },
    rotated: { ...TRUE.performance.wing.rotated, cd: 0.14 },
  },
  rolling: { ...TRUE.performance.rolling, dry: 0.035 },
  brakes: { ...TRUE.performance.brakes, friction: { dry: 0.24, wet: 0.2, contaminated: 0.1 } },
};

const asked = (rows: readonly HandbookRow[], performance = GUESSED) => ({
  ...TRUE,
  performance,
  handbook: { rows: [...rows] },
});

/** The table with one figure of one row otherwise. */
const but = (row: number, other: HandbookRow) =>
  TABLE.map((one, index) => (index === row ? { ...one, ...other } : one));

describe('a table of forty figures', () => {
  const fit = fitAircraft(asked(TABLE));

  test('is met in every figure within 3 % from a guess that is up to a third off', () => {
    expect(fit?.figures).toHaveLength(40);
    for (const { book, found } of fit?.figures ?? []) {
      expect(Math.abs((found ?? 0) / book - 1)).toBeLessThan(WELL_WITHIN);
    }
    expect(fit?.troubles).toEqual([]);
    expect(fit?.faults).toEqual([]);
  });

  test('tells what is left over again from the document alone', () => {
    const performance = fit?.performance;
    if (performance === undefined) throw new Error('no fit');
    const kept: Aircraft = asked(TABLE, performance);
    expect(bookLeftOver(kept)).toEqual(fit?.worst);
  });
});

describe('a figure written down wrong', () => {
  test.each([
    ['run', 3, 'runM', 1.4],
    ['distance to 50 ft', 5, 'to50ftM', 0.8],
    ['landing run', 1, 'landingRunM', 1.25],
  ] as const)('of the %s is named, with what the other rows foretell', (_, row, figure, times) => {
    const printed = TABLE[row]?.[figure] ?? 0;
    const fit = fitAircraft(asked(but(row, { [figure]: Math.round(printed * times) })));
    const [trouble] = fit?.troubles.filter(({ code }) => code === 'row-apart') ?? [];
    expect(trouble).toMatchObject({ row, figure });
    const foretold = trouble?.code === 'row-apart' ? trouble.foretold : 0;
    expect(Math.abs(foretold / printed - 1)).toBeLessThan(WELL_WITHIN);
  });
});

test('two columns swapped are named: no distance over 50 ft is shorter than its run', () => {
  const { runM = 0, to50ftM = 0 } = TABLE[2] ?? {};
  const fit = fitAircraft(asked(but(2, { runM: to50ftM, to50ftM: runM })));
  expect(fit?.troubles).toContainEqual({
    code: 'distance-below-run',
    row: 2,
    figure: 'to50ftM',
  });
});

test('a row over the maximum mass has no figure, and says why', () => {
  const fit = fitAircraft(asked(but(0, { massKg: 1200 })));
  expect(fit?.troubles).toContainEqual({
    code: 'no-figure',
    row: 0,
    figure: 'runM',
    because: 'over-mass',
  });
});

test('half the thrust is told of as thrust, with about what it should be', () => {
  const { thrust } = TRUE.performance;
  if (thrust.kind !== 'propeller') throw new Error('not a propeller');
  const fullN = thrust.fullN.map(([kt, n]): [number, number] => [kt, 0.65 * n]);
  const weak = { ...TRUE.performance, thrust: { ...thrust, fullN } };
  const fit = fitAircraft(asked(TABLE, weak));
  const [trouble] = fit?.troubles ?? [];
  expect(trouble?.code).toBe('thrust-apart');
  const factor = trouble?.code === 'thrust-apart' ? trouble.factor : 0;
  expect(factor * 0.65).toBeGreaterThan(0.9);
  expect(factor * 0.65).toBeLessThan(1.1);
});

test('no power known: thrust moves, and the table is met', () => {
  const { thrust } = TRUE.performance;
  if (thrust.kind !== 'propeller') throw new Error('not a propeller');
  const fullN = thrust.fullN.map(([kt, n]): [number, number] => [kt, 0.65 * n]);
  const weak = { ...TRUE.performance, thrust: { ...thrust, fullN } };
  const fit = fitAircraft(asked(TABLE, weak), ['thrust']);
  expect(Math.abs(fit?.worst?.by ?? 1)).toBeLessThan(WELL_WITHIN);
});

test('rows that contradict one another are told of, whichever is right', () => {
  const doubled = TABLE.map(({ runM = 0, to50ftM = 0, ...row }, index) => ({
    ...row,
    runM: index % 2 === 0 ? 2 * runM : runM,
    to50ftM: index % 2 === 0 ? 2 * to50ftM : to50ftM,
  }));
  const fit = fitAircraft(asked(doubled));
  expect(Math.abs(fit?.worst?.by ?? 0)).toBeGreaterThan(WELL_WITHIN);
  expect(fit?.troubles.map(({ code }) => code)).toContain('rows-apart');
});

test('a table without a figure asks for no fit', () => {
  expect(fitAircraft(asked(CONDITIONS))).toBeNull();
});

test('no table, however odd, makes a profile that meets less drag rotated than on its wheels', () => {
  const row = fc.record({
    pressureAltitudeFt: fc.integer({ min: 0, max: 8000 }),
    runM: fc.integer({ min: 80, max: 2000 }),
    to50ftM: fc.integer({ min: 80, max: 3000 }),
  });
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 3 }), (rows) => {
      const fit = fitAircraft(asked(rows));
      const { ground, rotated } = fit?.performance.wing ?? GUESSED.wing;
      expect(rotated.cd).toBeGreaterThanOrEqual(ground.cd);
      expect(fit?.faults.map(({ code }) => code)).not.toContain('rotates-downwards');
    }),
    { numRuns: 25 },
  );
});
