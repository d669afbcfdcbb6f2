import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestEnd } from '../../../src/core/runway/bestEnd';
import type { Needs } from '../../../src/core/runway/needs';
import type { EndsQuestion, RankedEnds } from '../../../src/core/runway/question';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { runwayRing } from '../../../src/core/runway/ring';
import { anyQuestion } from './arbitraries';
import { inventedField, question, wind } from './invented';

const order = ({ ends }: RankedEnds) => ends.map(({ designator }) => designator);
const rank = (more: Parameters<typeof question>[0]) => rankRunwayEnds(question(more));
const shortfallsOf = ({ ends }: RankedEnds, name: string) =>
  ends.find(({ designator }) => designator === name)?.shortfalls;

const WIDE = { crosswindKt: 50, tailwindKt: 50 };

describe('an end closed today', () => {
  test('is last with its reason, and the next into wind is best', () => {
    const ranked = rank({ wind: wind(300, 15), closedToday: ['28'] });
    expect(ranked.best?.designator).toBe('01');
    expect(order(ranked).at(-1)).toBe('28');
    expect(shortfallsOf(ranked, '28')).toEqual([{ code: 'closed-today' }]);
    expect(shortfallsOf(ranked, '01')).toEqual([]);
  });

  test('says both where the field closes it too', () => {
    const field = inventedField([
      { designator: '10', headingDeg: 86, closed: ['birds nesting', undefined] },
    ]);
    const ranked = rank({ field, wind: wind(86, 8), closedToday: ['10'] });
    expect(shortfallsOf(ranked, '10')).toEqual([
      { code: 'closed', why: 'birds nesting' },
      { code: 'closed-today' },
    ]);
  });

  test('leaves no best where all are', () => {
    const ranked = rank({ wind: wind(300, 15), closedToday: ['01', '10', '19', '28'] });
    expect(ranked).toMatchObject({ best: null, because: 'none-within-limits' });
  });
});

describe('a limit on how much gusts exceed the wind', () => {
  const gusty = (gustKt: number, gustSpreadKt: number) =>
    rank({ wind: wind(276, 10, { gustKt }), limits: { ...WIDE, gustSpreadKt } });

  test('is kept when only reached', () => {
    expect(gusty(20, 10).best?.designator).toBe('28');
  });

  test('fails every end by the same', () => {
    const ranked = gusty(25, 10);
    expect(ranked).toMatchObject({ best: null, because: 'none-within-limits' });
    for (const { shortfalls } of ranked.ends) {
      expect(shortfalls).toEqual([{ code: 'gust-spread', spreadKt: 15, limitKt: 10 }]);
    }
    // 25 sin 80° = 24.6 kt across of 20 kt is a share of 0.23, and the gusts are 0.5 on every end.
    const across = rank({
      wind: wind(276, 10, { gustKt: 25 }),
      limits: { crosswindKt: 20, tailwindKt: 50, gustSpreadKt: 10 },
    });
    expect(order(across)).toEqual(['28', '01', '19', '10']);
  });

  test('is what the wind reaches first where that is so', () => {
    // The spread of 5 kt may double, and so may the wind of 10 kt; across on 276° there is little.
    expect(gusty(15, 10).holdsUntil).toMatchObject({ speedKt: 20, limit: 'gust-spread' });
    // Not where there is no gust: only the crosswind from 30° off, 10 sin 30° of 50 kt.
    const steady = rank({ wind: wind(296, 10), limits: { ...WIDE, gustSpreadKt: 10 } });
    expect(steady.holdsUntil?.limit).toBe('crosswind');
  });
});

describe('preferred ends', () => {
  const scheme = {
    ends: ['10', '19'],
    maxCrosswindKt: 15,
    maxTailwindKt: 5,
    applies: true,
  } as const;
  const preferring = (blowing: EndsQuestion['wind'], more: Partial<EndsQuestion> = {}) =>
    rank({ wind: blowing, limits: WIDE, preferred: scheme, ...more });

  test('come first in their own order while the wind on them is weak enough', () => {
    // 6 kt from 276°: 10 has 5.9 kt behind, which is too much; 19 has 5.9 across and 1.0 ahead.
    const ranked = preferring(wind(276, 6));
    expect(order(ranked)).toEqual(['19', '28', '01', '10']);
    expect(ranked.best?.reasons).toEqual([{ code: 'preferred', place: 2, nextPlace: null }]);
    // 5 kt from there is 4.9 behind.
    const weaker = preferring(wind(276, 5));
    expect(order(weaker)).toEqual(['10', '19', '28', '01']);
    expect(weaker.best?.reasons).toEqual([{ code: 'preferred', place: 1, nextPlace: 2 }]);
  });

  test('count the gusts', () => {
    // From 176° it blows along 19 and straight across 10.
    expect(preferring(wind(176, 14, { gustKt: 15 })).best?.designator).toBe('10');
    expect(preferring(wind(176, 14, { gustKt: 16 })).best?.designator).toBe('19');
    expect(order(preferring(wind(356, 4, { gustKt: 6 })))).toEqual(['10', '01', '28', '19']);
  });

  test('come before the calm-wind end, since both give way to a runway-use programme', () => {
    // FAA JO 7110.65, 3-5-1: the calm-wind runway below 5 kt, unless a runway-use program is in effect.
    const field = inventedField(
      [
        { designator: '10', headingDeg: 86 },
        { designator: '01', headingDeg: 356 },
      ],
      '28',
    );
    expect(preferring(wind(266, 3), { field }).best?.designator).toBe('10');
    expect(rank({ field, wind: wind(266, 3) }).best?.designator).toBe('28');
  });

  test('never come before an end within limits when they are not', () => {
    const ranked = preferring(wind(300, 12), { closedToday: ['10', '19'] });
    expect(ranked.best?.designator).toBe('28');
    const short = preferring(wind(276, 4), {
      purpose: 'landing',
      lengthNeededM: () => 1000,
      holdShortM: { '10': 900, '19': 1000 },
    });
    expect(short.best?.designator).toBe('19');
  });

  test('do not count where something speaks against them, or the wind is not known', () => {
    const off = { ...scheme, applies: false };
    expect(preferring(wind(300, 6), { preferred: off })).toEqual(
      rank({ wind: wind(300, 6), limits: WIDE }),
    );
    for (const unknown of [wind(300, null), wind(300, 4, { speedIsMinimum: true })]) {
      expect(preferring(unknown)).toEqual(rank({ wind: unknown, limits: WIDE }));
    }
  });
});

describe('holding short of another runway', () => {
  const asked = { wind: wind(276, 12), lengthNeededM: () => 1000 };

  test('lowers what a landing has, and nothing of a take-off', () => {
    const landing = rank({ ...asked, purpose: 'landing', holdShortM: { '28': 1100 } });
    expect(landing.best).toMatchObject({ designator: '28', availableM: 1100, leftM: 100 });
    const takeoff = rank({ ...asked, holdShortM: { '28': 900 } });
    expect(takeoff.best).toMatchObject({ designator: '28', availableM: 1400 });
  });

  test('rules an end out when that is too little', () => {
    const ranked = rank({ ...asked, purpose: 'landing', holdShortM: { '28': 900 } });
    expect(ranked.best?.designator).not.toBe('28');
    expect(shortfallsOf(ranked, '28')).toEqual([
      { code: 'length', of: 'lda', neededM: 1000, availableM: 900 },
    ]);
  });

  test('never lengthens a runway', () => {
    const ranked = rank({ ...asked, purpose: 'landing', holdShortM: { '28': 5000 } });
    expect(ranked.best).toMatchObject({ designator: '28', availableM: 1400 });
  });
});

describe('what is needed of an end', () => {
  const field = inventedField([
    { designator: '01', headingDeg: 360 },
    { designator: '10', headingDeg: 90 },
  ]);
  const needs = (more: Partial<Needs>): Needs => ({ lengthsM: { tora: 1000 }, ...more });

  test('is asked for in the least headwind of the swing, and knows the one reported', () => {
    // 20 kt from 360 that swings by 30° to either side: 20 cos 30° = 17.32 kt on 01.
    const asked: unknown[] = [];
    rank({
      field: inventedField([{ designator: '01', headingDeg: 360 }]),
      wind: wind(360, 20, { sectorDeg: [330, 30], gustKt: 28 }),
      limits: WIDE,
      lengthNeededM: (end, leastKt, reportedKt, spreadKt) => {
        if (end === '01') asked.push([leastKt, reportedKt, spreadKt]);
        return 1000;
      },
    });
    expect(asked[0]).toEqual([expect.closeTo(17.32, 2), expect.closeTo(20, 6), 8]);
  });

  test('rules an end out where the tyres would be too fast, and a twin can neither stop nor go on', () => {
    const refusing = (more: Partial<Needs>) =>
      rank({
        field,
        wind: wind(10, 10),
        limits: WIDE,
        lengthNeededM: (end) => needs(end === '01' ? more : {}),
      });
    expect(refusing({}).best?.designator).toBe('01');
    const tyres = { groundKt: 171, limitKt: 170 };
    expect(refusing({ tyres }).best?.designator).toBe('10');
    expect(shortfallsOf(refusing({ tyres }), '01')).toEqual([{ code: 'tyres', ...tyres }]);
    expect(refusing({ tyres: { groundKt: 170, limitKt: 170 } }).best?.designator).toBe('01');
    const goOn = { lowestKt: 111, stopKt: 110 };
    expect(refusing({ goOn }).best?.designator).toBe('10');
    expect(shortfallsOf(refusing({ goOn }), '01')).toEqual([{ code: 'go-on', ...goOn }]);
    expect(refusing({ goOn: { lowestKt: 110, stopKt: 110 } }).best?.designator).toBe('01');
  });

  test('puts those that fail in order by how much faster than the tyres take they would lift off', () => {
    // 4 % too fast on 01 and 8 % to the south, where the wind is behind; 12 % and 16 % on 10 and 28.
    const groundKt: Record<string, number> = { '01': 208, '19': 216, '10': 224, '28': 232 };
    const ranked = rank({
      field,
      wind: wind(280, 10),
      limits: WIDE,
      lengthNeededM: (end) => needs({ tyres: { groundKt: groundKt[end] ?? 0, limitKt: 200 } }),
    });
    expect(order(ranked)).toEqual(['01', '19', '10', '28']);
    expect(ranked.ends[0]?.reasons).toEqual([
      { code: 'fails-least', share: expect.closeTo(0.04, 9), nextShare: expect.closeTo(0.08, 9) },
    ]);
  });
});

test('the ring is drawn anew when the swing of the wind changes, or the way to an end', () => {
  const field = inventedField([
    { designator: '01', headingDeg: 360 },
    { designator: '02', headingDeg: 360 },
  ]);
  const limits = { crosswindKt: 15, tailwindKt: 10 };
  const at = (more: Partial<EndsQuestion>) =>
    runwayRing(question({ field, limits, wind: wind(360, 20), ...more }))?.[0];
  expect(at({})).toBe('01');
  // 20 sin 60° = 17.3 kt across at worst, which is too much, and 20 sin 30° = 10 kt is not.
  expect(at({ wind: wind(360, 20, { sectorDeg: [300, 60] }) })).toBeNull();
  expect(at({ wind: wind(360, 20, { sectorDeg: [330, 30] }) })).toBe('01');
  const taxiTo = (near: string) => (end: string) => (end === near ? 400 : 900);
  expect(at({ taxiDistanceM: taxiTo('02') })).toBe('02');
  expect(at({ taxiDistanceM: taxiTo('01') })).toBe('01');
});

test('the ring is drawn anew when a rule of the pilot changes', () => {
  const asked = question({ wind: wind(276, 4), limits: WIDE });
  const rule = { ends: ['10'], maxCrosswindKt: 15, maxTailwindKt: 5, applies: true };
  const at = (more: Partial<EndsQuestion>) => runwayRing({ ...asked, ...more })?.[276];
  expect(at({})).toBe('28');
  expect(at({ closedToday: ['28'] })).not.toBe('28');
  expect(at({ closedByReport: ['28'] })).not.toBe('28');
  expect(at({ closedByReport: ['10'] })).toBe('28');
  expect(at({ preferred: rule })).toBe('10');
  expect(
    at({ limits: { ...WIDE, gustSpreadKt: 3 }, wind: wind(276, 4, { gustKt: 8 }) }),
  ).toBeNull();
  expect(at({ wind: wind(276, 4, { gustKt: 8 }) })).toBe('28');
  const landing = { purpose: 'landing', lengthNeededM: () => 1000 } as const;
  expect(at(landing)).toBe('28');
  expect(at({ ...landing, holdShortM: { '28': 500 } })).not.toBe('28');
  expect(at({})).toBe('28');
});

test('the best end alone is the one that the ranking calls best', () => {
  fc.assert(
    fc.property(anyQuestion, (asked) => {
      expect(bestEnd(asked)).toBe(rankRunwayEnds(asked).best?.designator ?? null);
    }),
  );
});

test('an end closed today is judged as if the field had closed it', () => {
  fc.assert(
    fc.property(anyQuestion, (asked) => {
      const [end] = rankRunwayEnds(asked).ends;
      fc.pre(end !== undefined);
      const named = end.designator;
      const runways = asked.field.runways.map((runway) => {
        const [one, other] = runway.ends;
        const shut = (given: typeof one) =>
          given.designator === named ? { ...given, closed: 'shut' } : given;
        return { ...runway, ends: [shut(one), shut(other)] as typeof runway.ends };
      });
      const byField = rankRunwayEnds({ ...asked, field: { ...asked.field, runways } });
      const byPilot = rankRunwayEnds({
        ...asked,
        closedToday: [...(asked.closedToday ?? []), named],
      });
      expect(order(byPilot)).toEqual(order(byField));
      expect(byPilot.best?.designator).toBe(byField.best?.designator);
    }),
  );
});
