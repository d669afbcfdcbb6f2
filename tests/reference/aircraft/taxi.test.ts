/** Speeds in turns against ICAO. */

import { describe, expect, test } from 'vitest';
import { comfortKt } from '../../../src/core/aircraft/taxiTurn';

const KT_PER_KMH = 1 / 1.852;

describe('ICAO Doc 9157 Part 2: speed and radius of a taxiway’s curve', () => {
  test.each([
    [16, 15],
    [32, 60],
    [48, 135],
    [64, 240],
    [80, 375],
    [96, 540],
  ])('%i km/h goes with %i m', (kmh, radiusM) => {
    expect(Math.abs(comfortKt(radiusM) / (kmh * KT_PER_KMH) - 1)).toBeLessThan(0.005);
  });
});

test.each([
  // ICAO Annex 14, rapid exits, on wet pavement: 93 km/h on 550 m, 65 km/h on 275 m.
  [93, 550],
  [65, 275],
])(
  'a rapid exit for %i km/h on %i m is gone round a little slower than comfort allows',
  (kmh, radiusM) => {
    const share = (kmh * KT_PER_KMH) / comfortKt(radiusM);
    expect(share).toBeLessThan(1);
    expect(share).toBeGreaterThan(0.93);
  },
);
