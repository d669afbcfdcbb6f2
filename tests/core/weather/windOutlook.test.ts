import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ComingWind, windOutlook } from '../../../src/core/weather/windOutlook';
import type { TimedWind } from '../../../src/core/weather/windTrend';

const MINUTE_MS = 60_000;
const START_MS = Date.UTC(1987, 3, 5, 23, 30);

type Entered = readonly [minute: number, from: number, speed: number, gust?: number];

const winds = (entered: readonly Entered[]): TimedWind[] =>
  entered.map(([minute, fromTrueDeg, speedKt, gust]) => ({
    timeMs: START_MS + minute * MINUTE_MS,
    fromTrueDeg,
    speedKt,
    gustKt: gust ?? null,
  }));

/** Veers by 1° a minute, 10 kt. */
const VEERING: Entered[] = [
  [0, 300, 10],
  [20, 320, 10],
  [40, 340, 10],
];

/** 28 up to a direction, 01 beyond; over north counted on. */
const changesAt =
  (deg: number) =>
  ({ fromTrueDeg }: ComingWind) =>
    (fromTrueDeg < 180 ? fromTrueDeg + 360 : fromTrueDeg) > deg ? '01' : '28';

const at = (minute: number) => START_MS + minute * MINUTE_MS;

describe('a wind that goes on as it does', () => {
  test('changes the answer at the first 5 minutes by which it has turned past', () => {
    // 340° at minute 40 and 1° a minute: 352° is passed 12 minutes on, seen at 15. Looking every 5
    // minutes is common practice, no published source.
    const outlook = windOutlook(winds(VEERING), at(40), changesAt(352));
    expect(outlook).toMatchObject({
      kind: 'changes',
      minutes: 15,
      now: '28',
      wind: { fromTrueDeg: expect.closeTo(355, 6), speedKt: 10, gustKt: null },
      basis: { count: 3, minutes: 40 },
    });
    expect(outlook).toHaveProperty('then', '01');
  });

  test('passes north, which is 360 and never the 0 of a calm', () => {
    const asked: number[] = [];
    const outlook = windOutlook(winds(VEERING), at(40), (wind) => {
      asked.push(wind.fromTrueDeg);
      return changesAt(372)(wind);
    });
    expect(outlook).toMatchObject({ kind: 'changes', minutes: 35 });
    expect(outlook).toHaveProperty('then', '01');
    expect(asked).toContain(360);
    for (const deg of asked) {
      expect(deg).toBeGreaterThan(0);
      expect(deg).toBeLessThanOrEqual(360);
    }
  });

  test('is counted from now, having gone on since the last wind', () => {
    expect(windOutlook(winds(VEERING), at(50), changesAt(352))).toMatchObject({ minutes: 5 });
    const late = windOutlook(winds(VEERING), at(60), changesAt(352));
    expect(late).toMatchObject({ minutes: 0, now: '28' });
    expect(late).toHaveProperty('then', '01');
  });

  test('holds when nothing changes within 2 hours', () => {
    // 120 minutes turn it to 460°, which is 100. No line is drawn on further: common practice, no
    // published source.
    expect(windOutlook(winds(VEERING), at(40), changesAt(461))).toEqual({
      kind: 'holds',
      minutes: 120,
      now: '28',
      basis: { count: 3, minutes: 40 },
    });
    expect(windOutlook(winds(VEERING), at(40), changesAt(459))).toMatchObject({ minutes: 120 });
  });

  test('grows past what an end can take, its gust with it', () => {
    // 0.2 kt a minute from 18, gusting 6 above: the gust passes 27 kt after 15 minutes.
    const growing = winds([
      [0, 270, 10],
      [20, 270, 14, 18],
      [40, 270, 18, 24],
    ]);
    const outlook = windOutlook(growing, at(40), ({ gustKt }) =>
      (gustKt ?? 0) > 27.5 ? null : '28',
    );
    expect(outlook).toMatchObject({
      kind: 'changes',
      minutes: 20,
      now: '28',
      wind: { speedKt: expect.closeTo(22, 6), gustKt: expect.closeTo(28, 6) },
    });
    expect(outlook).toHaveProperty('then', null);
  });

  test('dies down to nothing and no further', () => {
    const easing = winds([
      [0, 270, 14],
      [20, 270, 10],
      [40, 270, 6],
    ]);
    const speeds: number[] = [];
    windOutlook(easing, at(40), ({ speedKt }) => {
      speeds.push(speedKt);
      return '28';
    });
    expect(Math.min(...speeds)).toBe(0);
  });

  test('is not told from a thin basis, and no end is asked about', () => {
    const outlook = windOutlook(winds(VEERING.slice(1)), at(40), () => {
      throw new Error('asked');
    });
    expect(outlook).toEqual({
      kind: 'thin',
      because: 'few-winds',
      basis: { count: 2, minutes: 20 },
    });
  });
});

test('a wind that stays the same changes nothing, whatever is asked of it', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 360 }),
      fc.integer({ min: 5, max: 40 }),
      fc.integer({ min: 0, max: 90 }),
      (from, speed, later) => {
        const same = winds([0, 15, 30].map((minute) => [minute, from, speed] as const));
        const answer = ({ fromTrueDeg, speedKt }: ComingWind) => `${fromTrueDeg} ${speedKt}`;
        expect(windOutlook(same, at(30 + later), answer)).toMatchObject({
          kind: 'holds',
          now: `${from} ${speed}`,
        });
      },
    ),
  );
});

test('the answer is the old one up to the minutes named, and the new one then', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: -50, max: 50 }),
      fc.integer({ min: -6, max: 10 }),
      fc.integer({ min: 0, max: 90 }),
      fc.integer({ min: 30, max: 180 }),
      (stepDeg, stepKt, later, sector) => {
        const entered = [0, 1, 2].map(
          (i): Entered => [
            20 * i,
            (((200 + i * stepDeg) % 360) + 360) % 360 || 360,
            20 + i * stepKt,
          ],
        );
        const asked: (string | null)[] = [];
        const answer = ({ fromTrueDeg, speedKt }: ComingWind) => {
          const end = speedKt > 35 ? null : `${Math.floor(fromTrueDeg / sector)}`;
          asked.push(end);
          return end;
        };
        const outlook = windOutlook(winds(entered), at(40 + later), answer);
        if (outlook.kind === 'thin') throw new Error(outlook.because);
        const [now, ...then] = asked;
        expect(outlook.now).toBe(now);
        if (outlook.kind === 'holds') {
          expect(then).toEqual(new Array(25).fill(now));
          return;
        }
        expect(then.length).toBe(outlook.minutes / 5 + 1);
        expect(then.slice(0, -1).every((end) => end === now)).toBe(true);
        expect(then.at(-1)).toBe(outlook.then);
        expect(outlook.then).not.toBe(now);
      },
    ),
  );
});
