/** The runway ring's arcs. What is checked here is geometry: a circle has 360 degrees. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcPath, arcsOf, hatchPath, middleDeg, RING } from '../../../src/parts/dial/ring';
import { placesOf } from './places';
import { ringOf } from './rings';

const CROSSING = ringOf([
  ['28', 221, 310],
  ['01', 311, 41],
  ['10', 42, 130],
  ['19', 131, 220],
]);

const anyRing = fc
  .array(
    fc.tuple(fc.constantFrom('04', '22', '13', '31', null), fc.integer({ min: 1, max: 120 })),
    {
      minLength: 1,
      maxLength: 40,
    },
  )
  .map((runs) => {
    const ring = runs.flatMap(([end, length]) => Array.from({ length }, () => end));
    return Array.from({ length: 360 }, (_, deg) => ring[deg % ring.length] ?? null);
  });

describe('arcs of the runway ring', () => {
  it('two crossing runways share the circle in four arcs, each as long as its degrees', () => {
    const lengths = new Map(arcsOf(CROSSING).map((arc) => [arc.end, arc.lengthDeg]));
    expect(lengths).toEqual(
      new Map([
        ['28', 90],
        ['01', 91],
        ['10', 89],
        ['19', 90],
      ]),
    );
  });

  it('an arc that passes north is one arc, and its middle lies between its edges', () => {
    const north = arcsOf(CROSSING).filter((arc) => arc.end === '01');
    expect(north).toHaveLength(1);
    // 311 to 41 inclusive: half way is 45 degrees on from 311.
    expect(north.map(middleDeg)).toEqual([356]);
  });

  it('a direction stands for the half degree on each side of it', () => {
    expect(arcsOf(CROSSING).find((arc) => arc.end === '28')?.fromDeg).toBe(220.5);
    const one = arcsOf(
      ringOf([
        ['09', 0, 359],
        ['27', 0, 0],
      ]),
    ).find((arc) => arc.end === '27');
    expect(one).toEqual({ end: '27', fromDeg: 359.5, lengthDeg: 1 });
  });

  it('an end that is best from everywhere, or no end at all, is one whole circle', () => {
    for (const end of ['28', null]) {
      expect(arcsOf(ringOf([[end, 0, 359]]))).toEqual([{ end, fromDeg: 359.5, lengthDeg: 360 }]);
    }
  });

  it('whatever the ring, the arcs make up 360 degrees and give every direction its own end back', () => {
    fc.assert(
      fc.property(anyRing, (ring) => {
        const arcs = arcsOf(ring);
        expect(arcs.reduce((sum, arc) => sum + arc.lengthDeg, 0)).toBe(360);
        const back = ringOf(
          arcs.map(({ end, fromDeg, lengthDeg }) => {
            const first = (fromDeg + 0.5) % 360;
            return [end, first, first + lengthDeg - 1] as const;
          }),
        );
        expect(back).toEqual(ring);
      }),
    );
  });

  it('two neighbouring arcs never have the same end', () => {
    fc.assert(
      fc.property(anyRing, (ring) => {
        const ends = arcsOf(ring).map((arc) => arc.end);
        if (ends.length > 1)
          for (const [i, end] of ends.entries()) expect(ends.at(i - 1)).not.toBe(end);
      }),
    );
  });
});

describe('how an arc is drawn', () => {
  const angleOf = ({ x, y }: { x: number; y: number }): number =>
    ((Math.atan2(x, -y) * 180) / Math.PI + 360) % 360;

  it('the best end has the broader band, and both bands lie on the ring', () => {
    const arc = { end: '28', fromDeg: 220.5, lengthDeg: 90 };
    const breadth = (heavy: boolean): number => {
      const radii = placesOf(arcPath(arc, heavy)).map(({ x, y }) => Math.hypot(x, y));
      expect(Math.max(...radii)).toBeLessThanOrEqual(RING.outer + 0.1);
      return Math.max(...radii) - Math.min(...radii);
    };
    expect(breadth(true)).toBeGreaterThan(1.5 * breadth(false));
  });

  it('an arc keeps inside its own directions, leaves a gap, and even 1 degree can be seen', () => {
    for (const lengthDeg of [1, 2, 3, 90]) {
      const angles = placesOf(arcPath({ end: '09', fromDeg: 99.5, lengthDeg }, false)).map(angleOf);
      expect(Math.min(...angles)).toBeGreaterThan(99.5);
      expect(Math.max(...angles)).toBeLessThan(99.5 + lengthDeg);
      const drawn = Math.max(...angles) - Math.min(...angles);
      expect(drawn).toBeGreaterThan(lengthDeg * 0.5);
    }
  });

  it('the hatching of an arc where no end is best keeps inside it', () => {
    const angles = placesOf(hatchPath({ end: null, fromDeg: 99.5, lengthDeg: 31 })).map(angleOf);
    expect(angles.length).toBeGreaterThan(20);
    expect(Math.min(...angles)).toBeGreaterThanOrEqual(99.5);
    expect(Math.max(...angles)).toBeLessThanOrEqual(130.5);
  });
});
