/** The names of the ends around the ring. What is checked is that they can be read. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Label, placeLabels } from '../../../src/parts/dial/labels';
import { arcsOf, RING, type Ring } from '../../../src/parts/dial/ring';
import { ringOf } from './rings';

const label = (ring: Ring, first: readonly (string | undefined)[] = []): readonly Label[] =>
  placeLabels(arcsOf(ring), first, new Map([['28', 266]]));

const directionOf = ({ x, y }: Label): number => ((Math.atan2(x, -y) * 180) / Math.PI + 360) % 360;

const touch = (a: Label, b: Label): boolean =>
  Math.abs(a.x - b.x) < a.halfWidth + b.halfWidth &&
  Math.abs(a.y - b.y) < a.halfHeight + b.halfHeight;

/** No two names touch, none leaves the square of 400 units, none lies on the ring. */
function expectReadable(labels: readonly Label[]): void {
  for (const [i, a] of labels.entries()) {
    for (const b of labels.slice(i + 1)) expect(touch(a, b), `${a.end} on ${b.end}`).toBe(false);
    expect(Math.abs(a.x) + a.halfWidth).toBeLessThanOrEqual(200);
    expect(Math.abs(a.y) + a.halfHeight).toBeLessThanOrEqual(200);
    const nearX = Math.max(0, Math.abs(a.x) - a.halfWidth);
    const nearY = Math.max(0, Math.abs(a.y) - a.halfHeight);
    expect(Math.hypot(nearX, nearY)).toBeGreaterThan(RING.outer);
  }
}

const SIX = ['04', '10', '16', '22', '28', '34'];

describe('names around the runway ring', () => {
  it('each of six ends is named once, in the middle of its arc', () => {
    const ring = ringOf(SIX.map((end, i) => [end, i * 60, i * 60 + 59]));
    const labels = label(ring);
    expectReadable(labels);
    for (const [i, end] of SIX.entries()) {
      const own = labels.filter((one) => one.end === end);
      expect(own).toHaveLength(1);
      for (const one of own) expect(directionOf(one)).toBeCloseTo(i * 60 + 29.5, 6);
    }
  });

  it('an end that is best from nowhere, and a direction for which none is, have no name', () => {
    expect(label(ringOf([['24', 205, 275]])).map(({ end }) => end)).toEqual(['24']);
    expect(label(ringOf([]))).toEqual([]);
  });

  it('arcs of 1 to 3 degrees side by side are all named, none upon another', () => {
    const labels = label(
      ringOf([
        ['09L', 0, 300],
        ['27R', 301, 303],
        ['27L', 304, 305],
        ['09R', 306, 306],
        ['18', 307, 359],
      ]),
    );
    expectReadable(labels);
    expect(labels.map(({ end }) => end).toSorted()).toEqual(['09L', '09R', '18', '27L', '27R']);
  });

  it('an end with two arcs is named at the longer, and at the other only if that is long', () => {
    const named = (secondTo: number): readonly number[] =>
      label(
        ringOf([
          ['09', 0, 359],
          ['27', 60, 160],
          ['27', 220, secondTo],
        ]),
      )
        .filter(({ end }) => end === '27')
        .map(directionOf);
    expect(named(225)).toHaveLength(1);
    expect(named(225)[0]).toBeCloseTo(110, 6);
    expect(named(300)).toHaveLength(2);
    expect(named(300)[1]).toBeCloseTo(260, 6);
  });

  it('the best end gets the middle of its arc even where its arc is the shortest', () => {
    const ring = ringOf([
      ['09L', 0, 99],
      ['09R', 100, 102],
      ['27L', 103, 116],
      ['27R', 117, 359],
    ]);
    const best = label(ring, [undefined, '09R']).find(({ end }) => end === '09R');
    expect(best && directionOf(best)).toBeCloseTo(101, 6);
  });

  it('an end that is best from everywhere is named where its own heading points', () => {
    expect(label(ringOf([['28', 0, 359]])).map(directionOf)[0]).toBeCloseTo(266, 6);
  });

  it('whatever the ring, no name touches another, the ring, or the edge of the drawing', () => {
    const runs = fc.array(
      fc.tuple(
        fc.constantFrom('09L', '09C', '09R', '27L', '27C', '27R', '18', '36', null),
        fc.oneof(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 120 })),
      ),
      { minLength: 1, maxLength: 30 },
    );
    fc.assert(
      fc.property(runs, (spans) => {
        const degrees = spans.flatMap(([end, length]) => Array.from({ length }, () => end));
        const ring = Array.from({ length: 360 }, (_, deg) => degrees[deg] ?? null);
        expectReadable(label(ring, ['36', '27C']));
      }),
    );
  });
});
