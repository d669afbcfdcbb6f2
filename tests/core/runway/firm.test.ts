/** How far the wind can turn before another end is best, worked out by hand from two runways at right angles. */

import { describe, expect, test } from 'vitest';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { inventedField, question, wind } from './invented';

const WIDE = { crosswindKt: 50, tailwindKt: 50 };

/** 01 to the north and 10 to the east. */
const SQUARE = inventedField([
  { designator: '01', headingDeg: 360 },
  { designator: '10', headingDeg: 90 },
]);

const firm = (fromDeg: number, sectorDeg: readonly [number, number]) => {
  const asked = question({ field: SQUARE, wind: wind(fromDeg, 20, { sectorDeg }), limits: WIDE });
  return rankRunwayEnds(asked).holdsUntil;
};

describe('a report that swings as far as the best end holds', () => {
  // From 045 all is alike on both, so that 01 is still best there. One degree further 10 has more
  // headwind, by half a knot, which is in the band of 2 kt, and less across at worst: with 20° of
  // swing 20 (sin 66° − sin 64°) = 0.3 kt of 50, a share of 0.006.
  test('does not go beyond it', () => {
    const holds = firm(25, [5, 45]);
    expect(holds).toMatchObject({
      right: { lastDeg: 45, spareDeg: 20 },
      swings: false,
      close: false,
    });
    expect(holds?.right).toHaveProperty('then', '10');
  });

  test('goes beyond it by a degree', () => {
    expect(firm(26, [6, 46])).toMatchObject({
      right: { lastDeg: 45, spareDeg: 19 },
      swings: true,
      close: true,
    });
  });
});

test('a report that swings far to one side and little to the other is held against each by itself', () => {
  // 35° to the left of its mean and 5° to the right. To the right 01 keeps for more than 5°: at 040
  // it still has 20 (cos 40° − sin 40°) = 2.5 kt more headwind than 10, above the band of 2 kt. To
  // the left it keeps to 315 at least, 80° away, where 28 to the west comes level with it.
  const holds = firm(35, [360, 40]);
  expect(holds).toMatchObject({ swings: false, close: false });
  expect(holds?.right === 'never' ? null : holds?.right.spareDeg).toBeLessThan(35);
});

test('a wind can turn by more than half a circle before the best end changes', () => {
  // One end is open, and 19 of 20 kt may blow from behind: cos⁻¹ 0.95 = 18.2° to either side of 180.
  // From 330 it may veer past north to 161, which is 191°, and back to 199, which is 131°.
  const field = inventedField([
    { designator: '36', headingDeg: 360, closed: [undefined, 'mowing'] },
  ]);
  const limits = { crosswindKt: 50, tailwindKt: 19 };
  expect(rankRunwayEnds(question({ field, wind: wind(330, 20), limits })).holdsUntil).toMatchObject(
    {
      left: { lastDeg: 199, spareDeg: 131 },
      right: { lastDeg: 161, spareDeg: 191 },
    },
  );
});
