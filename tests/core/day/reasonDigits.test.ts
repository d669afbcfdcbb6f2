/** What a reason shows: no finer than it is known, and enough to come to the number that it is about. */

import { afterEach, describe, expect, test } from 'vitest';
import { askDay } from '../../../src/core';
import type { AnyFigure, Known } from '../../../src/core/figure';
import type { Unit } from '../../../src/core/units';
import { lengthUnit, massUnit, pressureUnit } from '../../../src/device/preferences';
import {
  asFigure,
  asInput,
  asInputFigure,
  backFromShown,
  inMetric,
  type Shown,
} from '../../../src/parts/digits';
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

test('a gate of the climb, and its limit, say where they come from', async () => {
  const gates = await Promise.all(
    demoAircraft.map(async (aircraft) => {
      const field = demoFields.find(({ code }) => code === 'XHAR') ?? null;
      const wind = { text: WINDS[0] ?? '' };
      const { numbers } = await askDay({ field, aircraft, procedure: null, at: AT, wind });
      return numbers.ladder?.climb ?? [];
    }),
  );
  expect(gates.flat().length).toBeGreaterThan(5);
  for (const { speedKt, figure, limitKt, limit } of gates.flat()) {
    expect(figure.value).toBe(speedKt);
    expect(limit?.value ?? null).toBe(limitKt);
  }
});

const isFigure = (input: AnyFigure | number | string): input is AnyFigure =>
  typeof input === 'object';

/** The inputs as they are shown; those without a number are left out. */
function shownInputs(of: KnownFigure): readonly (readonly [name: string, shown: Shown])[] {
  return Object.entries(of.why.inputs).flatMap(([name, input]): [string, Shown][] => {
    if (typeof input === 'string') return [];
    if (!isFigure(input)) return [[name, asInput(name, input, of)]];
    return input.value === null ? [] : [[name, asInputFigure(input, of.why.formula)]];
  });
}

/** Metres in what a shown length is in; feet of altitude are feet to core too. */
const backTo = (shown: Shown, core: Unit | null): number =>
  shown.unit === 'ft' && core === 'm' ? shown.value * 0.3048 : backFromShown(shown);

/** What an input is to core: the unit of the figure it is, or that its name ends in. */
function coreUnit(name: string, of: KnownFigure): Unit | null {
  const input = of.why.inputs[name];
  if (name === 'given' || name === 'set') return of.unit;
  if (typeof input === 'object') return input.value === null ? null : input.unit;
  return /[a-z]M$/.test(name) ? 'm' : null;
}

test('a figure comes from the demo’s sorties for most of the formulas that there are', () => {
  expect(new Set(figures.map(({ why }) => why.formula)).size).toBeGreaterThan(35);
});

afterEach(() => {
  lengthUnit.value = 'm';
  massUnit.value = 'kg';
  pressureUnit.value = 'hPa';
});

const decimalsOf = (value: number): number => String(value).split('.')[1]?.length ?? 0;

/**
 * How fine a number may be. Wind is reported to a knot and speeds are read to one; what is divided by,
 * and what a document gives, may have a tenth. Lengths worked out are known to 1 % (the handbooks' own
 * rows miss by 4): to ten metres. Masses are weighed to a kilogram; angles of runways and slopes to a
 * tenth of a degree; QNH to a hectopascal, and to a tenth where it was given in inches; a document's
 * thrust to three digits.
 */
const FINEST: readonly (readonly [RegExp, number])[] = [
  [/^(lat|lon)Deg$/, 2],
  [/^(worst|own|aircraft|book|limit)Kt$/, 1],
  [/(KgM|Kg|Ft|M|N|Kt)$/, 0],
  [/(Deg|C|Hpa|S)$/, 1],
];

/** Whole on the screen; hundredths of an inch of mercury, millimetres of arm; tenths of a degree and of a per cent. */
const DECIMALS: Partial<Record<Unit, number>> = { inHg: 2, deg: 1, '%': 1 };

/** Lengths that a document or the pilot gave; all others were worked out. */
const GIVEN_LENGTH = /^(given|set|elevationM|distanceM|rollsFromM|(tora|toda|lda|available)M)$/;
const GIVEN_FORMULA = /^(as-given|as-set|tora|toda|asda|lda|centre-of-gravity)$/;

test('no input is shown finer than it is known', () => {
  for (const figure of figures) {
    const { path, unit } = figure;
    for (const [name, { value }] of shownInputs(figure)) {
      if (typeof figure.why.inputs[name] !== 'number') continue;
      // What was given is no finer than what it is shown as; factors and densities have three.
      const ownUnit = name === 'given' || name === 'set';
      const least = ownUnit ? (DECIMALS[unit] ?? 0) + (unit === 'kt' ? 1 : 0) : 3;
      const [, most] = FINEST.find(([ending]) => ending.test(name)) ?? [null, least];
      // Forces below a kilonewton have four digits too: idle thrust and the weight on a slope.
      const allowed = name.endsWith('N') && Math.abs(value) < 1000 ? 4 : most;
      expect([path, name, value, decimalsOf(value) <= allowed]).toEqual([path, name, value, true]);
    }
  }
});

test('no figure is shown finer than the screen shows it', () => {
  for (const figure of figures) {
    const { path, unit, why } = figure;
    const { value } = asFigure(figure);
    const most = why.formula === 'centre-of-gravity' ? 3 : (DECIMALS[unit] ?? 0);
    expect([path, value, decimalsOf(value) <= most]).toEqual([path, value, true]);
  }
});

test.each([
  ['m', 10],
  ['ft', 50],
] as const)('in %s, a length worked out is a multiple of %i wherever it stands', (unit, step) => {
  lengthUnit.value = unit;
  for (const figure of figures) {
    const { path, why } = figure;
    const worked = shownInputs(figure).filter(([name]) => {
      const input = why.inputs[name];
      return typeof input === 'object' && input.value !== null
        ? input.unit === 'm' && !GIVEN_FORMULA.test(input.why.formula)
        : /[a-z]M$/.test(name) && !/KgM$/.test(name) && !GIVEN_LENGTH.test(name);
    });
    const shown = worked.map(([, one]) => one);
    if (figure.unit === 'm' && !GIVEN_FORMULA.test(why.formula)) shown.push(asFigure(figure));
    for (const { value, unit: in_ } of shown) {
      // A formula in SI keeps its metres.
      const by = in_ === 'm' ? 10 : step;
      expect([path, value, in_, value % by]).toEqual([path, value, in_, value < 0 ? -0 : 0]);
    }
  }
});

/** Ways that something needs, and what is left of a length. */
const NEEDED = /^(run|run-and-climb|accelerate-stop|landing-air|landing-run|sum|times-factor)$/;
const LEFT = /^(left-over|left-of-lda|left-of-end)$/;

test.each(['m', 'ft'] as const)(
  'in %s, what is needed rounds up, and what is left down',
  (unit) => {
    lengthUnit.value = unit;
    let [needed, left] = [0, 0];
    for (const figure of figures) {
      if (figure.unit !== 'm') continue;
      const shownM = backTo(asFigure(figure), 'm');
      if (NEEDED.test(figure.why.formula)) {
        needed++;
        expect(shownM).toBeGreaterThanOrEqual(figure.value - 1e-4);
      } else if (LEFT.test(figure.why.formula)) {
        left++;
        expect(shownM).toBeLessThanOrEqual(figure.value + 1e-4);
      }
    }
    expect(Math.min(needed, left)).toBeGreaterThan(100);
  },
);

/** The shown inputs come as near as this: a step of the figure, and two of an altitude. */
const NEAR: Partial<Record<Unit, number>> = { 'ft/min': 10, inHg: 0.01, deg: 0.1, '%': 0.1, ft: 2 };

/** Speeds that round up or down, and not to the nearest. */
const ROUNDED_ONE_WAY =
  /^(\w+Allows?Kt|leastInWindKt|leastFor\w+Kt|standingKt|smallest-of|greatest-of|engine-out-run)$/;

/** By how much a shown number may differ from the number itself: its step, in core's unit. */
function stepOf(name: string, { value, unit }: Shown, of: KnownFigure): number {
  const core = coreUnit(name, of);
  if (unit === 'ft' && core === 'm') return value % 50 === 0 ? 50 * 0.3048 : 0.3048;
  if (unit === 'm') return GIVEN_LENGTH.test(name) ? 0 : 10;
  if (unit === 'lb' || unit === 'lb·m') return 0.5 * 0.45359237;
  if (unit === 'kt' && ROUNDED_ONE_WAY.test(name || of.why.formula)) return 1;
  if (unit === 'kt') return decimalsOf(value) > 0 ? 0.05 : 0.5;
  if (unit === '%') return 0.05;
  if (unit === 'inHg') return 0.005 * 33.8639;
  return 0;
}

describe.each([
  ['m', 'kg', 'hPa'],
  ['ft', 'lb', 'inHg'],
] as const)('in %s, %s and %s', (length, mass, pressure) => {
  test('the inputs that are shown come to the figure that is shown, within the rounding shown', () => {
    lengthUnit.value = length;
    massUnit.value = mass;
    pressureUnit.value = pressure;
    for (const figure of figures) {
      const { path, value, unit, why } = figure;
      // A wind so weak on its limit that a tenth of a knot is a sixth of it says what it says: far off.
      if (why.formula === 'limit-speed' && Number(why.inputs.worstKt) < 2) continue;
      const shown = shownInputs(figure);
      const put = (changed: Readonly<Record<string, number>>) =>
        workedOutAgain({
          ...why,
          inputs: {
            ...why.inputs,
            ...Object.fromEntries(
              shown.map(([name, one]) => [
                name,
                changed[name] ?? backTo(one, coreUnit(name, figure)),
              ]),
            ),
          },
        });
      const again = put({});
      const asShown = backTo(inMetric(figure) ?? asFigure(figure), unit);
      const off = Math.abs(again - asShown);
      const apart = unit === 'deg' ? Math.min(off, Math.abs(360 - off)) : off;
      // What one step of each rounded input changes, and the step that the figure itself rounds to.
      const rounding = shown.reduce((sum, [name, one]) => {
        const by = stepOf(name, one, figure);
        if (by === 0) return sum;
        const at = backTo(one, coreUnit(name, figure));
        const changes = [at - by, at + by].map((to) => Math.abs(put({ [name]: to }) - again));
        return sum + Math.max(...changes.filter(Number.isFinite));
      }, 0);
      const own = stepOf('', inMetric(figure) ?? asFigure(figure), figure);
      const near = 1.05 * Math.max(NEAR[unit] ?? 1, own) + rounding;
      expect([path, why, again, value, asShown, near, apart <= near]).toEqual([
        path,
        why,
        again,
        value,
        asShown,
        near,
        true,
      ]);
    }
  });
});
