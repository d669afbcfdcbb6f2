/** A part that did not come: whether it can come at all, or the page must be loaded again. */

import { afterEach, beforeEach, expect, test, vi } from 'vitest';

const PAGE = '<script type="module" src="./assets/first-abc.js"></script>';

let failed: () => void;
let nowMs: number;
let host: () => Promise<Response>;

/** What the page says after a part failed, so long after the last, and the host was looked at. */
async function afterFailure(afterMs = 3000) {
  const { mustReload } = await import('../../../src/device/missing');
  nowMs += afterMs;
  failed();
  await vi.waitFor(() => expect(looked).toBe(asked));
  await Promise.resolve();
  return mustReload.value;
}

let asked = 0;
let looked = 0;

beforeEach(async () => {
  vi.resetModules();
  [asked, looked, nowMs] = [0, 0, 0];
  vi.spyOn(performance, 'now').mockImplementation(() => nowMs);
  host = async () => new Response(PAGE);
  vi.stubGlobal('addEventListener', (name: string, listener: () => void) => {
    if (name === 'vite:preloadError') failed = listener;
  });
  vi.stubGlobal('document', { querySelector: () => ({ src: 'https://host/assets/first-abc.js' }) });
  vi.stubGlobal('fetch', () => {
    asked++;
    return host().finally(() => setTimeout(() => looked++));
  });
  (await import('../../../src/device/missing')).watchForMissingParts();
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

test('a part that failed once may come when it is asked for again', async () => {
  expect(await afterFailure()).toBeNull();
});

test('one that fails a third time though the host is there never comes to this page', async () => {
  await afterFailure();
  expect(await afterFailure()).toBeNull();
  expect(await afterFailure()).toBe('stuck');
});

test('several that fail at once are one failure', async () => {
  for (let parts = 0; parts < 5; parts++) expect(await afterFailure(400)).toBeNull();
});

test('without a network trying again is right, however often', async () => {
  host = () => Promise.reject(new TypeError('no network'));
  for (let times = 0; times < 3; times++) expect(await afterFailure()).toBeNull();
  host = async () => new Response(PAGE);
  for (let times = 0; times < 2; times++) expect(await afterFailure()).toBeNull();
  expect(await afterFailure()).toBe('stuck');
});

test('where the host has another version it is said at the first failure', async () => {
  host = async () => new Response(PAGE.replace('abc', 'def'));
  expect(await afterFailure()).toBe('replaced');
});

test('what answers in place of the host, as a hotel’s page with an error does, says nothing', async () => {
  host = async () => new Response('sign in first', { status: 511 });
  for (let times = 0; times < 4; times++) expect(await afterFailure()).toBeNull();
});
