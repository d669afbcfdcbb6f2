import { describe, expect, test } from 'vitest';
import type { EndsQuestion, RankedEnds } from '../../../src/core/runway/question';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { CROSSED, inventedField, question, wind } from './invented';

const order = ({ ends }: RankedEnds) => ends.map(({ designator }) => designator);
const endOf = ({ ends }: RankedEnds, name: string) => {
  const end = ends.find(({ designator }) => designator === name);
  if (!end) throw new Error(`no end ${name}`);
  return end;
};
const rank = (more: Parameters<typeof question>[0]) => rankRunwayEnds(question(more));

const WIDE = { crosswindKt: 50, tailwindKt: 50 };
const PARALLELS = inventedField([
  { designator: '09L', headingDeg: 90, lengthM: 2000 },
  { designator: '09R', headingDeg: 90.02, lengthM: 2600 },
]);

describe('in wind of 5 kt and more', () => {
  test('ends come by steady headwind, each with its number beside the next', () => {
    const ranked = rank({ wind: wind(300, 20), limits: WIDE });
    expect(order(ranked)).toEqual(['28', '01', '19', '10']);
    expect(ranked.best?.designator).toBe('28');
    expect(ranked.because).toBeNull();
    // 20 cos 34° = 16.58 and 20 cos 56° = 11.18, worked out by hand.
    expect(ranked.ends[0]?.reasons).toEqual([
      {
        code: 'most-headwind',
        headwindKt: expect.closeTo(16.58, 2),
        nextKt: expect.closeTo(11.18, 2),
      },
    ]);
    expect(ranked.ends.at(-1)?.reasons).toEqual([]);
  });

  test('within 2 kt of headwind the smaller share of the crosswind limit decides', () => {
    // 45° and 44° off, so 28 has 0.2 kt more headwind and less across; the swing towards the north
    // brings it straight across 28 and along 01.
    const ranked = rank({
      wind: wind(310, 15, { sectorDeg: [310, 356] }),
      limits: WIDE,
    });
    expect(ranked.best?.designator).toBe('01');
    expect(endOf(ranked, '28').headwindKt).toBeGreaterThan(endOf(ranked, '01').headwindKt ?? 0);
    expect(ranked.best?.reasons).toMatchObject([{ code: 'least-crosswind-share' }]);
    // 15 sin 46° of 50 against 15 of 50: 0.216 and 0.300, worked out by hand.
    expect(ranked.best?.reasons).toMatchObject([
      { share: expect.closeTo(0.216, 3), nextShare: expect.closeTo(0.3, 3) },
    ]);
  });

  test('a band is 2 kt below the best of those left, not a chain of near ties', () => {
    // Headwinds 10, 8.5 and 7 kt; across at worst sin 60°, sin 32° and sin 46°. 03 wins the band of
    // 8 to 10 kt. Of the rest 05 is less across, but 3 kt below 01; only by way of 03 is it near.
    const off = (kt: number) => (Math.acos(kt / 10) * 180) / Math.PI;
    const field = inventedField([
      { designator: '01', headingDeg: 360 },
      { designator: '03', headingDeg: off(8.5) },
      { designator: '05', headingDeg: off(7) },
    ]);
    const ranked = rank({
      field,
      wind: wind(360, 10, { sectorDeg: [360, 60] }),
      limits: WIDE,
      variationDeg: 0,
    });
    expect(order(ranked).slice(0, 3)).toEqual(['03', '01', '05']);
  });

  test('2 kt less headwind is as good, more than 2 kt is not', () => {
    const bestWith = (nextKt: number) => {
      const headingDeg = (Math.acos(nextKt / 10) * 180) / Math.PI;
      const field = inventedField([
        { designator: '01', headingDeg: 360 },
        { designator: '03', headingDeg },
      ]);
      // The swing goes past the second runway, so that it always has less across.
      const swinging = wind(360, 10, { sectorDeg: [360, 75] });
      return rank({ field, wind: swinging, limits: WIDE, variationDeg: 0 }).best?.designator;
    };
    expect(bestWith(8.05)).toBe('03');
    expect(bestWith(7.95)).toBe('01');
  });

  test('parallels are settled by the runway left over, not by a hundredth of a degree', () => {
    const needed = { '09L': 900, '09R': 900 } as Record<string, number>;
    const ranked = rank({
      field: PARALLELS,
      wind: wind(80, 12),
      lengthNeededM: (end) => needed[end] ?? 900,
    });
    expect(ranked.best?.designator).toBe('09R');
    expect(ranked.best?.leftM).toBeCloseTo(1700, 6);
    expect(ranked.best?.reasons).toEqual([
      { code: 'most-runway-left', leftM: expect.closeTo(1700, 3), nextM: expect.closeTo(1100, 3) },
    ]);
  });

  test('where the length needed is not known, the longer runway stands for the more left over', () => {
    const ranked = rank({ field: PARALLELS, wind: wind(80, 12) });
    expect(ranked.best?.designator).toBe('09R');
    expect(ranked.best?.leftM).toBeNull();
    expect(ranked.best?.reasons).toEqual([
      { code: 'longest-runway', availableM: 2600, nextM: 2000 },
    ]);
  });

  test('an end on which it is known what is left comes before one on which it is not', () => {
    const ranked = rank({
      field: PARALLELS,
      wind: wind(80, 12),
      lengthNeededM: (end) => (end === '09L' ? 900 : null),
    });
    expect(ranked.best?.designator).toBe('09L');
    expect(ranked.best?.reasons).toEqual([{ code: 'most-runway-left', leftM: 1100, nextM: null }]);
  });

  test('what is alike in everything else goes to the shorter taxi, then by number', () => {
    const field = inventedField([
      { designator: '09L', headingDeg: 90 },
      { designator: '09R', headingDeg: 90 },
    ]);
    const taxi = rank({
      field,
      wind: wind(80, 12),
      taxiDistanceM: (end) => (end === '09R' ? 400 : 900),
    });
    expect(taxi.best?.designator).toBe('09R');
    expect(taxi.best?.reasons).toEqual([{ code: 'shortest-taxi', taxiM: 400, nextM: 900 }]);
    const alike = rank({ field, wind: wind(80, 12) });
    expect(alike.best?.designator).toBe('09L');
    expect(alike.best?.reasons).toEqual([{ code: 'alike' }]);
  });
});

describe('in light wind', () => {
  const light = (more: Partial<EndsQuestion> = {}) => rank({ wind: wind(300, 4), ...more });

  test('the calm-wind end comes first, then the most runway left, then the shortest taxi', () => {
    const field = inventedField(
      [
        { designator: '10', headingDeg: 86, lengthM: 1800 },
        { designator: '01', headingDeg: 356, lengthM: 1200 },
      ],
      '19',
    );
    const taxiM: Record<string, number> = { '10': 700, '28': 300, '01': 300, '19': 2000 };
    const ranked = light({
      field,
      taxiDistanceM: (end) => taxiM[end] ?? null,
      lengthNeededM: () => 600,
    });
    expect(ranked.light).toBe(true);
    expect(order(ranked)).toEqual(['19', '28', '10', '01']);
    expect(ranked.ends.map(({ reasons }) => reasons[0]?.code)).toEqual([
      'calm-wind-end',
      'shortest-taxi',
      'most-runway-left',
      undefined,
    ]);
  });

  test('what is alike in all that goes to the headwind there is', () => {
    const ranked = light();
    expect(order(ranked)).toEqual(['28', '01', '19', '10']);
    // 4 cos 34° and 4 cos 56°, worked out by hand.
    expect(ranked.best?.reasons).toEqual([
      {
        code: 'most-headwind',
        headwindKt: expect.closeTo(3.32, 2),
        nextKt: expect.closeTo(2.24, 2),
      },
    ]);
  });

  test('an end to which the taxi is not known comes after one to which it is', () => {
    const ranked = light({ taxiDistanceM: (end) => (end === '10' ? 5000 : null) });
    expect(ranked.best?.designator).toBe('10');
    expect(ranked.best?.reasons).toEqual([{ code: 'shortest-taxi', taxiM: 5000, nextM: null }]);
  });

  test('limits still apply', () => {
    const field = inventedField([{ designator: '09', headingDeg: 90 }], '27');
    const ranked = rank({ field, wind: wind(90, 4), limits: { crosswindKt: 10, tailwindKt: 3 } });
    expect(ranked.light).toBe(true);
    expect(order(ranked)).toEqual(['09', '27']);
    expect(ranked.best?.reasons).toEqual([{ code: 'only-one-within-limits' }]);
  });

  test('it takes the gust below 5 kt too, and a VRB below 5 kt is light', () => {
    expect(light({ wind: wind(300, 4, { gustKt: 5 }) }).light).toBe(false);
    expect(light({ wind: wind(null, 3, { variable: true }) }).light).toBe(true);
    expect(light({ wind: wind(null, 3, { variable: true, gustKt: 12 }) }).light).toBe(false);
    expect(light({ wind: wind(300, 4.9) }).light).toBe(true);
  });

  test('nothing holds until the wind turns, since the wind did not choose', () => {
    expect(light().holdsUntil).toBeNull();
  });

  test('a calm is light, and its components are 0, not −0 and not absent', () => {
    const ranked = light({ wind: wind(0, 0) });
    expect(ranked.light).toBe(true);
    expect(ranked.best).not.toBeNull();
    for (const end of ranked.ends) {
      expect(end).toMatchObject({
        headwindKt: 0,
        headwindLeastKt: 0,
        crosswindKt: 0,
        crosswindWorstKt: 0,
        tailwindWorstKt: 0,
      });
    }
  });
});

describe('in wind from anywhere', () => {
  test('runway left over decides, and the whole circle is judged', () => {
    const ranked = rank({
      field: PARALLELS,
      wind: wind(null, 8, { variable: true, gustKt: 9 }),
      lengthNeededM: () => 900,
    });
    expect(order(ranked)).toEqual(['09R', '27L', '09L', '27R']);
    expect(ranked.light).toBe(false);
    expect(ranked.holdsUntil).toBeNull();
    for (const end of ranked.ends) {
      expect(end).toMatchObject({
        headwindKt: null,
        crosswindKt: null,
        headwindLeastKt: -8,
        crosswindWorstKt: 9,
        tailwindWorstKt: 9,
      });
    }
  });

  test('a direction that was not reported is a wind from anywhere', () => {
    const missing = rank({ field: PARALLELS, wind: wind(null, 8) });
    const variable = rank({ field: PARALLELS, wind: wind(null, 8, { variable: true }) });
    expect(missing).toEqual(variable);
  });

  test('with more than the tailwind limit from anywhere, no end is within limits', () => {
    const ranked = rank({ wind: wind(null, 11, { variable: true }) });
    expect(ranked.best).toBeNull();
    expect(ranked.because).toBe('none-within-limits');
  });
});

describe('outside the limits', () => {
  test('ends follow by how little they fail, each saying of what and by how much', () => {
    const ranked = rank({ wind: wind(270, 12, { gustKt: 20, sectorDeg: [240, 300] }) });
    expect(order(ranked)).toEqual(['28', '01', '19', '10']);
    // 20 cos 56° behind 19 and 20 behind 10, where the swing holds 266°, worked out by hand.
    expect(endOf(ranked, '19').shortfalls).toEqual([
      { code: 'tailwind', worstKt: expect.closeTo(11.18, 1), limitKt: 10, gust: true },
    ]);
    expect(endOf(ranked, '10').shortfalls).toEqual([
      { code: 'tailwind', worstKt: expect.closeTo(20, 6), limitKt: 10, gust: false },
    ]);
    expect(endOf(ranked, '01').reasons).toEqual([{ code: 'within-limits' }]);
    expect(endOf(ranked, '19').reasons).toEqual([
      { code: 'fails-least', share: expect.closeTo(0.118, 2), nextShare: expect.closeTo(1, 6) },
    ]);
  });

  test('the end most into wind is not best when its runway is too short', () => {
    const field = inventedField([
      { designator: '10', headingDeg: 86, lengthM: 900 },
      { designator: '01', headingDeg: 356, lengthM: 1400 },
    ]);
    const ranked = rank({ field, wind: wind(300, 15), lengthNeededM: () => 1000 });
    expect(ranked.best?.designator).toBe('01');
    expect(endOf(ranked, '28')).toMatchObject({
      withinLimits: false,
      shortfalls: [{ code: 'length', neededM: 1000, availableM: 900 }],
      leftM: -100,
    });
  });

  test('a landing has LDA and a take-off TORA', () => {
    const field = inventedField([
      { designator: '09L', headingDeg: 90, lengthM: 2000, lda: [1400, 2000] },
      { designator: '09R', headingDeg: 90, lengthM: 1800 },
    ]);
    const asked = { field, wind: wind(90, 10), lengthNeededM: () => 1500 };
    expect(rank(asked).best).toMatchObject({ designator: '09L', availableM: 2000 });
    const landing = rank({ ...asked, purpose: 'landing' });
    expect(landing.best).toMatchObject({ designator: '09R', availableM: 1800 });
    expect(endOf(landing, '09L').shortfalls).toMatchObject([{ code: 'length', availableM: 1400 }]);
  });

  test('what cannot be used stays listed, last, with the reason, and in its usual order', () => {
    const field = inventedField([
      { designator: '10', headingDeg: 86, closed: [undefined, 'work in progress'] },
      { designator: '01', headingDeg: 356, lda: [0, 1400] },
    ]);
    const ranked = rank({ field, wind: wind(266, 18), purpose: 'landing' });
    expect(order(ranked)).toEqual(['19', '10', '28', '01']);
    expect(endOf(ranked, '28').shortfalls).toEqual([{ code: 'closed', why: 'work in progress' }]);
    expect(endOf(ranked, '01').shortfalls).toEqual([
      { code: 'not-for-purpose', purpose: 'landing' },
    ]);
    expect(endOf(ranked, '10').reasons).toMatchObject([{ code: 'fails-least', nextShare: null }]);
  });

  test('a limit that is only reached is kept', () => {
    const field = inventedField([{ designator: '01', headingDeg: 0 }]);
    const limits = { crosswindKt: 15, tailwindKt: 10 };
    const north = rank({ field, wind: wind(90, 15), limits, variationDeg: 0 });
    expect(endOf(north, '01').shortfalls).toEqual([]);
    const over = rank({ field, wind: wind(90, 15.01), limits, variationDeg: 0 });
    expect(endOf(over, '01').shortfalls).toMatchObject([{ code: 'crosswind', gust: false }]);
  });

  test('limits of 0 leave what blows straight down the runway, and nothing is not a number', () => {
    const field = inventedField([{ designator: '01', headingDeg: 0 }]);
    const limits = { crosswindKt: 0, tailwindKt: 0 };
    const ranked = rank({ field, wind: wind(360, 15), limits, variationDeg: 0 });
    expect(ranked.best?.designator).toBe('01');
    expect(ranked.holdsUntil).toMatchObject({ speedKt: null, limit: null, close: true });
    expect(ranked.holdsUntil?.left).toMatchObject({ lastDeg: 360, spareDeg: 0 });
    expect(ranked.holdsUntil?.right).toMatchObject({ lastDeg: 360, spareDeg: 0 });
    expect(ranked.holdsUntil?.left).toHaveProperty('then', null);
  });
});

describe('when the wind is not known well enough', () => {
  test('a speed only known to be above a number puts no end within limits', () => {
    for (const least of [{ speedIsMinimum: true }, { gustIsMinimum: true, gustKt: 12 }]) {
      const ranked = rank({ wind: wind(270, 10, least), limits: WIDE });
      expect(ranked).toMatchObject({ best: null, because: 'speed-unbounded', holdsUntil: null });
      expect(order(ranked)).toEqual(['28', '01', '19', '10']);
      for (const end of ranked.ends) {
        expect(end.withinLimits).toBe(false);
        expect(end.shortfalls).toEqual([{ code: 'speed-unbounded' }]);
      }
    }
    expect(rank({ wind: wind(270, 1, { speedIsMinimum: true }) })).toMatchObject({
      light: false,
      best: null,
    });
  });

  test('a direction without a speed is no wind: ends are listed by it, and none is best', () => {
    const ranked = rank({ wind: wind(300, null) });
    expect(ranked).toMatchObject({
      best: null,
      because: 'speed-not-known',
      holdsUntil: null,
      light: false,
    });
    expect(order(ranked)).toEqual(['28', '01', '19', '10']);
    expect(ranked.ends[0]).toMatchObject({
      headwindKt: null,
      headwindLeastKt: null,
      crosswindKt: null,
      crosswindWorstKt: null,
      tailwindWorstKt: null,
      withinLimits: false,
      shortfalls: [{ code: 'speed-not-known' }],
      reasons: [
        { code: 'most-aligned', offDeg: expect.closeTo(34, 1), nextDeg: expect.closeTo(56, 1) },
      ],
    });
  });
});

test('a wind given to magnetic north is turned by the variation', () => {
  // 270° true is 284° magnetic where the variation is 14° west.
  const asTrue = rank({ wind: wind(270, 12, { sectorDeg: [240, 300] }) });
  const asMagnetic = rank({
    wind: wind(284, 12, { sectorDeg: [254, 314] }),
    north: 'magnetic',
  });
  expect(order(asMagnetic)).toEqual(order(asTrue));
  expect(asMagnetic.best?.headwindKt).toBeCloseTo(asTrue.best?.headwindKt ?? 0, 9);
  expect(asMagnetic.best?.headingMagneticDeg).toBeCloseTo(280.01, 1);
});

test('the field is judged as it lies: no end is lost and none is added', () => {
  const ranked = rank({ wind: wind(270, 12) });
  expect([...order(ranked)].sort()).toEqual(['01', '10', '19', '28']);
  expect(CROSSED.runways).toHaveLength(2);
});

describe('a report that swings', () => {
  test('beyond where the best end changes is close, however far its mean is from there', () => {
    const swinging = rank({ wind: wind(30, 9, { sectorDeg: [350, 70] }) });
    const holds = swinging.holdsUntil;
    const [left, right] = [holds?.left, holds?.right];
    const spare = (side: typeof left) =>
      side === undefined || side === 'never' ? Number.POSITIVE_INFINITY : side.spareDeg;
    // 40° to either side.
    expect(holds?.swings).toBe(spare(left) < 40 || spare(right) < 40);
    expect(holds?.swings).toBe(true);
    expect(holds?.close).toBe(true);
  });

  test('within it is not close for that', () => {
    const holds = rank({ wind: wind(280, 12, { sectorDeg: [279, 281] }) }).holdsUntil;
    expect(holds?.swings).toBe(false);
  });
});
