import fc from 'fast-check';
import { expect, test } from 'vitest';
import { HOLD_MS, SETTLE_MS } from '../../../src/device/presses';
import { refusalOf, type Tap } from '../../../src/parts/key/deliberate';

// The bounds are common practice, no published source: a tap of 80 to 800 ms that moves less than
// 12 px, by one pointer, half a second after the step changed, and not the touch that wakes.

/** A plain tap: 200 ms on one spot, long after anything changed. */
function tap(more: Partial<Tap> & { lastedMs?: number; movedPx?: number } = {}): Tap {
  const { lastedMs = 200, movedPx = 0, ...rest } = more;
  const down = { id: 1, x: 100, y: 100, ms: 10_000 };
  const up = { id: 1, x: 100 + movedPx, y: 100, ms: down.ms + lastedMs };
  return {
    down,
    up,
    pointers: 1,
    changedMs: 0,
    waking: false,
    hold: false,
    urgent: false,
    ...rest,
  };
}

test('a plain tap counts', () => {
  expect(refusalOf(tap())).toBeNull();
});

test.each([
  [79, 'too-short'],
  [80, null],
  [800, null],
  [801, 'too-long'],
])('a tap of %i ms: %s', (lastedMs, refusal) => {
  expect(refusalOf(tap({ lastedMs }))).toBe(refusal);
});

test.each([
  [HOLD_MS - 1, 'too-short'],
  [HOLD_MS, null],
  [5000, null],
])('a key to be held, held for %i ms: %s', (lastedMs, refusal) => {
  expect(refusalOf(tap({ lastedMs, hold: true }))).toBe(refusal);
});

test.each([
  [11.9, null],
  [12, 'moved'],
  [-12, 'moved'],
])('a tap that moves %f px: %s', (movedPx, refusal) => {
  expect(refusalOf(tap({ movedPx }))).toBe(refusal);
});

test('a slip across counts by its whole length, not by its sides', () => {
  const { down, up, ...rest } = tap();
  expect(refusalOf({ ...rest, down, up: { ...up, x: down.x + 9, y: down.y + 9 } })).toBe('moved');
});

test('for half a second after the step changed no tap counts', () => {
  const { down } = tap();
  expect(SETTLE_MS).toBe(500);
  expect(refusalOf(tap({ changedMs: down.ms - 499 }))).toBe('settling');
  expect(refusalOf(tap({ changedMs: down.ms - 500 }))).toBeNull();
});

test('a tap that was begun before the step changed does not count for the new one', () => {
  expect(refusalOf(tap({ changedMs: 10_100 }))).toBe('settling');
});

test('a palm beside the finger, and the touch that wakes the screen, do not count', () => {
  expect(refusalOf(tap({ pointers: 2 }))).toBe('several-pointers');
  expect(refusalOf(tap({ waking: true }))).toBe('waking');
});

test('what stops the take-off counts however it is tapped, but for the second tap of the release', () => {
  const { down } = tap();
  for (const how of [
    { lastedMs: 20 },
    { lastedMs: 3000 },
    { movedPx: 40 },
    { pointers: 2 },
    { waking: true },
  ]) {
    expect(refusalOf(tap(how))).not.toBeNull();
    expect(refusalOf(tap({ ...how, urgent: true }))).toBeNull();
  }
  expect(refusalOf(tap({ changedMs: down.ms - 499, urgent: true }))).toBe('settling');
});

test('what does not count as one pointer’s tap does not count with more against it', () => {
  const anyTap = fc
    .record({
      lastedMs: fc.integer({ min: 0, max: 2000 }),
      movedPx: fc.integer({ min: 0, max: 30 }),
      hold: fc.boolean(),
    })
    .map(tap);
  fc.assert(
    fc.property(anyTap, (one) => {
      const worse = [
        { ...one, pointers: 2 },
        { ...one, waking: true },
        { ...one, changedMs: one.down.ms },
      ];
      for (const other of worse) expect(refusalOf(other)).not.toBeNull();
    }),
  );
});
