/** What a reason shows: no finer than it is known, and enough to come to the number that it is about. */

import { expect, test } from 'vitest';
import { askDay } from '../../../src/core';
import type { AnyFigure, Known, Why } from '../../../src/core/figure';
import type { Unit } from '../../../src/core/units';
import { asFigure, asInput, asInputFigure } from '../../../src/parts/digits';
import { demoAircraft, demoFields, demoProcedures } from '../documents/demo';
import { figuresIn, workedOutAgain } from './figures';
import { AT } from './moments';

const WINDS = [
  'METAR XHAR 051850Z 28013G22KT 240V310 9999 FEW020 14/11 Q1008',
  '31007KT',
  'METAR XHAR 051850Z 05024G37KT 9999 31/M02 A2962',
];

type KnownFigure = Known<Unit> & { readonly path: string };

/** Every known figure of the demo's sorties, each once for what it is. */
const figures: readonly KnownFigure[] = await (async () => {
  const met: KnownFigure[] = [];
  for (const field of demoFields) {
    for (const aircraft of demoAircraft) {
      const procedure = demoProcedures.find(({ code }) => code === `${aircraft.code}-usual`);
      for (const text of WINDS) {
        const inputs = { checkMarkM: 300, ownCrosswindKt: 17 };
        const day = await askDay({
          field,
          aircraft,
          procedure: procedure ?? null,
          at: AT,
          inputs,
          wind: { text },
        });
        for (const [path, figure] of figuresIn(day)) {
          if (figure.value !== null) met.push({ ...figure, path });
        }
      }
    }
  }
  return met;
})();

const isFigure = (input: AnyFigure | number | string): input is AnyFigure =>
  typeof input === 'object';

/** The inputs as they are shown. */
function shownInputs(of: KnownFigure): Why['inputs'] {
  return Object.fromEntries(
    Object.entries(of.why.inputs).map(([name, input]) => {
      if (typeof input === 'string') return [name, input];
      if (!isFigure(input)) return [name, asInput(name, input, of)];
      if (input.value === null) return [name, input];
      return [name, { ...input, value: asInputFigure(input) }];
    }),
  );
}

test('a figure comes from the demo’s sorties for most of the formulas that there are', () => {
  expect(new Set(figures.map(({ why }) => why.formula)).size).toBeGreaterThan(35);
});

/**
 * How fine a number may be. Wind is reported to a knot and speeds are read to one, so a tenth of one is
 * a guard digit; lengths are known to 1 % (the handbooks' own rows miss by 4), so a metre is finer than
 * enough; masses are weighed to a kilogram; angles of runways and slopes to a tenth of a degree; QNH
 * to a hectopascal, and to a tenth where it was given in inches; a document's thrust to three digits.
 */
const FINEST: readonly (readonly [RegExp, number])[] = [
  [/^(lat|lon)Deg$/, 2],
  [/(Kt|Deg|C|Hpa|S)$/, 1],
  [/(KgM|Kg|Ft|M|N)$/, 0],
];

/** Whole on the screen; hundredths of an inch of mercury, millimetres of arm; tenths of a degree and of a per cent. */
const DECIMALS: Partial<Record<Unit, number>> = { inHg: 2, deg: 1, '%': 1 };

const decimalsOf = (value: number): number => String(value).split('.')[1]?.length ?? 0;

test('no input is shown finer than it is known', () => {
  for (const figure of figures) {
    const { path, unit } = figure;
    for (const [name, input] of Object.entries(shownInputs(figure))) {
      if (typeof input !== 'number') continue;
      // What was given is no finer than what it is shown as; factors and densities have three.
      const ownUnit = name === 'given' || name === 'set';
      const least = ownUnit ? (DECIMALS[unit] ?? 0) + (unit === 'kt' ? 1 : 0) : 3;
      const [, most] = FINEST.find(([ending]) => ending.test(name)) ?? [null, least];
      // Forces below a kilonewton have four digits too: idle thrust and the weight on a slope.
      const allowed = name.endsWith('N') && Math.abs(input) < 1000 ? 4 : most;
      expect([path, name, input, decimalsOf(input) <= allowed]).toEqual([path, name, input, true]);
    }
  }
});

test('no figure is shown finer than the screen shows it', () => {
  for (const figure of figures) {
    const { path, unit, why } = figure;
    const shown = asFigure(figure);
    const most = why.formula === 'centre-of-gravity' ? 3 : (DECIMALS[unit] ?? 0);
    expect([path, shown, decimalsOf(shown) <= most]).toEqual([path, shown, true]);
  }
});

/** The shown inputs come as near as this: a step of the figure, two of an altitude, and 1 % of a way. */
const NEAR: Partial<Record<Unit, number>> = { 'ft/min': 10, inHg: 0.01, deg: 0.1, '%': 0.1, ft: 2 };

const nearOf = (value: number, unit: Unit): number =>
  Math.max(1.05 * (NEAR[unit] ?? 1), unit === 'm' ? 0.01 * Math.abs(value) : 0);

test('the inputs that are shown come to the figure that is shown', () => {
  for (const figure of figures) {
    const { path, value, unit, why } = figure;
    // A wind so weak on its limit that a tenth of a knot is a sixth of it says what it says: far off.
    if (why.formula === 'limit-speed' && Number(why.inputs.worstKt) < 2) continue;
    const again = workedOutAgain({ ...why, inputs: shownInputs(figure) });
    const off = Math.abs(again - asFigure(figure));
    const apart = unit === 'deg' ? Math.min(off, Math.abs(360 - off)) : off;
    expect([path, why, again, value, apart <= nearOf(value, unit)]).toEqual([
      path,
      why,
      again,
      value,
      true,
    ]);
  }
});
