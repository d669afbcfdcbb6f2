/** When to start down. */

import { expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core';
import { downNm, slowing } from '../../../src/views/numbers/descent';

test('a 3° path goes down 318 ft a nautical mile, 5.2 %', () => {
  // ICAO Doc 8168: 3° is a gradient of 5.2 % (value from memory); 1 NM is 6 076.1 ft.
  expect(1000 / downNm(1000)).toBeCloseTo(0.0524 * 6076.1, 0);
  expect(downNm(10_000)).toBeCloseTo(31.4, 1);
});

test('slowing down takes a mile for each 10 kt, from no more than 250 kt', () => {
  // Common practice, no published source; 250 kt below 10 000 ft by 14 CFR 91.117.
  const climb = (mostKt: number): Pick<Aircraft, 'climb'> => ({
    climb: { flapsUpByKt: 70, speedKt: [60, mostKt], pitchDeg: [0, 10] },
  });
  expect(slowing(climb(375), 160)).toEqual({ fromKt: 250, toKt: 160, nm: 9 });
  expect(slowing(climb(80), 58)).toEqual({ fromKt: 80, toKt: 58, nm: 2.2 });
  expect(slowing(climb(60), 65)).toBeNull();
});
