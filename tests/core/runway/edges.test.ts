/** Where one rule gives way to the next: exactly at the edge, and just to either side of it. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { inventedField, question, wind } from './invented';

const sinDeg = (deg: number) => Math.sin((deg * Math.PI) / 180);

test('a margin of 5° is close and one of 6° is not, since reports are rounded to 10°', () => {
  const field = inventedField([{ designator: '36', headingDeg: 360 }]);
  // The wind stands on the nose; the crosswind limit lies half a degree beyond the last whole one.
  const firm = (spareDeg: number) =>
    rankRunwayEnds(
      question({
        field,
        wind: wind(360, 20),
        limits: { crosswindKt: 20 * sinDeg(spareDeg + 0.5), tailwindKt: 10 },
      }),
    ).holdsUntil;
  expect(firm(5)).toMatchObject({ left: { spareDeg: 5 }, right: { spareDeg: 5 }, close: true });
  expect(firm(6)).toMatchObject({ left: { spareDeg: 6 }, right: { spareDeg: 6 }, close: false });
});

/** Two runways that the wind meets from `aDeg` and `bDeg` to the right, the first the shorter one. */
function between(aDeg: number, bDeg: number) {
  const field = inventedField([
    { designator: '01', headingDeg: 40 - aDeg, lengthM: 1400 },
    { designator: '03', headingDeg: 40 - bDeg, lengthM: 2400 },
  ]);
  return rankRunwayEnds(
    question({ field, wind: wind(40, 20), limits: { crosswindKt: 20, tailwindKt: 10 } }),
  );
}

test('of ends in the headwind band, one per cent of the crosswind limit decides, and a quarter does not', () => {
  // Shares of a limit equal to the wind's speed are the sines of the angles.
  expect(sinDeg(10.6) - sinDeg(10)).toBeCloseTo(0.01, 3);
  expect(between(10, 10.6)).toMatchObject({ best: { designator: '01' } });
  expect(between(10, 10.6).best?.reasons[0]?.code).toBe('least-crosswind-share');
  expect(sinDeg(10.15) - sinDeg(10)).toBeCloseTo(0.0026, 4);
  expect(between(10, 10.15)).toMatchObject({ best: { designator: '03' } });
});

test('of parallels whose runway left over differs by a metre, none wins by a rounding of it', () => {
  const field = inventedField([
    { designator: '01', headingDeg: 10, lengthM: 1999 },
    { designator: '03', headingDeg: 10, lengthM: 2000 },
  ]);
  const asked = fc.record({
    neededM: fc.integer({ min: 300, max: 1500 }),
    fromDeg: fc.integer({ min: 1, max: 60 }),
    speedKt: fc.integer({ min: 6, max: 23 }),
  });
  fc.assert(
    fc.property(asked, ({ neededM, fromDeg, speedKt }) => {
      const { best } = rankRunwayEnds(
        question({
          field,
          wind: wind(fromDeg, speedKt),
          lengthNeededM: (_, headwindKt) => neededM * (1 - (headwindKt ?? 0) / 100),
          // A metre is as good, and so the shorter taxi decides.
          taxiDistanceM: (end) => (end === '01' ? 400 : 900),
        }),
      );
      expect(best?.designator).toBe('01');
    }),
    { numRuns: 500 },
  );
});

test('metres of runway left over decide, however short the taxi to the other', () => {
  // A metre is as good, and three are not.
  const field = inventedField([
    { designator: '01', headingDeg: 10, lengthM: 1997 },
    { designator: '03', headingDeg: 10, lengthM: 2000 },
  ]);
  const asked = question({
    field,
    wind: wind(10, 10),
    lengthNeededM: () => 1000,
    taxiDistanceM: (end) => (end === '01' ? 400 : 900),
  });
  expect(rankRunwayEnds(asked).best).toMatchObject({ designator: '03', leftM: 1000 });
});

test('of ends alike in light wind more than half a knot of headwind decides, and less is not read off a page', () => {
  // 4 kt from 060 on headings of 000 and of 010: 2.00 and 2.57 kt; on 000 and 007: 2.00 and 2.41 kt.
  const best = (headingDeg: number) => {
    const field = inventedField([
      { designator: '01', headingDeg: 0 },
      { designator: '03', headingDeg },
    ]);
    return rankRunwayEnds(question({ field, wind: wind(60, 4) })).best?.designator;
  };
  expect(best(10)).toBe('03');
  expect(best(7)).toBe('01');
});

test('a wind of 5 kt and more from anywhere is not calm, and the calm-wind end has no precedence', () => {
  // FAA JO 7110.65, 3-5-1: the calm-wind runway is for wind below 5 kt.
  const field = inventedField(
    [
      { designator: '01', headingDeg: 0, lengthM: 1400 },
      { designator: '03', headingDeg: 30, lengthM: 2000 },
    ],
    '01',
  );
  const best = (speedKt: number) =>
    rankRunwayEnds(question({ field, wind: wind(null, speedKt, { variable: true }) })).best
      ?.designator;
  expect(best(4)).toBe('01');
  expect(best(5)).toBe('03');
});

test('with a direction alone three degrees nearer to it come before a longer runway', () => {
  const field = inventedField([
    { designator: '01', headingDeg: 0, lengthM: 3000 },
    { designator: '03', headingDeg: 3, lengthM: 1400 },
  ]);
  const { ends } = rankRunwayEnds(question({ field, wind: wind(40, null) }));
  expect(ends[0]).toMatchObject({ designator: '03', reasons: [{ code: 'most-aligned' }] });
});
