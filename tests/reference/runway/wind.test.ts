import { expect, test } from 'vitest';
import type { RankedEnd } from '../../../src/core/runway/question';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { inventedField, question, wind } from '../../core/runway/invented';

const WIDE = { crosswindKt: 99, tailwindKt: 99 };

/** The end that heads exactly there, in a wind given to the same north. */
function endHeading(headingDeg: number, blowing: ReturnType<typeof wind>, limits = WIDE) {
  const field = inventedField([{ designator: '01', headingDeg }]);
  const ranked = rankRunwayEnds(question({ field, wind: blowing, limits, variationDeg: 0 }));
  const end = ranked.ends.find(({ designator }) => designator === '01');
  if (!end) throw new Error('no such end');
  return { ranked, end };
}

const headAndCross = ({ headwindKt, crosswindKt }: RankedEnd) => [headwindKt, crosswindKt];

test.each([
  // FAA private pilot knowledge test, figure 36: runway 18, wind 220° at 30 kt.
  { headingDeg: 180, from: 220, speed: 30, head: 23, cross: 19, within: 0.5 },
  // AOPA ePilot, vol. 4 no. 9: runway 33, wind 290° at 15 kt; 10 and 12, exactly 9.6 and 11.5.
  { headingDeg: 330, from: 290, speed: 15, head: 11.5, cross: -9.6, within: 0.05 },
  // The same: runway 33, wind 300° at 16 kt, crosswind 8.
  { headingDeg: 330, from: 300, speed: 16, head: 13.9, cross: -8, within: 0.05 },
  // Flight Design CTLS aircraft operating instructions, 5.3.1: direction 120, wind 070° at 11 kt.
  { headingDeg: 120, from: 70, speed: 11, head: 7.1, cross: -8.4, within: 0.05 },
])('on $headingDeg° a wind of $from°/$speed is $head along and $cross across', (example) => {
  const { end } = endHeading(example.headingDeg, wind(example.from, example.speed));
  const [head, cross] = headAndCross(end);
  expect(Math.abs((head ?? 0) - example.head)).toBeLessThan(example.within);
  expect(Math.abs((cross ?? 0) - example.cross)).toBeLessThan(example.within);
});

test('a wind of 255° on runway 20 reaches a crosswind limit of 17 kt at 20.75 kt', () => {
  // ECQB PPL(A), flight performance and planning, question 16.
  const { ranked } = endHeading(200, wind(255, 10), { crosswindKt: 17, tailwindKt: 10 });
  expect(ranked.best?.designator).toBe('01');
  expect(ranked.holdsUntil?.speedKt).toBeCloseTo(20.75, 2);
  expect(ranked.holdsUntil?.limit).toBe('crosswind');
});

test('60° off the runway a headwind of 10 kt takes 20 kt, and a crosswind of 35 kt takes 40', () => {
  // ECQB PPL(A), navigation, question 19: between 20 and 40 kt.
  expect(endHeading(0, wind(60, 20)).end.headwindKt).toBeCloseTo(10, 6);
  const limits = { crosswindKt: 35, tailwindKt: 10 };
  expect(endHeading(0, wind(60, 20), limits).ranked.holdsUntil?.speedKt).toBeCloseTo(40.4, 1);
});

test('with 5 kt or more it is the end most nearly aligned with the wind', () => {
  // FAA JO 7110.65, 3-5-1 a.
  const field = inventedField(
    [
      { designator: '09', headingDeg: 90 },
      { designator: '14', headingDeg: 140 },
      { designator: '01', headingDeg: 10 },
    ],
    '32',
  );
  const ends = [10, 90, 140, 190, 270, 320];
  const off = (a: number, b: number) => Math.abs(((a - b + 540) % 360) - 180);
  for (let from = 1; from <= 360; from++) {
    const [nearest = 0, second = 0] = [...ends].sort((a, b) => off(a, from) - off(b, from));
    const along = (heading: number) => Math.cos((off(heading, from) * Math.PI) / 180);
    // Winds between two ends, where neither has 2 kt more headwind, are settled by other rules.
    const speed = 5;
    if (speed * (along(nearest) - along(second)) <= 2) continue;
    const { best } = rankRunwayEnds(
      question({ field, wind: wind(from, speed), variationDeg: 0, limits: WIDE }),
    );
    expect(best?.headingTrueDeg).toBeCloseTo(nearest, 1);
  }
});

test('below 5 kt it is the calm-wind runway, from wherever the wind comes', () => {
  // FAA JO 7110.65, 3-5-1 b.
  const field = inventedField([{ designator: '09', headingDeg: 90 }], '27');
  for (let from = 1; from <= 360; from++) {
    const { best, light } = rankRunwayEnds(question({ field, wind: wind(from, 4) }));
    expect([best?.designator, light]).toEqual(['27', true]);
  }
  expect(rankRunwayEnds(question({ field, wind: wind(90, 5) })).best?.designator).toBe('09');
});

test('an end with more than 15 kt across or 5 kt behind, gusts included, can be ruled out', () => {
  // ICAO Doc 8168, Part I, section 7, 2.1 (and EASA AMC1 ATS.TR.260): where the crosswind with
  // gusts exceeds 15 kt, or the tailwind with gusts 5 kt, nothing but wind should decide.
  const limits = { crosswindKt: 15, tailwindKt: 5 };
  const shortfalls = (from: number, speed: number, gustKt: number | null) =>
    endHeading(360, wind(from, speed, { gustKt }), limits).end.shortfalls;
  expect(shortfalls(90, 15, null)).toEqual([]);
  expect(shortfalls(90, 10, 16)).toMatchObject([{ code: 'crosswind', limitKt: 15, gust: true }]);
  expect(shortfalls(90, 16, 20)).toMatchObject([{ code: 'crosswind', gust: false }]);
  expect(shortfalls(180, 5, null)).toEqual([]);
  expect(shortfalls(180, 4, 6)).toMatchObject([{ code: 'tailwind', limitKt: 5, gust: true }]);
});
