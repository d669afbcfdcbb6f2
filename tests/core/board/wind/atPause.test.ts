import { signal } from '@preact/signals';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { atPause } from '../../../../src/board/wind/atPause';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A text, whether it is being typed, and what follows it at pauses. */
function followed() {
  const text = signal('');
  const is = { typed: true };
  return { text, is, rested: atPause(text, () => is.typed) };
}

test('what is typed is followed at a pause, not by the letter', () => {
  const { text, rested } = followed();
  for (const length of [1, 2, 3, 4, 5]) {
    text.value = '27012'.slice(0, length);
    vi.advanceTimersByTime(150);
    expect(rested.value).toBe('');
  }
  vi.advanceTimersByTime(100);
  expect(rested.value).toBe('27012');
});

test('what was not typed is followed at once, and nothing typed before comes after it', () => {
  const { text, is, rested } = followed();
  text.value = '270';
  is.typed = false;
  text.value = '30008KT';
  expect(rested.value).toBe('30008KT');
  vi.advanceTimersByTime(1000);
  expect(rested.value).toBe('30008KT');
});
