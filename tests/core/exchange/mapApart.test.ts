/** Reading a map apart: it is bounded, can be stopped, and ends its worker whatever happens. */

import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { LARGEST_MAP, MAP_PATIENCE_MS, readMapApart } from '../../../src/exchange/mapApart';

class FakeWorker {
  static made: FakeWorker[] = [];
  onmessage: (event: { data: unknown }) => void = () => undefined;
  onerror: () => void = () => undefined;
  isEnded = false;
  asked: unknown = null;
  constructor() {
    FakeWorker.made.push(this);
  }
  postMessage(what: unknown) {
    this.asked = what;
  }
  terminate() {
    this.isEnded = true;
  }
}

const theWorker = () => {
  const [worker] = FakeWorker.made;
  if (worker === undefined) throw new Error('no worker was made');
  return worker;
};

beforeEach(() => {
  FakeWorker.made = [];
  vi.stubGlobal('Worker', FakeWorker);
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('reading a map apart', () => {
  test('gives what the worker read, and its progress before', async () => {
    const told: number[] = [];
    const { outcome } = readMapApart('<osm/>', (share) => told.push(share));
    expect(theWorker().asked).toBe('<osm/>');
    theWorker().onmessage({ data: { kind: 'progress', share: 0.4 } });
    const extract = { fields: [], problems: [] };
    theWorker().onmessage({ data: { kind: 'read', extract } });
    expect(await outcome).toEqual({ kind: 'read', extract });
    expect(told).toEqual([0.4]);
    expect(theWorker().isEnded).toBe(true);
  });

  test('is ended after 30 seconds, and no sooner', async () => {
    expect(MAP_PATIENCE_MS).toBe(30_000);
    const { outcome } = readMapApart('<osm/>', () => undefined);
    vi.advanceTimersByTime(MAP_PATIENCE_MS - 1);
    expect(theWorker().isEnded).toBe(false);
    vi.advanceTimersByTime(1);
    expect(await outcome).toEqual({ kind: 'failed', problem: 'too-slow' });
    expect(theWorker().isEnded).toBe(true);
  });

  test('is stopped when the pilot says so, and what comes later is nothing', async () => {
    const { outcome, stop } = readMapApart('<osm/>', () => undefined);
    stop();
    theWorker().onmessage({ data: { kind: 'read', extract: { fields: [], problems: [] } } });
    expect(await outcome).toEqual({ kind: 'failed', problem: 'stopped' });
    expect(theWorker().isEnded).toBe(true);
  });

  test('that breaks the worker says so', async () => {
    const { outcome } = readMapApart('<osm/>', () => undefined);
    theWorker().onerror();
    expect(await outcome).toEqual({ kind: 'failed', problem: 'not-read' });
  });

  test('of more than 50 MB does not begin', async () => {
    expect(LARGEST_MAP).toBe(50_000_000);
    const large = { size: LARGEST_MAP + 1 } as Blob;
    const { outcome } = readMapApart(large, () => undefined);
    expect(await outcome).toEqual({ kind: 'failed', problem: 'too-large' });
    expect(FakeWorker.made).toEqual([]);
  });
});
