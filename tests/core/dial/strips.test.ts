/**
 * The runways on the dial. A runway's number is the tenth of the direction seen from its approach, and
 * is painted at its start to be read from there: ICAO Annex 14, vol. I, 5.2.2; FAA AC 150/5340-1.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type DialRunway,
  type DrawnRunway,
  layOut,
  type Painted,
} from '../../../src/parts/dial/strips';

/** Nothing of a strip lies farther from the middle than this, so that it never reaches the letters. */
const INSIDE = 86;

function runway(
  [first, heading]: readonly [string, number],
  second: string,
  lengthM: number,
  [eastM, northM]: readonly [number, number] = [0, 0],
): DialRunway {
  return {
    ends: [
      { designator: first, headingTrueDeg: heading },
      { designator: second, headingTrueDeg: (heading + 180) % 360 },
    ],
    eastM,
    northM,
    lengthM,
    widthM: 45,
  };
}

const numberOf = (strips: readonly DrawnRunway[], designator: string): Painted => {
  const found = strips
    .flatMap(({ painted }) => painted)
    .find((one) => one.designator === designator);
  if (!found) throw new Error(`${designator} is not painted`);
  return found;
};

const stripOf = (strips: readonly DrawnRunway[], designator: string): DrawnRunway => {
  const found = strips.find(({ ends }) => ends.some((end) => end.designator === designator));
  if (!found) throw new Error(`${designator} is not drawn`);
  return found;
};

/** How far a number lies from its strip's middle along a heading: negative before, positive beyond. */
function alongOf(strips: readonly DrawnRunway[], designator: string, headingDeg: number): number {
  const number = numberOf(strips, designator);
  const strip = stripOf(strips, designator);
  const angle = (headingDeg * Math.PI) / 180;
  return (number.x - strip.x) * Math.sin(angle) - (number.y - strip.y) * Math.cos(angle);
}

describe('painted numbers', () => {
  it('a pilot who lands to the west finds 28 at the eastern end, its top to the west', () => {
    const strips = layOut([runway(['10', 86], '28', 1400)]);
    expect(numberOf(strips, '28').x).toBeGreaterThan(50);
    // Turned clockwise by 266 degrees, the top of an upright figure points to 266 degrees.
    expect(numberOf(strips, '28').turnDeg).toBe(266);
    expect(numberOf(strips, '10').x).toBeLessThan(-50);
    expect(numberOf(strips, '10').turnDeg).toBe(86);
  });

  it('a pilot who lands to the north finds 36 at the southern end, upright', () => {
    const strips = layOut([runway(['36', 0], '18', 900)]);
    expect(numberOf(strips, '36').y).toBeGreaterThan(50);
    expect(numberOf(strips, '36').turnDeg).toBe(0);
    expect(numberOf(strips, '18').y).toBeLessThan(-50);
  });

  it('whatever its bearing, a lone runway has each number at the start of its end, before the middle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), (heading) => {
        const strips = layOut([runway(['A', heading], 'B', 2000)]);
        expect(alongOf(strips, 'A', heading)).toBeLessThan(-60);
        expect(alongOf(strips, 'B', heading + 180)).toBeLessThan(-60);
      }),
    );
  });

  it('the numbers of three runways that cross are all painted, none upon another', () => {
    const strips = layOut([
      runway(['04', 44], '22', 2000, [-300, 0]),
      runway(['10', 101], '28', 2300, [100, -400]),
      runway(['16', 163], '34', 1600, [500, 200]),
    ]);
    const numbers = strips.flatMap(({ painted }) => painted);
    expect(numbers.map(({ designator }) => designator).toSorted()).toEqual([
      '04',
      '10',
      '16',
      '22',
      '28',
      '34',
    ]);
    for (const [i, a] of numbers.entries()) {
      // A figure pair is 22 units by 12: with 18 between their middles two of them cannot meet end on.
      for (const b of numbers.slice(i + 1))
        expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(18);
    }
  });

  it('where two runways begin at the same place, neither number lies on the other', () => {
    const strips = layOut([
      runway(['17', 170], '35', 1800),
      runway(['13', 130], '31', 1500, [420, 400]),
    ]);
    const [a, b] = [numberOf(strips, '17'), numberOf(strips, '13')];
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(18);
  });

  it('a short strip beside a long one still has room for both of its numbers', () => {
    const strips = layOut([
      runway(['09', 90], '27', 4000),
      runway(['03L', 30], '21R', 300, [0, 1000]),
    ]);
    expect(stripOf(strips, '03L').painted).toHaveLength(2);
  });
});

describe('places and lengths', () => {
  it('a runway twice as long is drawn twice as long', () => {
    const strips = layOut([runway(['09', 90], '27', 3000), runway(['18', 180], '36', 1500)]);
    expect(stripOf(strips, '09').length / stripOf(strips, '18').length).toBeCloseTo(2, 6);
  });

  it('a runway to the north-east of another is drawn above it and to its right, as far as it is', () => {
    const strips = layOut([
      runway(['09', 90], '27', 2000, [-500, -500]),
      runway(['18', 180], '36', 2000, [500, 700]),
    ]);
    const [a, b] = [stripOf(strips, '09'), stripOf(strips, '18')];
    // 1000 m east and 1200 m north, on the scale of the runway that is 2000 m long.
    expect((b.x - a.x) / a.length).toBeCloseTo(1000 / 2000, 6);
    expect((a.y - b.y) / a.length).toBeCloseTo(1200 / 2000, 6);
  });

  it('of parallels that look north-west, the left one is drawn on the left of who looks that way', () => {
    const strips = layOut([
      runway(['31R', 310], '13L', 2500, [77, 64]),
      runway(['31L', 310], '13R', 2500, [-77, -64]),
    ]);
    const [left, right] = [stripOf(strips, '31L'), stripOf(strips, '31R')];
    const angle = (310 * Math.PI) / 180;
    const toTheRight = (right.x - left.x) * Math.cos(angle) + (right.y - left.y) * Math.sin(angle);
    // 200 m apart they would touch at this scale; they are drawn clear of each other.
    expect(toTheRight).toBeGreaterThan((left.width + right.width) / 2);
  });

  it('three close parallels are drawn side by side, in their order, none touching another', () => {
    const strips = layOut([
      runway(['07L', 70], '25R', 3500, [-100, 275]),
      runway(['07C', 70], '25C', 3000),
      runway(['07R', 70], '25L', 2800, [100, -275]),
    ]);
    const angle = (70 * Math.PI) / 180;
    const toTheRight = strips.map(({ x, y }) => x * Math.cos(angle) + y * Math.sin(angle));
    const [left = 0, centre = 0, right = 0] = toTheRight;
    expect(centre - left).toBeGreaterThan(28);
    expect(right - centre).toBeGreaterThan(28);
  });

  it('a field is drawn alike wherever its middle is taken to be', () => {
    const at = (east: number, north: number) =>
      layOut([
        runway(['09', 90], '27', 2000, [east, north]),
        runway(['04', 40], '22', 900, [east + 700, north]),
      ]);
    const [here, there] = [at(0, 0), at(5000, -3000)];
    for (const [i, strip] of here.entries()) {
      expect(there[i]?.x).toBeCloseTo(strip.x, 6);
      expect(there[i]?.y).toBeCloseTo(strip.y, 6);
    }
  });

  it('no field reaches the letters around it', () => {
    const anyRunway = fc
      .tuple(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 300, max: 4500 }),
        fc.integer({ min: -2500, max: 2500 }),
        fc.integer({ min: -2500, max: 2500 }),
      )
      .map(([heading, length, east, north]) => runway(['A', heading], 'B', length, [east, north]));
    fc.assert(
      fc.property(fc.array(anyRunway, { minLength: 1, maxLength: 4 }), (runways) => {
        for (const { corners } of layOut(runways)) {
          for (const { x, y } of corners) expect(Math.hypot(x, y)).toBeLessThanOrEqual(INSIDE);
        }
      }),
    );
  });

  it('a field without runways is drawn without any', () => {
    expect(layOut([])).toEqual([]);
  });
});
