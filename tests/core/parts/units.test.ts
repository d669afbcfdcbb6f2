/**
 * Units: their factors against published definitions, and what is shown and typed in them. What is
 * typed is read back as typed, and rounding never promises more than there is.
 */

import fc from 'fast-check';
import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { HPA_PER_INHG, KG_PER_LB, M_PER_FT } from '../../../src/core';
import { lengthUnit, localTime, massUnit, pressureUnit } from '../../../src/device/preferences';
import { speak } from '../../../src/parts/catalogues';
import { localClock, NO_BREAK_SPACE, timeOfDay } from '../../../src/parts/format';
import { liveValue, piecesInUnits, shownLive } from '../../../src/parts/live';
import { sayReadback } from '../../../src/parts/radio/readback';
import {
  aboutLength,
  fromShown,
  inShown,
  length,
  mass,
  massAgainst,
  neededLength,
  otherPressure,
  pressure,
  stepsOf,
  toStep,
  unitFor,
  width,
} from '../../../src/parts/units';

beforeAll(() => speak('en'));

const american = () => {
  lengthUnit.value = 'ft';
  massUnit.value = 'lb';
  pressureUnit.value = 'inHg';
};

afterEach(() => {
  lengthUnit.value = 'm';
  massUnit.value = 'kg';
  pressureUnit.value = 'hPa';
  localTime.value = false;
});

/** Text with ordinary spaces. */
const plain = (text: string) => text.replaceAll(NO_BREAK_SPACE, ' ');

describe('factors', () => {
  test('a foot is 0.3048 m exactly: international yard and pound agreement of 1959', () => {
    expect(M_PER_FT).toBe(0.3048);
  });

  test('a pound is 0.45359237 kg exactly: international yard and pound agreement of 1959', () => {
    expect(KG_PER_LB).toBe(0.45359237);
  });

  test('an inch of mercury is 25.4 mm of 13 595.1 kg/m³ at 9.80665 m/s²: ISO 80000-3, NIST SP 811 B.8', () => {
    // NIST SP 811, appendix B.8: inch of mercury, conventional, 3.386389 kPa.
    expect(HPA_PER_INHG).toBeCloseTo((0.0254 * 13_595.1 * 9.80665) / 100, 3);
    expect(HPA_PER_INHG).toBeCloseTo(33.86389, 4);
  });

  test('standard pressure is 29.92 inHg, and 1 000 hPa 29.53: FAA AIM 7-2-2, values from memory', () => {
    pressureUnit.value = 'inHg';
    expect(plain(pressure(1013.25))).toBe('29.92 inHg');
    expect(plain(pressure(1000))).toBe('29.53 inHg');
  });
});

describe('shown', () => {
  test('in what core reckons in, a number is as it was', () => {
    expect(plain(length(2950))).toBe('2 950 m');
    expect(plain(mass(9300))).toBe('9 300 kg');
    expect(plain(pressure(1013.25))).toBe('1013 hPa');
    expect(plain(otherPressure(1013.25))).toBe('29.92 inHg');
    expect(plain(width(7.5))).toBe('7.5 m');
  });

  test('in feet, pounds and inches it is worked out once, and rounded to what is known', () => {
    american();
    // By hand: 2 950 / 0.3048 = 9 678.5; 9 300 / 0.45359237 = 20 503.0.
    expect(plain(length(2950, 'down'))).toBe('9 678 ft');
    expect(plain(mass(9300))).toBe('20 503 lb');
    expect(plain(aboutLength(1683, 'up'))).toBe('5 550 ft');
    expect(plain(aboutLength(1267, 'down'))).toBe('4 150 ft');
    expect(plain(otherPressure(1013.25))).toBe('1013 hPa');
    expect(plain(width(7.5))).toBe('25 ft');
  });

  test('altitudes stay in feet, and speeds in knots', () => {
    american();
    expect([unitFor('ft'), unitFor('kt'), unitFor('ft/min')]).toEqual(['ft', 'kt', 'ft/min']);
    expect(inShown(5000, 'ft')).toBe(5000);
  });

  test('a whole number of feet stays whole when it was metres in between', () => {
    lengthUnit.value = 'ft';
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), (ft) => {
        for (const round of ['up', 'down', 'nearest'] as const)
          expect(toStep(inShown(ft * 0.3048, 'm'), 1, round)).toBe(ft);
      }),
    );
  });
});

describe('typed', () => {
  test.each([
    ['m', 0.1, 1, 5000],
    ['kg', 1, 0, 99_999],
    ['hPa', 0.01, 25.1, 32.04],
  ] as const)('what is typed for %s is shown as it was typed', (unit, step, least, most) => {
    american();
    const steps = Math.round((most - least) / step);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: steps }), (n) => {
        const by = stepsOf(unit)?.step ?? 1;
        const typed = toStep(least + n * step, by);
        expect(toStep(inShown(fromShown(typed, unit), unit), by)).toBe(typed);
      }),
    );
  });

  test('29.92 inHg are 1013.2 hPa', () => {
    pressureUnit.value = 'inHg';
    expect(fromShown(29.92, 'hPa')).toBeCloseTo(1013.208, 3);
  });
});

const anyUnits = fc.constantFrom('m' as const, 'ft' as const);
const lengthM = fc.double({ min: 1, max: 9000, noNaN: true });
const numberIn = (text: string) => Number(text.replace(/[^\d.]/g, ''));

describe('rounding', () => {
  test('a length needed is never shown shorter, one that is left never longer', () => {
    fc.assert(
      fc.property(anyUnits, lengthM, (unit, m) => {
        lengthUnit.value = unit;
        expect(fromShown(numberIn(aboutLength(m, 'up')), 'm')).toBeGreaterThan(m - 1e-3);
        expect(fromShown(numberIn(aboutLength(m, 'down')), 'm')).toBeLessThan(m + 1e-3);
      }),
    );
  });

  test('what fits is never shown longer than what there is, and what does not fit always', () => {
    fc.assert(
      fc.property(anyUnits, lengthM, lengthM, (unit, needed, available) => {
        lengthUnit.value = unit;
        const [shown, there] = [neededLength(needed, available), length(available, 'down')].map(
          numberIn,
        );
        // A metre over may be less than a foot over.
        if (needed <= available) expect(shown).toBeLessThanOrEqual(there ?? 0);
        else expect(shown).toBeGreaterThanOrEqual(there ?? 0);
      }),
    );
  });

  test('a mass is never shown on the other side of its limit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('kg' as const, 'lb' as const),
        fc.double({ min: 1, max: 50_000, noNaN: true }),
        fc.double({ min: 1, max: 50_000, noNaN: true }),
        (unit, kg, limitKg) => {
          massUnit.value = unit;
          const shown = numberIn(massAgainst(kg, limitKg));
          expect(shown > numberIn(mass(limitKg, 'down'))).toBe(kg > limitKg);
        },
      ),
    );
  });
});

describe('live numbers in a step', () => {
  const filled = (text: string, values: Readonly<Record<string, number>>) =>
    plain(
      piecesInUnits(text)
        .map((piece) => {
          if (typeof piece === 'string') return piece;
          const value = values[piece.live] ?? 0;
          return liveValue(
            piece.live === 'qnh' ? 'qnh' : piece.live === 'fuelKg' ? 'fuelKg' : 'landingM',
            value,
          );
        })
        .join(''),
    );

  test('the unit that the procedure writes behind one follows the choice', () => {
    const text = 'Rest within {landingM} m, {fuelKg} kg aboard';
    const values = { landingM: 1874, fuelKg: 2000 };
    expect(filled(text, values)).toBe('Rest within 1 880 m, 2 000 kg aboard');
    american();
    // By hand: 1 874 m are 6 148.3 ft, 2 000 kg are 4 409.2 lb.
    expect(filled(text, values)).toBe('Rest within 6 150 ft, 4 410 lb aboard');
  });

  test('a mass without a unit behind it gets one where it is not in kilograms', () => {
    expect(filled('Fuel {fuelKg}', { fuelKg: 2000 })).toBe('Fuel 2 000');
    american();
    expect(filled('Fuel {fuelKg}', { fuelKg: 2000 })).toBe('Fuel 4 410 lb');
  });

  test('a pressure is read digit by digit, so its thousands do not stand apart', () => {
    expect(filled('QNH {qnh}', { qnh: 1013.25 })).toBe('QNH 1013');
    american();
    expect(filled('QNH {qnh}', { qnh: 1013.25 })).toBe('QNH 29.92');
  });

  test('a run rounds up in either unit', () => {
    expect(shownLive('runM', 1683)).toEqual({ value: 1690, unit: 'm' });
    american();
    expect(shownLive('runM', 1683)).toEqual({ value: 5550, unit: 'ft' });
  });
});

test('a pressure setting is read back digit by digit, as altimeter where it is in inches', () => {
  const back = { code: 'qnh', hPa: 1013.25 } as const;
  expect(sayReadback(back)).toBe('QNH one zero one three');
  pressureUnit.value = 'inHg';
  // FAA JO 7110.65, 2-7-1, value from memory: without "decimal".
  expect(sayReadback(back)).toBe('altimeter two nine nine two');
  expect(sayReadback({ code: 'qnh', hPa: null })).toBe('altimeter as given');
});

test('local time stands beside UTC only where it is wanted', () => {
  const at = Date.UTC(1987, 3, 5, 18, 50);
  expect(timeOfDay(at)).toBe('1850Z');
  localTime.value = true;
  expect(plain(timeOfDay(at))).toBe(`1850Z ${localClock(at)}`);
  // What the device's own calendar says, by its own formatter.
  const [hour, minute] = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' })
    .format(at)
    .split(':');
  expect(localClock(at)).toBe(`${hour}${minute}L`);
});
