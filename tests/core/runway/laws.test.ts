import fc from 'fast-check';
import { expect, test } from 'vitest';
import { endsOf } from '../../../src/core/airfield/ends';
import { degreesOf } from '../../../src/core/angle';
import type { EndsQuestion, RankedEnd } from '../../../src/core/runway/question';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { runwayRing } from '../../../src/core/runway/ring';
import { envelopeOf, isInSwing } from '../../../src/core/weather/envelope';
import { anyDirectedWind, anyField, anyQuestion, compass, turned } from './arbitraries';
import { inventedField, question, wind } from './invented';

const compass360 = (deg: number) => ((deg % 360) + 360) % 360;

/** For laws that ask for some thousand rankings; a busy machine takes its time. */
const LONG_MS = 60_000;

const bestOf = (asked: EndsQuestion) => rankRunwayEnds(asked).best?.designator ?? null;
const inRad = (deg: number) => (deg * Math.PI) / 180;

test(
  'each degree of the ring is what the ranking answers there',
  () => {
    fc.assert(
      fc.property(anyQuestion, (asked) => {
        const ring = runwayRing(asked) ?? [];
        expect(ring).toHaveLength(360);
        const { fromDeg } = asked.wind;
        const fromTrueDeg = (fromDeg ?? 0) + (asked.north === 'magnetic' ? asked.variationDeg : 0);
        for (let deg = 0; deg < 360; deg += 7) {
          const there = turned(asked.wind, deg - fromTrueDeg);
          expect([deg, ring[deg]]).toEqual([deg, bestOf({ ...asked, wind: there })]);
        }
      }),
      { numRuns: 80 },
    );
  },
  LONG_MS,
);

test('the ring is the same wherever the wind comes from today', () => {
  fc.assert(
    fc.property(anyQuestion, fc.integer({ min: 1, max: 359 }), (asked, deg) => {
      expect(runwayRing({ ...asked, wind: turned(asked.wind, deg) })).toEqual(runwayRing(asked));
    }),
  );
});

test('there is no ring where there is nothing to turn', () => {
  expect(runwayRing(question({ wind: wind(0, 0) }))).toBeNull();
  expect(runwayRing(question({ wind: wind(null, 8, { variable: true }) }))).toBeNull();
  expect(runwayRing(question({ wind: wind(null, 8) }))).toBeNull();
  expect(runwayRing(question({ wind: wind(270, null) }))).toBeNull();
});

test('where a speed is only known to be above a number the ring is empty all round', () => {
  const ring = runwayRing(question({ wind: wind(270, 30, { speedIsMinimum: true }) }));
  expect(ring).toEqual(new Array(360).fill(null));
});

test(
  'the best end holds to the last degree named, and one further is what is named',
  () => {
    fc.assert(
      fc.property(anyQuestion, (asked) => {
        const { best, holdsUntil } = rankRunwayEnds(asked);
        fc.pre(best !== null && holdsUntil !== null);
        const { left, right } = holdsUntil;
        for (const [side, sign] of [[left, -1] as const, [right, 1] as const]) {
          const at = (deg: number) => bestOf({ ...asked, wind: turned(asked.wind, sign * deg) });
          const last = side === 'never' ? 359 : side.spareDeg;
          for (let deg = last; deg > 0; deg -= 11) expect(at(deg)).toBe(best.designator);
          if (side === 'never') continue;
          expect(at(last + 1)).toBe(side.then);
          expect(side.then).not.toBe(best.designator);
          const lastDeg = compass((asked.wind.fromDeg ?? 0) + sign * last);
          expect(side.lastDeg).toBeCloseTo(lastDeg, 9);
        }
        const spares = [left, right].map((side) => (side === 'never' ? 360 : side.spareDeg));
        expect(holdsUntil.close).toBe(Math.min(...spares) <= 5 || holdsUntil.swings);
        // The swing's own edges, each counted from the mean.
        const { sectorDeg, fromDeg } = asked.wind;
        if (sectorDeg === null || fromDeg === null) expect(holdsUntil.swings).toBe(false);
        else if (isInSwing(fromDeg, sectorDeg)) {
          const [backs, veers] = [fromDeg - sectorDeg[0], sectorDeg[1] - fromDeg].map(compass360);
          const beyond = (backs ?? 0) > (spares[0] ?? 0) || (veers ?? 0) > (spares[1] ?? 0);
          expect(holdsUntil.swings).toBe(beyond);
        }
      }),
      { numRuns: 100 },
    );
  },
  LONG_MS,
);

test('turned all the way round, a runway that nothing rivals never gives way', () => {
  const field = inventedField([{ designator: '10', headingDeg: 86, closed: [undefined, 'shut'] }]);
  const { holdsUntil } = rankRunwayEnds(
    question({ field, wind: wind(90, 8), limits: { crosswindKt: 30, tailwindKt: 10 } }),
  );
  expect(holdsUntil).toMatchObject({ left: 'never', right: 'never', close: false });
});

test('the best end keeps its limits just up to the speed named', () => {
  fc.assert(
    fc.property(anyQuestion, ({ lengthNeededM: _, ...asked }) => {
      const { best, holdsUntil } = rankRunwayEnds(asked);
      fc.pre(best !== null && holdsUntil !== null && holdsUntil.speedKt !== null);
      const { speedKt, limit } = holdsUntil;
      const endAt = (kt: number): RankedEnd | undefined => {
        const grown = kt / (asked.wind.speedKt ?? Number.NaN);
        const gustKt = asked.wind.gustKt === null ? null : asked.wind.gustKt * grown;
        const { ends } = rankRunwayEnds({ ...asked, wind: { ...asked.wind, speedKt: kt, gustKt } });
        return ends.find(({ designator }) => designator === best.designator);
      };
      expect(endAt(speedKt * 0.9999)?.withinLimits).toBe(true);
      // Rarely two limits are reached within a ten-thousandth of one another, in either order.
      expect(endAt(speedKt * 1.0001)?.shortfalls.map(({ code }) => code)).toContain(limit);
    }),
  );
});

test('the worst components are the worst over every direction in the envelope, gust included', () => {
  fc.assert(
    fc.property(anyField, anyDirectedWind, (field, blowing) => {
      const { ends } = rankRunwayEnds(question({ field, wind: blowing }));
      const envelope = envelopeOf(blowing);
      if (envelope.kind !== 'sector') throw new Error('no sector');
      const { fromDeg, widthDeg } = envelope;
      const speed = blowing.speedKt ?? 0;
      const strongest = Math.max(speed, blowing.gustKt ?? 0);
      const headings = new Map(
        endsOf(field).map(({ designator, heading }) => [designator, degreesOf(heading)]),
      );
      for (const end of ends) {
        const heading = headings.get(end.designator) ?? Number.NaN;
        const angles = Array.from({ length: widthDeg + 1 }, (_, deg) =>
          inRad(fromDeg + deg - heading),
        );
        const across = strongest * Math.max(...angles.map((angle) => Math.abs(Math.sin(angle))));
        const along = Math.min(...angles.map(Math.cos));
        // A step of 1° can miss the peak by half a degree: 1 − cos 0.5° of the speed.
        const missed = strongest * (1 - Math.cos(inRad(0.5))) + 1e-9;
        const withinStep = (stated: number | null, found: number) => {
          expect(found).toBeLessThanOrEqual((stated ?? Number.NaN) + 1e-9);
          expect(found).toBeGreaterThanOrEqual((stated ?? Number.NaN) - missed);
        };
        withinStep(end.crosswindWorstKt, across);
        withinStep(end.tailwindWorstKt, strongest * Math.max(0, -along));
        withinStep(-(end.headwindLeastKt ?? Number.NaN), -speed * along);
      }
    }),
    { numRuns: 300 },
  );
});

test('a wind mirrored in the runway has the same headwind and the opposite crosswind', () => {
  const field = inventedField([{ designator: '01', headingDeg: 0 }]);
  const end = (fromDeg: number, speedKt: number) => {
    const ranked = rankRunwayEnds(
      question({ field, wind: wind(compass(fromDeg), speedKt), variationDeg: 0 }),
    );
    const found = ranked.ends.find(({ designator }) => designator === '01');
    return [found?.headwindKt ?? Number.NaN, found?.crosswindKt ?? Number.NaN] as const;
  };
  const angle = fc.double({ min: 0.01, max: 179.99, noNaN: true });
  fc.assert(
    fc.property(angle, fc.double({ min: 1, max: 80, noNaN: true }), (deg, speed) => {
      const [head, cross] = end(deg, speed);
      const [mirroredHead, mirroredCross] = end(-deg, speed);
      expect(mirroredHead).toBeCloseTo(head, 9);
      expect(mirroredCross).toBeCloseTo(-cross, 9);
      expect(cross).toBeGreaterThan(0);
      expect(Math.hypot(head, cross)).toBeCloseTo(speed, 9);
    }),
  );
});

test('what one end has as headwind and from the right, the other has as tailwind and from the left', () => {
  fc.assert(
    fc.property(
      anyDirectedWind,
      fc.double({ min: 0, max: 179, noNaN: true }),
      (blowing, headingDeg) => {
        const field = inventedField([{ designator: '01', headingDeg }]);
        const { ends } = rankRunwayEnds(question({ field, wind: blowing }));
        const [one, other] = ends;
        // The ends' headings are not quite opposite: meridians lean by up to 0.02° over this length.
        const lean = (blowing.speedKt ?? 0) * inRad(0.02);
        const sum = (a = 0, b = 0) => Math.abs(a + b);
        expect(sum(one?.headwindKt ?? 1e9, other?.headwindKt ?? 1e9)).toBeLessThan(lean);
        expect(sum(one?.crosswindKt ?? 1e9, other?.crosswindKt ?? 1e9)).toBeLessThan(lean);
      },
    ),
  );
});

test('a direction and the same with a turn more or less are one direction', () => {
  fc.assert(
    fc.property(anyQuestion, fc.constantFrom(-360, 360, 720), (asked, turn) => {
      const { fromDeg, sectorDeg } = asked.wind;
      const again = {
        ...asked.wind,
        fromDeg: (fromDeg ?? 0) + turn,
        sectorDeg: sectorDeg && ([sectorDeg[0] + turn, sectorDeg[1]] as const),
      };
      // A direction of 0 is a calm's; 360 is north.
      fc.pre(again.fromDeg !== 0);
      expect(rankRunwayEnds({ ...asked, wind: again })).toEqual(rankRunwayEnds(asked));
    }),
  );
});

test('nothing jumps where the wind passes north', () => {
  const field = inventedField([{ designator: '01', headingDeg: 10 }]);
  const head = (fromDeg: number) =>
    rankRunwayEnds(question({ field, wind: wind(fromDeg, 20) })).best?.headwindKt ?? Number.NaN;
  // 20 cos 11°, cos 10° and cos 9°, worked out by hand.
  expect(head(359)).toBeCloseTo(19.633, 3);
  expect(head(360)).toBeCloseTo(19.696, 3);
  expect(head(1)).toBeCloseTo(19.754, 3);
});

test('a wind and its limits doubled, as in another unit, double what blows and keep what is kept', () => {
  const field = inventedField([{ designator: '10', headingDeg: 86 }]);
  fc.assert(
    fc.property(anyDirectedWind, (blowing) => {
      fc.pre((blowing.speedKt ?? 0) >= 10);
      const doubled = {
        ...blowing,
        speedKt: 2 * (blowing.speedKt ?? 0),
        gustKt: blowing.gustKt === null ? null : 2 * blowing.gustKt,
      };
      const once = rankRunwayEnds(question({ field, wind: blowing }));
      const twice = rankRunwayEnds(
        question({ field, wind: doubled, limits: { crosswindKt: 48, tailwindKt: 20 } }),
      );
      for (const end of once.ends) {
        const same = twice.ends.find(({ designator }) => designator === end.designator);
        expect(same?.crosswindWorstKt).toBeCloseTo(2 * (end.crosswindWorstKt ?? 0), 9);
        expect(same?.withinLimits).toBe(end.withinLimits);
      }
    }),
  );
});

test('a stronger gust never brings an end back within limits', () => {
  fc.assert(
    fc.property(anyQuestion, fc.integer({ min: 1, max: 30 }), (asked, moreKt) => {
      const gustKt = (asked.wind.gustKt ?? asked.wind.speedKt ?? 0) + moreKt;
      const stronger = rankRunwayEnds({ ...asked, wind: { ...asked.wind, gustKt } });
      for (const end of rankRunwayEnds(asked).ends) {
        if (end.withinLimits) continue;
        const same = stronger.ends.find(({ designator }) => designator === end.designator);
        expect(same?.withinLimits).toBe(false);
      }
    }),
  );
});

test('ends within limits come first, best is the first of them, and every place but the last has a reason', () => {
  fc.assert(
    fc.property(anyQuestion, (asked) => {
      const { best, because, ends } = rankRunwayEnds(asked);
      const within = ends.map(({ withinLimits }) => withinLimits);
      expect(within).toEqual([...within].sort((a, b) => Number(b) - Number(a)));
      expect(best).toBe(within[0] ? ends[0] : null);
      expect(because === null).toBe(best !== null);
      expect(ends.map(({ reasons }) => reasons.length)).toEqual(
        ends.map((_, index) => (index === ends.length - 1 ? 0 : 1)),
      );
      for (const end of ends) expect(end.withinLimits).toBe(end.shortfalls.length === 0);
    }),
  );
});
