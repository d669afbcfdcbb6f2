import { describe, expect, test } from 'vitest';
import { fieldModelFor } from '../../../src/core/earth/fieldModel';

const on = (text: string) => new Date(text);

/** g(1, 0), nT. */
async function g10(text: string): Promise<number> {
  const at = on(text);
  return (await fieldModelFor(at)).coefficientsAt(at)[0] ?? Number.NaN;
}

describe('the model for a date', () => {
  test.each([
    ['1900-01-01T00:00:00.000Z', 'IGRF-12'],
    ['1987-06-05T00:00:00.000Z', 'IGRF-12'],
    ['2014-12-31T23:59:59.999Z', 'IGRF-12'],
    ['2015-01-01T00:00:00.000Z', 'WMM2015'],
    ['2018-09-17T23:59:59.999Z', 'WMM2015'],
    ['2018-09-18T00:00:00.000Z', 'WMM2015v2'],
    ['2019-12-31T23:59:59.999Z', 'WMM2015v2'],
    ['2020-01-01T00:00:00.000Z', 'WMM2020'],
    ['2024-12-31T23:59:59.999Z', 'WMM2020'],
    ['2025-01-01T00:00:00.000Z', 'WMM2025'],
    ['2030-01-01T00:00:00.000Z', 'WMM2025'],
  ])('on %s is %s', async (text, name) => {
    const model = await fieldModelFor(on(text));
    expect(model.name).toBe(name);
    expect(model.from.getTime()).toBeLessThanOrEqual(on(text).getTime());
    expect(model.until.getTime()).toBeGreaterThanOrEqual(on(text).getTime());
  });

  test.each([
    '1899-12-31T23:59:59.999Z',
    '2030-01-01T00:00:00.001Z',
    '0001-01-01T00:00:00.000Z',
    'no date at all',
  ])('on %s is refused', async (text) => {
    await expect(fieldModelFor(on(text))).rejects.toThrow(RangeError);
  });

  test('is the same object when asked again, so that nothing is worked out twice', async () => {
    expect(await fieldModelFor(on('2026-03-01'))).toBe(await fieldModelFor(on('2027-03-01')));
  });
});

describe('the coefficients of a model', () => {
  test('are refused outside its span', async () => {
    const wmm2025 = await fieldModelFor(on('2026-01-01'));
    expect(() => wmm2025.coefficientsAt(on('1987-06-05'))).toThrow(RangeError);
    expect(() => wmm2025.coefficientsAt(on('2030-01-02'))).toThrow(RangeError);
    expect(() => wmm2025.coefficientsAt(new Date(Number.NaN))).toThrow(RangeError);
  });

  test('do not depend on what was asked before', async () => {
    const igrf = await fieldModelFor(on('1950-01-01'));
    const first = [...igrf.coefficientsAt(on('1957-05-01'))];
    igrf.coefficientsAt(on('1999-05-01'));
    expect([...igrf.coefficientsAt(on('1957-05-01'))]).toEqual(first);
  });

  test('of the IGRF go up to degree 10 until 1995 and to degree 13 from then on', async () => {
    // IAGA V-MOD: degree 10 through the epoch 1995, 13 from 2000; between them the rest grows from 0.
    const igrf = await fieldModelFor(on('1950-01-01'));
    expect(igrf.coefficientsAt(on('1994-12-31')).length).toBe(10 * 12);
    const half = igrf.coefficientsAt(on('1997-07-02T12:00Z'));
    const full = igrf.coefficientsAt(on('2000-01-01T00:00Z'));
    expect(half.length).toBe(13 * 15);
    // g(11, 0), the first above degree 10: 2.7 nT in 2000 (igrf14coeffs.txt, value from memory).
    expect(full[120]).toBe(2.7);
    expect(half[120]).toBeCloseTo(1.35, 9);
  });

  test('of the IGRF are linear between epochs', async () => {
    // g(1, 0) in 1985 and 1990: −29873 and −29775 nT (IAGA V-MOD, igrf14coeffs.txt; 1990 from memory).
    expect(await g10('1987-07-02T12:00Z')).toBeCloseTo(-(29_873 + 29_775) / 2, 9);
  });

  test('of the WMM move by the yearly change, in leap years and others', async () => {
    // WMM.COF of WMM2020: g(1, 0) = −29404.5 nT, 6.7 nT a year. Mid-year is 2 July, at noon in a year
    // of 365 days and at midnight in one of 366.
    expect(await g10('2023-07-02T12:00Z')).toBeCloseTo(-29_404.5 + 3.5 * 6.7, 9);
    expect(await g10('2024-07-02T00:00Z')).toBeCloseTo(-29_404.5 + 4.5 * 6.7, 9);
    expect(await g10('2024-02-29T00:00Z')).toBeCloseTo(-29_404.5 + (4 + 59 / 366) * 6.7, 9);
  });

  test('do not jump from one year to the next', async () => {
    // A millisecond's change at 12 nT a year (WMM.COF of WMM2025) is 4e-10 nT.
    const before = await g10('2028-12-31T23:59:59.999Z');
    const after = await g10('2029-01-01T00:00:00.000Z');
    expect(Math.abs(after - before)).toBeLessThan(1e-8);
  });
});
