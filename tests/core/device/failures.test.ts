/** What nothing caught is told to the pilot, once. */

import { effect, signal } from '@preact/signals';
import { beforeEach, expect, test } from 'vitest';
import { failure, failureTold, noteFailure, watchForFailures } from '../../../src/device/failures';

let page = new EventTarget();

const fire = (type: string, more: object) =>
  page.dispatchEvent(Object.assign(new Event(type), more));

beforeEach(() => {
  failure.value = 'none';
  page = new EventTarget();
  watchForFailures(page);
});

test('an error that nothing caught', () => {
  fire('error', { error: new TypeError('no such thing') });
  expect(failure.value).toBe('untold');
});

test('a promise that nobody looked after', () => {
  fire('unhandledrejection', { reason: new Error('refused') });
  expect(failure.value).toBe('untold');
});

test('once: not again after it was seen', () => {
  noteFailure(new Error('one'));
  failureTold();
  noteFailure(new Error('another'));
  expect(failure.value).toBe('told');
});

test('and never in a circle, where telling of it fails as well', () => {
  let times = 0;
  const stop = effect(() => {
    if (failure.value === 'none') return;
    times += 1;
    noteFailure(new Error('in telling'));
    throw new Error('in telling');
  });
  const broken = signal(0);
  const stopBroken = effect(() => {
    if (broken.value > 0) throw new Error('in an effect');
  });
  for (const value of [1, 2, 3]) {
    try {
      broken.value = value;
    } catch (error) {
      // The first time telling of it fails in its turn, which a browser reports here as well.
      const tell = () => noteFailure(error);
      if (value === 1) expect(tell).toThrow('in telling');
      else expect(tell).not.toThrow();
    }
  }
  stop();
  stopBroken();
  expect(times).toBe(1);
});

// HTML, 8.1.4.6: an error event of a script of another origin bears no error. Resize Observer, 3.4.5:
// one that reports "ResizeObserver loop completed with undelivered notifications" bears none either.
test('not what is no error of the app', () => {
  fire('error', { error: null, message: 'Script error.' });
  fire('error', { message: 'ResizeObserver loop completed with undelivered notifications.' });
  expect(failure.value).toBe('none');
});

test('not a part that did not come, which is told where it is drawn', () => {
  const payload = new TypeError('Failed to fetch dynamically imported module');
  fire('vite:preloadError', { payload });
  fire('unhandledrejection', { reason: payload });
  expect(failure.value).toBe('none');
});
