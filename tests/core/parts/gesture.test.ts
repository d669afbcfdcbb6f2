/**
 * What a touch on a key as large as the screen means. The tap is that of every key that ticks; swipes,
 * holds and two fingers: common practice, no published source.
 */

import { describe, expect, test } from 'vitest';
import { meantBy, type Stroke, type Touched } from '../../../src/parts/key/gesture';

interface Way {
  readonly ms?: number;
  readonly x?: number;
  readonly y?: number;
  readonly id?: number;
  readonly at?: readonly [number, number];
  readonly widthPx?: number;
}

const stroke = ({
  ms = 120,
  x = 0,
  y = 0,
  id = 1,
  at = [200, 300],
  widthPx = 20,
}: Way): Stroke => ({
  down: { id, x: at[0], y: at[1], ms: 10_000 },
  up: { id, x: at[0] + x, y: at[1] + y, ms: 10_000 + ms },
  widthPx,
});

/** A touch of one finger or of more, long after anything changed. */
function touched(ways: readonly Way[], more: Partial<Touched> = {}) {
  const strokes = ways.map(stroke);
  return meantBy({ strokes, pointers: strokes.length, changedMs: 0, waking: false, ...more });
}

describe('one finger', () => {
  test.for([
    ['is a tap from 80 ms', { ms: 80 }, 'tap'],
    ['is a tap until just before 700 ms', { ms: 699 }, 'tap'],
    ['is a hold from 700 ms', { ms: 700 }, 'hold'],
    ['is a hold until 2.5 s', { ms: 2500 }, 'hold'],
    ['swipes to the right from 80 px', { x: 80, ms: 300 }, 'across'],
    ['swipes to the left as well', { x: -90, ms: 600 }, 'across'],
    ['swipes down from 80 px', { y: 80, ms: 300 }, 'down'],
  ] as const)('%s', ([, way, gesture]) => {
    expect(touched([way])).toEqual({ gesture });
  });

  test.for([
    ['a brush of 79 ms', { ms: 79 }, 'too-short'],
    ['a hand that rests for longer than 2.5 s', { ms: 2501 }, 'too-long'],
    ['a tap that slides by 12 px', { x: 12 }, 'moved'],
    ['a swipe of 79 px', { x: 79, ms: 300 }, 'moved'],
    ['a swipe that takes longer than 0.6 s', { x: 200, ms: 601 }, 'moved'],
    ['a swipe askew', { x: 90, y: 60, ms: 300 }, 'moved'],
    ['a swipe up', { y: -200, ms: 300 }, 'moved'],
    ['a palm, wider than any finger', { ms: 900, widthPx: 81 }, 'several-pointers'],
  ] as const)('%s is nothing', ([, way, refusal]) => {
    expect(touched([way])).toEqual({ refusal });
  });

  test('is nothing within half a second of a change, nor when it wakes the screen', () => {
    expect(touched([{}], { changedMs: 9501 })).toEqual({ refusal: 'settling' });
    expect(touched([{ x: 100 }], { changedMs: 9501 })).toEqual({ refusal: 'settling' });
    expect(touched([{}], { waking: true })).toEqual({ refusal: 'waking' });
  });

  test('is nothing while a hand lies beside the key', () => {
    expect(touched([{}], { pointers: 2 })).toEqual({ refusal: 'several-pointers' });
    expect(touched([{ x: 100 }], { pointers: 2 })).toEqual({ refusal: 'several-pointers' });
  });
});

describe('two fingers', () => {
  const left: Way = { id: 1, at: [100, 300] };
  const right: Way = { id: 2, at: [250, 300] };

  test('ask to hear it again, briefly and at rest', () => {
    expect(touched([left, right])).toEqual({ gesture: 'two' });
    expect(touched([left, { ...right, ms: 801 }])).toEqual({ refusal: 'several-pointers' });
    expect(touched([left, { ...right, y: 30 }])).toEqual({ refusal: 'several-pointers' });
  });

  test('pinch when they come together by 60 px', () => {
    const by = (x: number) =>
      touched([
        { ...left, x, ms: 400 },
        { ...right, x: -30, ms: 400 },
      ]);
    expect(by(30)).toEqual({ gesture: 'pinch' });
    expect(by(29)).toEqual({ refusal: 'several-pointers' });
  });

  test('and a third are a hand', () => {
    expect(touched([left, right, { id: 3 }])).toEqual({ refusal: 'several-pointers' });
  });
});
