import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareEnds, type EndsCompared } from '../../../src/core/runway/compare';
import type { EndsQuestion } from '../../../src/core/runway/question';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import type { Wind } from '../../../src/core/weather/report';
import { anyQuestion } from './arbitraries';
import { inventedField, question, wind } from './invented';

const WIDE = { crosswindKt: 50, tailwindKt: 50 };

function compared(asked: EndsQuestion, a: string, b: string): EndsCompared {
  const found = compareEnds(asked, a, b);
  if (!found) throw new Error(`nothing to compare of ${a} and ${b}`);
  return found;
}
const deciding = ({ rules }: EndsCompared) => rules.filter(({ decides }) => decides);

describe('two ends side by side', () => {
  test('have every rule with both numbers, and what comes after the deciding one is not applied', () => {
    const asked = question({ wind: wind(300, 20), limits: WIDE });
    const found = compared(asked, '01', '28');
    expect(found.first).toBe('b');
    expect(found.rules.map(({ rule, verdict, decides }) => [rule, verdict, decides])).toEqual([
      ['within-limits', 'alike', false],
      ['most-headwind', 'b', true],
      ['least-crosswind-share', 'not-applied', false],
      ['most-runway-left', 'not-applied', false],
      ['longest-runway', 'not-applied', false],
      ['shortest-taxi', 'not-applied', false],
      ['most-headwind', 'not-applied', false],
      ['alike', 'not-applied', false],
    ]);
    // 20 cos 56° and 20 cos 34°; across 20 sin 56° and 20 sin 34° of 50, worked out by hand.
    expect(found.rules[1]).toMatchObject({
      a: expect.closeTo(11.18, 2),
      b: expect.closeTo(16.58, 2),
      best: expect.closeTo(16.58, 2),
      slack: 2,
      better: 'greater',
    });
    expect(found.rules[2]).toMatchObject({
      a: expect.closeTo(0.332, 3),
      b: expect.closeTo(0.224, 3),
      best: null,
    });
  });

  test('show the band that a third end sets', () => {
    // Headwinds 10, 8.5 and 7.5 kt; the swing makes the last the least across, then the second.
    // Between the last two alone the crosswind would decide; but the first puts the last out of the
    // band, and with it the second comes before it.
    const off = (kt: number) => (Math.acos(kt / 10) * 180) / Math.PI;
    const field = inventedField([
      { designator: '01', headingDeg: 360 },
      { designator: '03', headingDeg: off(8.5) },
      { designator: '05', headingDeg: off(7.5) },
    ]);
    const asked = question({
      field,
      wind: wind(360, 10, { sectorDeg: [360, 80] }),
      limits: WIDE,
      variationDeg: 0,
    });
    const found = compared(asked, '05', '03');
    expect(found.first).toBe('b');
    const [rule] = deciding(found);
    expect(rule).toMatchObject({ rule: 'most-headwind', verdict: 'b', slack: 2 });
    expect(rule?.a).toBeCloseTo(7.5, 2);
    expect(rule?.b).toBeCloseTo(8.5, 2);
    expect(rule?.best).toBeCloseTo(10, 2);
    const across = found.rules.find((applied) => applied.rule === 'least-crosswind-share');
    expect(across?.a).toBeLessThan(across?.b ?? 0);
  });

  test('of which one is within limits are settled by that', () => {
    const asked = question({ wind: wind(270, 20) });
    const found = compared(asked, '28', '10');
    expect(deciding(found)).toMatchObject([{ rule: 'within-limits', a: 1, b: 0, verdict: 'a' }]);
  });

  test('that both fail are settled by how little', () => {
    const asked = question({ wind: wind(270, 12, { gustKt: 20, sectorDeg: [240, 300] }) });
    const found = compared(asked, '10', '19');
    expect(found.rules[0]).toMatchObject({ rule: 'within-limits', a: 0, b: 0, verdict: 'alike' });
    expect(deciding(found)).toMatchObject([
      { rule: 'fails-least', a: expect.closeTo(1, 6), b: expect.closeTo(0.118, 2), verdict: 'b' },
    ]);
  });

  test('that nothing separates come by their designators', () => {
    const field = inventedField([
      { designator: '09L', headingDeg: 90 },
      { designator: '09R', headingDeg: 90 },
    ]);
    const found = compared(question({ field, wind: wind(80, 12) }), '09R', '09L');
    expect(deciding(found)).toMatchObject([{ rule: 'alike', a: 2, b: 1, verdict: 'b' }]);
    const taxi = found.rules.find(({ rule }) => rule === 'shortest-taxi');
    expect(taxi).toMatchObject({ a: null, b: null, verdict: 'not-applied' });
  });

  test('have no comparison with themselves, or with what the field has not', () => {
    const asked = question({ wind: wind(300, 20) });
    expect(compareEnds(asked, '28', '28')).toBeNull();
    expect(compareEnds(asked, '28', '36')).toBeNull();
    expect(compareEnds(asked, '36', '28')).toBeNull();
  });
});

/** Winds of every kind: light, from anywhere, without a speed, only known to be above a number. */
const anyWindKind = (directed: Wind): readonly Wind[] => [
  directed,
  { ...directed, speedKt: 3, gustKt: null },
  { ...directed, fromDeg: null, variable: true, sectorDeg: null },
  { ...directed, speedKt: null, gustKt: null },
  { ...directed, speedIsMinimum: true },
];

test('agrees with the order of the ranking for every two ends, in every kind of wind', () => {
  fc.assert(
    fc.property(anyQuestion, fc.integer({ min: 0, max: 4 }), (given, kind) => {
      const asked = { ...given, wind: anyWindKind(given.wind)[kind] ?? given.wind };
      const { ends } = rankRunwayEnds(asked);
      ends.forEach((upper, i) => {
        for (const lower of ends.slice(i + 1)) {
          const found = compared(asked, lower.designator, upper.designator);
          expect(found.first).toBe('b');
          const decided = deciding(found);
          expect(decided.map(({ verdict }) => verdict)).toEqual(['b']);
          const at = found.rules.findIndex(({ decides }) => decides);
          for (const { verdict } of found.rules.slice(0, at)) {
            expect(['alike', 'not-applied']).toContain(verdict);
          }
          // Turned about, the same is said of the other letter.
          const other = compared(asked, upper.designator, lower.designator);
          expect(other.first).toBe('a');
          expect(deciding(other)).toEqual(
            decided.map((rule) => ({ ...rule, a: rule.b, b: rule.a, verdict: 'a' })),
          );
        }
      });
    }),
    { numRuns: 200 },
  );
}, 30_000);

test('names the rule that the ranking gives as reason between two that follow each other', () => {
  fc.assert(
    fc.property(anyQuestion, fc.integer({ min: 0, max: 4 }), (given, kind) => {
      const asked = { ...given, wind: anyWindKind(given.wind)[kind] ?? given.wind };
      const { ends } = rankRunwayEnds(asked);
      ends.slice(1).forEach((lower, i) => {
        const [reason] = ends[i]?.reasons ?? [];
        const found = compared(asked, ends[i]?.designator ?? '', lower.designator);
        const code = reason?.code === 'only-one-within-limits' ? 'within-limits' : reason?.code;
        expect(deciding(found)[0]?.rule).toBe(code);
      });
    }),
    { numRuns: 200 },
  );
});

test('every verdict follows from the numbers shown', () => {
  fc.assert(
    fc.property(anyQuestion, (asked) => {
      const { ends } = rankRunwayEnds(asked);
      const [one] = ends;
      const other = ends.at(-1);
      fc.pre(one !== undefined && other !== undefined);
      for (const rule of compared(asked, one.designator, other.designator).rules) {
        const { a, b, best, slack, better, verdict } = rule;
        if (verdict === 'not-applied') continue;
        if (best === null) throw new Error('applied without a best');
        const passes = (number: number | null) =>
          number !== null &&
          (better === 'greater' ? number >= best - slack : number <= best + slack);
        expect([passes(a), passes(b)]).toEqual(
          verdict === 'alike' ? [true, true] : [verdict === 'a', verdict === 'b'],
        );
      }
    }),
    { numRuns: 200 },
  );
});
