import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type TimedWind, windTrend } from '../../../src/core/weather/windTrend';

/** Every threshold here is common practice, no published source. */

const MINUTE_MS = 60_000;
const START_MS = Date.UTC(1987, 3, 5, 18, 0);

type Entered = readonly [minute: number, from: number | null, speed: number | null, gust?: number];

const timed = ([minute, fromTrueDeg, speedKt, gust]: Entered): TimedWind => ({
  timeMs: START_MS + minute * MINUTE_MS,
  fromTrueDeg,
  speedKt,
  gustKt: gust ?? null,
});

/** The trend right after the last wind, or so many minutes later. */
function trendOf(entered: readonly Entered[], later = 0) {
  const last = Math.max(...entered.map(([minute]) => minute));
  return windTrend(entered.map(timed), START_MS + (last + later) * MINUTE_MS);
}

const because = (entered: readonly Entered[], later = 0) => {
  const trend = trendOf(entered, later);
  return trend.kind === 'thin' ? trend.because : trend.kind;
};

describe('winds that go somewhere', () => {
  test('veer and strengthen, over the time they were entered in', () => {
    // On one line, so by hand: 40° and 8 kt in 40 minutes.
    const trend = trendOf([
      [0, 180, 8],
      [20, 200, 12],
      [40, 220, 16],
    ]);
    expect(trend).toEqual({
      kind: 'known',
      turn: 'veering',
      turnDeg: expect.closeTo(40, 9),
      strength: 'strengthening',
      changeKt: expect.closeTo(8, 9),
      basis: { count: 3, minutes: 40 },
    });
  });

  test('back through north the shorter way, and ease', () => {
    const trend = trendOf([
      [0, 20, 20],
      [30, 360, 17],
      [60, 340, 14],
    ]);
    expect(trend).toMatchObject({
      turn: 'backing',
      turnDeg: expect.closeTo(-40, 9),
      strength: 'easing',
      changeKt: expect.closeTo(-6, 9),
    });
  });

  test('have turned all the way round when they have', () => {
    const round: Entered[] = [0, 1, 2, 3, 4, 5, 6].map((i) => [10 * i, (60 * i) % 360 || 360, 10]);
    expect(trendOf(round)).toMatchObject({ turn: 'veering', turnDeg: expect.closeTo(360, 9) });
  });

  test('are laid through by least squares', () => {
    // Directions 0, 10, 40 over 0, 20, 40 min: slope (40 − 0)/40 = 1°/min, since the middle time is
    // the mean; speeds 10, 10, 16 likewise 6 kt. Worked out by hand.
    const trend = trendOf([
      [0, 200, 10],
      [20, 210, 10],
      [40, 240, 16],
    ]);
    expect(trend).toMatchObject({ turnDeg: expect.closeTo(40, 9), changeKt: expect.closeTo(6, 9) });
    // Times 0, 10, 40 with turns 0, 0, 30: Σ(t−t̄)(v−v̄)/Σ(t−t̄)² = 700/866.7, times 40 min = 32.3.
    const uneven = trendOf([
      [0, 200, 10],
      [10, 200, 10],
      [40, 230, 10],
    ]);
    expect(uneven).toMatchObject({ turnDeg: expect.closeTo(32.31, 2) });
  });

  test('may be entered in any order', () => {
    const winds: Entered[] = [
      [40, 220, 16],
      [0, 180, 8],
      [20, 200, 12],
    ];
    expect(trendOf(winds)).toEqual(trendOf([...winds].sort((a, b) => a[0] - b[0])));
  });
});

describe('winds that go nowhere', () => {
  test('are steady: rounding to 10° alone makes no turn', () => {
    // One wind of 185° may be reported as either.
    for (const directions of [
      [180, 190, 190],
      [180, 180, 190],
      [180, 190, 180],
    ]) {
      const trend = trendOf(directions.map((from, i) => [20 * i, from, 10] as const));
      expect(trend).toMatchObject({ kind: 'known', turn: 'steady', strength: 'steady' });
    }
  });

  test('and a turn of 20° over three reports is one', () => {
    const trend = trendOf([
      [0, 180, 10],
      [20, 190, 10],
      [40, 200, 10],
    ]);
    expect(trend).toMatchObject({ turn: 'veering', turnDeg: expect.closeTo(20, 9) });
  });

  test('rounded to 10° and 1 kt, no wind that stays the same is called a trend', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            gapMin: fc.integer({ min: 5, max: 30 }),
            offDeg: fc.double({ min: -4.99, max: 4.99, noNaN: true }),
            offKt: fc.double({ min: -0.49, max: 0.49, noNaN: true }),
          }),
          { minLength: 3, maxLength: 8 },
        ),
        (reports) => {
          let minute = 0;
          const entered = reports.map(({ gapMin, offDeg, offKt }): Entered => {
            minute += gapMin;
            return [minute, 237 + offDeg, 12 + offKt];
          });
          const trend = trendOf(entered);
          if (trend.kind === 'thin') expect(trend.because).toBe('short-span');
          else expect([trend.turn, trend.strength]).toEqual(['steady', 'steady']);
        },
      ),
    );
  });
});

describe('a basis that is thin', () => {
  const good: Entered[] = [
    [0, 180, 10],
    [15, 190, 10],
    [30, 200, 10],
  ];

  test('has fewer than three winds', () => {
    expect(because([])).toBe('few-winds');
    expect(because(good.slice(0, 2))).toBe('few-winds');
    expect(because(good)).toBe('known');
  });

  test('spans less than 20 minutes', () => {
    const squeezed = (span: number): Entered[] =>
      good.map(([m, ...rest]) => [(m * span) / 30, ...rest]);
    expect(because(squeezed(19))).toBe('short-span');
    expect(because(squeezed(20))).toBe('known');
  });

  test('ends more than 90 minutes ago', () => {
    expect(because(good, 90)).toBe('known');
    expect(because(good, 91)).toBe('last-too-old');
  });

  test('ends with a wind that is light, variable or without a speed', () => {
    expect(because([...good, [40, 200, 4]])).toBe('light-or-variable');
    expect(because([...good, [40, null, 8]])).toBe('light-or-variable');
    expect(because([...good, [40, 200, null]])).toBe('light-or-variable');
    // Not when it gusts to 5 kt and more.
    expect(because([...good, [40, 210, 4, 9]])).not.toBe('light-or-variable');
  });

  test('begins anew after a light or variable wind', () => {
    const after: Entered[] = [...good, [40, null, 3], [50, 300, 10], [60, 310, 10], [75, 320, 10]];
    expect(trendOf(after)).toMatchObject({
      turnDeg: expect.closeTo(20, 0),
      basis: { count: 3, minutes: 25 },
    });
  });

  test('leaves out what is more than 3 hours before the last', () => {
    const trend = trendOf([[0, 90, 30], ...good.map(([m, ...r]): Entered => [m + 151, ...r])]);
    expect(trend.basis).toEqual({ count: 3, minutes: 30 });
    const kept = trendOf([[0, 170, 10], ...good.map(([m, ...r]): Entered => [m + 150, ...r])]);
    expect(kept.basis).toEqual({ count: 4, minutes: 180 });
  });

  test('does not say which way round it went', () => {
    expect(because([...good, [40, 340, 10]])).toBe('way-round-unknown');
  });

  test('jumps about more than it goes', () => {
    const jumping: Entered[] = [180, 240, 170, 250, 180].map((from, i) => [15 * i, from, 10]);
    expect(because(jumping)).toBe('scattered');
    const gusty: Entered[] = [6, 20, 7, 21, 6].map((speed, i) => [15 * i, 200, speed]);
    expect(because(gusty)).toBe('scattered');
  });
});

/** Winds that make a trend, whatever it is: with direction, not light, over less than 3 hours. */
const anyWinds = fc
  .array(
    fc.record({
      gapMin: fc.integer({ min: 1, max: 25 }),
      stepDeg: fc.integer({ min: -60, max: 60 }),
      speedKt: fc.integer({ min: 5, max: 40 }),
    }),
    { minLength: 3, maxLength: 7 },
  )
  .map((steps) => {
    let minute = 0;
    let from = 100;
    return steps.map(({ gapMin, stepDeg, speedKt }): Entered => {
      minute += gapMin;
      from += stepDeg;
      return [minute, ((from % 360) + 360) % 360 || 360, speedKt];
    });
  });

test('told backwards, the winds go the other way by as much', () => {
  fc.assert(
    fc.property(anyWinds, (entered) => {
      const there = trendOf(entered);
      const back = trendOf(entered.map(([minute, ...rest]): Entered => [-minute, ...rest]));
      expect(back.kind).toBe(there.kind);
      if (there.kind === 'thin' || back.kind === 'thin') return;
      expect(back.turnDeg).toBeCloseTo(-there.turnDeg, 6);
      expect(back.changeKt).toBeCloseTo(-there.changeKt, 6);
    }),
  );
});

test('turned as a whole, the winds turn by as much as before', () => {
  fc.assert(
    fc.property(anyWinds, fc.integer({ min: 1, max: 359 }), (entered, deg) => {
      const here = trendOf(entered);
      const turned = trendOf(
        entered.map(([m, from, speed]): Entered => [m, ((from ?? 0) + deg) % 360, speed]),
      );
      if (here.kind === 'thin') expect(turned).toEqual(here);
      else expect(turned).toMatchObject({ turnDeg: expect.closeTo(here.turnDeg, 6) });
    }),
  );
});

test('how far winds stray is judged by the residual standard deviation, two degrees of freedom lost', () => {
  // s = √(Σr² / (n − 2)), NIST/SEMATECH e-Handbook of Statistical Methods [from memory]. Three
  // speeds 10, 10 + x, 10 at even steps: the line is level, Σr² = ⅔x², so s = 0.816 x; s passes the
  // 3 kt of a trend at x = 3.67.
  const bump = (kt: number): readonly Entered[] => [
    [0, 200, 10],
    [15, 200, 10 + kt],
    [30, 200, 10],
  ];
  expect(because(bump(3.6))).toBe('known');
  expect(because(bump(3.75))).toBe('scattered');
});
