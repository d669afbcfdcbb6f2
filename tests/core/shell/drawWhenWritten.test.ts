/** What is drawn is written: preact draws when told to, and here that is when the record has settled. */

import { options } from 'preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { drawWhenWritten } from '../../../src/shell/drawWhenWritten';

const before = options.debounceRendering;

/** What is being written, until it is `done`. */
function write() {
  let done: () => void = () => undefined;
  const written = new Promise<void>((resolve) => {
    done = resolve;
  });
  return { written, done };
}

let writing = write();
const settled = () => writing.written;
const draw = vi.fn();

/** What preact does when something has changed. */
const change = () => options.debounceRendering?.(draw);
const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

beforeEach(() => {
  vi.useFakeTimers();
  draw.mockReset();
  writing = write();
  drawWhenWritten(settled);
});
afterEach(() => {
  vi.useRealTimers();
  if (before) options.debounceRendering = before;
  else delete options.debounceRendering;
});

test('what changed is drawn once it is written', async () => {
  change();
  await pass(100);
  expect(draw).not.toHaveBeenCalled();
  writing.done();
  await pass(0);
  expect(draw).toHaveBeenCalledOnce();
});

test('what is added while it waits is waited for, too', async () => {
  change();
  const first = writing;
  writing = write();
  first.done();
  await pass(50);
  expect(draw).not.toHaveBeenCalled();
  writing.done();
  await pass(0);
  expect(draw).toHaveBeenCalledOnce();
});

test('where nothing is being written it is drawn at once', async () => {
  writing.done();
  change();
  await pass(0);
  expect(draw).toHaveBeenCalledOnce();
});

test('a store that hangs holds up the screen for half a second at most', async () => {
  change();
  await pass(499);
  expect(draw).not.toHaveBeenCalled();
  await pass(1);
  expect(draw).toHaveBeenCalledOnce();
  writing.done();
  await pass(0);
  expect(draw).toHaveBeenCalledOnce();
});

test('beside a store that hangs, only what is added to it waits again', async () => {
  change();
  await pass(500);
  change();
  await pass(0);
  expect(draw).toHaveBeenCalledTimes(2);
  writing = write();
  change();
  await pass(499);
  expect(draw).toHaveBeenCalledTimes(2);
  await pass(1);
  expect(draw).toHaveBeenCalledTimes(3);
});
