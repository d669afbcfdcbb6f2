import { field } from 'geomag';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { fieldModelFor } from '../../../src/core/earth/fieldModel';
import { magneticField } from '../../../src/core/earth/variation';
import { apartDeg } from './decimalYear';

/**
 * The npm package geomag 1.0, another synthesis with its own copy of WMM2020. It takes no date but
 * asks the clock, so the clock is held within the model's years. It counts years of 365.25 days and
 * answers to 0.01° and 1 nT.
 */
const AT = new Date('2022-07-02T00:00Z');

beforeEach(() => {
  vi.useFakeTimers({ now: AT, toFake: ['Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

test('WMM2020 agrees with geomag wherever a compass can be used', async () => {
  const tables = await fieldModelFor(AT);
  let compared = 0;
  for (let latDeg = -85; latDeg <= 85; latDeg += 10) {
    for (let lonDeg = -180; lonDeg < 180; lonDeg += 15) {
      const ours = magneticField({ latDeg, lonDeg, elevationM: 300 }, AT, tables);
      if (ours.horizontalNt < 6000) continue; // caution and blackout zones
      const theirs = field(latDeg, lonDeg, 0.3);
      const where = `${latDeg}, ${lonDeg}`;
      expect(apartDeg(ours.variationDeg, theirs.declination), where).toBeLessThan(0.01);
      expect(Math.abs(ours.horizontalNt - theirs.horizontalIntensity), where).toBeLessThan(1);
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(350);
});
