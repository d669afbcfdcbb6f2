/** The wind's arrow and swing. A wind is named for where it comes from: WMO-No. 306, FM 15 (15.5, number from memory). */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anywherePath,
  arrowPath,
  isBeside,
  SCALE,
  SUN_REACH,
  swingPath,
} from '../../../src/parts/dial/wind';
import { placesOf } from './places';

const radiusOf = ({ x, y }: { x: number; y: number }): number => Math.hypot(x, y);

/** The place of a path that is nearest to the middle: an arrow's tip. */
const tipOf = (path: string) =>
  placesOf(path).reduce((near, place) => (radiusOf(place) < radiusOf(near) ? place : near));

const directionOf = ({ x, y }: { x: number; y: number }): number =>
  ((Math.atan2(x, -y) * 180) / Math.PI + 360) % 360;

describe('the arrow', () => {
  it.each([
    ['north', 360, 0, -1],
    ['east', 90, 1, 0],
    ['south', 180, 0, 1],
    ['west', 270, -1, 0],
  ])('a wind from the %s is drawn on that side and points to the middle', (_, fromDeg, x, y) => {
    const places = placesOf(arrowPath(fromDeg, null));
    // Every corner lies on the side the wind comes from: x to the right is east, y down is south.
    for (const place of places) expect(place.x * x + place.y * y).toBeGreaterThan(80);
    const tip = tipOf(arrowPath(fromDeg, null));
    expect(tip.x).toBeCloseTo(radiusOf(tip) * x, 0);
    expect(tip.y).toBeCloseTo(radiusOf(tip) * y, 0);
  });

  it('the arrow is the same on both sides of the direction the wind comes from', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), (fromDeg) => {
        const places = placesOf(arrowPath(fromDeg, null));
        const sum = places.reduce((to, { x, y }) => ({ x: to.x + x, y: to.y + y }));
        const off = ((directionOf(sum) - fromDeg + 540) % 360) - 180;
        expect(Math.abs(off)).toBeLessThan(0.2);
      }),
    );
  });

  it('no part of the arrow lies on the sun, whatever the two directions', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -40, max: 40 }),
        (fromDeg, aside) => {
          const angle = ((fromDeg + aside) * Math.PI) / 180;
          const sun = { x: SCALE.middle * Math.sin(angle), y: -SCALE.middle * Math.cos(angle) };
          const places = placesOf(arrowPath(fromDeg, fromDeg + aside));
          for (const [i, place] of places.entries()) {
            const next = places[(i + 1) % places.length] ?? place;
            for (let part = 0; part <= 1; part += 0.05) {
              const x = place.x + part * (next.x - place.x) - sun.x;
              const y = place.y + part * (next.y - place.y) - sun.y;
              expect(Math.hypot(x, y)).toBeGreaterThan(SUN_REACH);
            }
          }
        },
      ),
    );
  });

  it('what stands 10 degrees from the wind gives way to it across north, what stands 20 off does not', () => {
    expect(isBeside(0, 350)).toBe(true);
    expect(isBeside(350, 0)).toBe(true);
    expect(isBeside(0, 340)).toBe(false);
    expect(isBeside(null, 340)).toBe(false);
    expect(isBeside(0, null)).toBe(false);
  });
});

describe('the swing', () => {
  /** `280V010` runs clockwise from 280 through north to 010: WMO-No. 306, FM 15 (15.5.3, number from memory). */
  it('a swing of 280V010 covers north and leaves south out', () => {
    const directions = placesOf(swingPath([280, 10])).map(directionOf);
    const inside = directions.filter((deg) => deg >= 279.9 || deg <= 10.1);
    expect(inside).toHaveLength(directions.length);
    expect(directions.some((deg) => Math.abs(deg - 325) < 0.2)).toBe(true);
  });

  it('a swing of 010V280 is the other part of the circle', () => {
    const directions = placesOf(swingPath([10, 280])).map(directionOf);
    expect(directions.every((deg) => deg > 9.9 && deg < 280.1)).toBe(true);
    expect(directions.some((deg) => Math.abs(deg - 145) < 0.2)).toBe(true);
  });
});

describe('a variable wind', () => {
  const centres = (path: string): readonly number[] =>
    path
      .split('M')
      .filter(Boolean)
      .map((part) => Math.round(directionOf(tipOf(`M${part}`))));

  it('points inward from all four quarters', () => {
    expect(centres(anywherePath(null))).toEqual([45, 135, 225, 315]);
  });

  it('leaves out the arrowhead that the sun stands on', () => {
    expect(centres(anywherePath(130))).toEqual([45, 225, 315]);
  });
});
