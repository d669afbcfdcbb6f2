/** A picture under the plan: a similarity of the plane, checked by its laws. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { laidBy, lieMoved, onPicture, onPlan } from '../../../src/core/airfield/tracing';

const ground = (eastM: number, northM: number) => ({ eastM, northM });
const near = (eastM: number, northM: number) => ({
  eastM: expect.closeTo(eastM, 6),
  northM: expect.closeTo(northM, 6),
});

/** A picture of 1 000 m at 2 m a pixel, north up: its runway from (100, 300) due right to (600, 300). */
const STRAIGHT = laidBy(
  [
    { x: 100, y: 300 },
    { x: 600, y: 300 },
  ],
  [ground(-500, 0), ground(500, 0)],
);

const laid = (lie: ReturnType<typeof laidBy>) => {
  if (lie === null) throw new Error('a lie expected');
  return lie;
};

describe('by hand', () => {
  test('north up, 2 m a pixel', () => {
    const lie = laid(STRAIGHT);
    expect(onPlan(lie, { x: 350, y: 300 })).toEqual(near(0, 0));
    // 50 px up are 100 m north; 10 px right are 20 m east.
    expect(onPlan(lie, { x: 360, y: 250 })).toEqual(near(20, 100));
    expect(lie.corner).toEqual(near(-700, 600));
  });

  test('east up: what runs up in the picture runs east', () => {
    const lie = laid(
      laidBy(
        [
          { x: 0, y: 100 },
          { x: 0, y: 0 },
        ],
        [ground(0, 0), ground(100, 0)],
      ),
    );
    // Right in the picture is then south.
    expect(onPlan(lie, { x: 30, y: 100 })).toEqual(near(0, -30));
  });

  test('points at one place say nothing', () => {
    const [at, far] = [
      { x: 5, y: 5 },
      { x: 500, y: 5 },
    ];
    expect(laidBy([at, at], [ground(0, 0), ground(100, 0)])).toBeNull();
    expect(laidBy([at, far], [ground(7, 7), ground(7, 7)])).toBeNull();
  });

  test('moved, and enlarged about a point', () => {
    const lie = lieMoved(laid(STRAIGHT), ground(0, 0), ground(40, -30), 2);
    expect(onPlan(lie, { x: 350, y: 300 })).toEqual(near(40, -30));
    expect(onPlan(lie, { x: 360, y: 300 })).toEqual(near(80, -30));
  });
});

const metres = fc.double({ min: -5000, max: 5000, noNaN: true });
const pixel = fc.record({
  x: fc.integer({ min: 0, max: 4000 }),
  y: fc.integer({ min: 0, max: 4000 }),
});
const point = fc.record({ eastM: metres, northM: metres });

test('the two points lie where they were tapped, distances keep their ratio, and the way back is back', () => {
  fc.assert(
    fc.property(fc.tuple(pixel, pixel), fc.tuple(point, point), pixel, (pixels, points, third) => {
      const [a, b] = pixels;
      const [from, to] = points;
      const lie = laidBy(pixels, points);
      fc.pre(lie !== null && Math.hypot(to.eastM - from.eastM, to.northM - from.northM) > 100);
      if (lie === null) return;
      expect(onPlan(lie, a)).toEqual(near(from.eastM, from.northM));
      expect(onPlan(lie, b)).toEqual(near(to.eastM, to.northM));
      const back = onPicture(lie, onPlan(lie, third));
      expect(Math.hypot(back.x - third.x, back.y - third.y)).toBeLessThan(1e-6);
      const scale =
        Math.hypot(to.eastM - from.eastM, to.northM - from.northM) /
        Math.hypot(b.x - a.x, b.y - a.y);
      const there = onPlan(lie, third);
      expect(Math.hypot(there.eastM - from.eastM, there.northM - from.northM)).toBeCloseTo(
        scale * Math.hypot(third.x - a.x, third.y - a.y),
        4,
      );
    }),
  );
});
