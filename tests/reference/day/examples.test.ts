import { expect, test } from 'vitest';
import { askDay } from '../../../src/core';
import type { Inputs } from '../../../src/core/sortie/entry';
import { inventedField } from '../../core/runway/invented';

/** The day on runway 01 of a field where that heads exactly there, in a wind as it is typed. */
async function asked(
  headingDeg: number,
  text: string,
  inputs: Partial<Inputs>,
  place?: { latDeg: number; lonDeg: number; elevationFt: number },
  at = new Date('2026-07-02T12:00:00Z'),
) {
  const field = inventedField([{ designator: '01', headingDeg }]);
  return askDay({
    field: { ...field, place: place ?? field.place },
    aircraft: null,
    at,
    inputs: { ownCrosswindKt: 99, ownTailwindKt: 99, ...inputs },
    wind: { text, north: inputs.typedNorth ?? 'true' },
  });
}

test.each([
  // FAA private pilot knowledge test, figure 36: runway 18, wind 220° at 30 kt.
  { headingDeg: 180, text: '22030', head: 23, cross: 19, within: 0.5 },
  // AOPA ePilot, vol. 4 no. 9: runway 33, wind 290° at 15 kt; 12 and 10.
  { headingDeg: 330, text: '290/15', head: 12, cross: -10, within: 0.6 },
  // The same: runway 33, wind 300° at 16 kt, crosswind 8.
  { headingDeg: 330, text: '300 16', head: 13.9, cross: -8, within: 0.05 },
  // Flight Design CTLS aircraft operating instructions, 5.3.1: direction 120, wind 070° at 11 kt.
  { headingDeg: 120, text: '07011KT', head: 7.1, cross: -8.4, within: 0.05 },
])('typed as $text, the wind on $headingDeg° is $head along and $cross across', async (example) => {
  const { wind } = await asked(example.headingDeg, example.text, {});
  const figures = wind.figures.get('01');
  expect(Math.abs((figures?.headwind.value ?? 0) - example.head)).toBeLessThan(example.within);
  expect(Math.abs((figures?.crosswind.value ?? 0) - example.cross)).toBeLessThan(example.within);
});

test('a limit of one’s own of 17 kt is reached at 20.75 kt from 255° on runway 20', async () => {
  // ECQB PPL(A), flight performance and planning, question 16.
  const { wind } = await asked(200, '25510', { ownCrosswindKt: 17 });
  expect(wind.ranked?.holdsUntil?.speedKt).toBeCloseTo(20.75, 2);
});

test('a tower speaks in magnetic directions: runway 18 with 220 at 30 is the same anywhere', async () => {
  // FAA AIM 4-3-6: runway numbers and the wind a tower gives are magnetic. Figure 36 as above.
  const variationDeg = 14;
  const { wind } = await asked(180 + variationDeg, '22030', {
    typedNorth: 'magnetic',
    variationDeg,
  });
  const figures = wind.figures.get('01');
  expect(figures?.headingMagnetic.value).toBeCloseTo(180, 6);
  expect(Math.round(figures?.headwind.value ?? 0)).toBe(23);
  expect(Math.round(figures?.crosswind.value ?? 0)).toBe(19);
});

test.each([
  // NOAA, WMM2025 test values, at 62, 14 and 37 km.
  { at: '2026-01-01', km: 62, latDeg: -14, lonDeg: 99, east: -1.43 },
  { at: '2026-07-02T12:00:00Z', km: 14, latDeg: 0, lonDeg: 80, east: -3.1 },
  { at: '2027-01-01', km: 37, latDeg: -66, lonDeg: -5, east: -17.22 },
])('at $latDeg, $lonDeg the variation is $east°, and taken from the heading', async (row) => {
  const elevationFt = (row.km * 1000) / 0.3048;
  const place = { latDeg: row.latDeg, lonDeg: row.lonDeg, elevationFt };
  const { conditions, wind } = await asked(90, '09010', {}, place, new Date(row.at));
  expect(Math.abs((conditions.variation.value ?? 99) - row.east)).toBeLessThanOrEqual(0.01);
  // Magnetic = true − variation, east positive: FAA-H-8083-25, ch. 16.
  expect(wind.figures.get('01')?.headingMagnetic.value).toBeCloseTo(90 - row.east, 1);
});
