/**
 * A page of the app without a browser: what surrounds the board is stood in for, its clocks are in
 * the test's hand, and the demo's documents are loaded. Import the board's modules after
 * `openPage`: some of them listen to the page as soon as they are loaded.
 */

import { beforeEach, vi } from 'vitest';
import type { Event } from '../../../src/core';
import { useFreshDevice } from '../record/device';

/** When every test begins, by the device's clock. */
export const OPENED_MS = Date.UTC(2026, 10, 20, 9, 0, 0);

const listeners = new Map<string, Set<() => void>>();

const listening = {
  addEventListener(what: string, told: () => void) {
    listeners.set(what, (listeners.get(what) ?? new Set()).add(told));
  },
  removeEventListener: (what: string, told: () => void) => listeners.get(what)?.delete(told),
};

function storage() {
  const held = new Map<string, string>();
  return {
    getItem: (name: string) => held.get(name) ?? null,
    setItem: (name: string, text: string) => void held.set(name, text),
    removeItem: (name: string) => void held.delete(name),
  };
}

function surround(): void {
  vi.stubGlobal('addEventListener', listening.addEventListener);
  vi.stubGlobal('localStorage', storage());
  vi.stubGlobal('location', { hash: '', search: '', pathname: '/', origin: 'https://example.org' });
  vi.stubGlobal('navigator', {});
  vi.stubGlobal('history', { replaceState: vi.fn() });
  vi.stubGlobal('document', {
    ...listening,
    documentElement: { lang: 'en' },
    visibilityState: 'visible',
    querySelector: () => null,
  });
}

/** Gives every test an empty device, and clocks that stand until time is let pass. */
function useSurroundings(timers: boolean): void {
  useFreshDevice();
  beforeEach(() => {
    surround();
    vi.useFakeTimers({
      now: OPENED_MS,
      toFake: ['Date', 'performance', ...(timers ? (['setTimeout', 'clearTimeout'] as const) : [])],
    });
    return () => {
      // What a test left waiting must not keep the next one from waiting.
      if (timers) vi.runOnlyPendingTimers();
      vi.useRealTimers();
    };
  });
}

/** Lets time pass by both clocks, ms. */
export const pass = (ms: number): void => void vi.advanceTimersByTime(ms);

/** The page is hidden, or shown again. */
export function turn(to: 'hidden' | 'visible'): void {
  Object.assign(document, { visibilityState: to });
  for (const told of listeners.get('visibilitychange') ?? []) told();
}

/**
 * Opens the page for the tests of a file. Unless it is `fresh`, the record goes on from file to
 * file, because loading the board takes longer than most tests: each test begins a sortie. With
 * `timers`, they wait for `pass` too. Within a test there are no `hooks` to set.
 */
export async function openPage({ fresh = false, timers = false, hooks = true } = {}) {
  surround();
  if (fresh) vi.resetModules();
  const { record, sortie } = await import('../../../src/board/record/sortie');
  const board = await import('../../../src/board/board');
  const { all, hold } = await import('../../../src/board/documents/documents');
  const adding = await import('../../../src/board/record/adding');
  const { answerStands } = await import('../../../src/board/documents/inUse');
  const { parts } = await import('../../../src/board/dayParts');
  const { loadPart } = await import('../../../src/core');
  const { newId } = await import('../../../src/record/record');
  if (hooks) useSurroundings(timers);
  answerStands.value = true;

  const listedAs = (code: string) => {
    const listed = all.value.find((one) => one.code === code);
    if (listed === undefined) throw new Error(`there is no ${code}`);
    return listed;
  };
  const hashOf = (code: string) => listedAs(code).hash;
  /** Begins a sortie with what is given. */
  const begin = (...events: readonly Event[]) => {
    adding.undoable.value = null;
    board.draft.value = '';
    return adding.addTo(newId(), { kind: 'set', inputs: {} }, ...events);
  };
  return {
    ...board,
    ...adding,
    record,
    sortie,
    hashOf,
    /** Loads documents of the demo by their codes. */
    async load(...codes: readonly string[]) {
      for (const code of codes) hold(hashOf(code), await listedAs(code).load());
    },
    /** Loads parts that come after the first answer. */
    async loadParts(...names: readonly (keyof typeof loadPart)[]) {
      if (names.includes('reports')) parts.reports.value = await loadPart.reports();
      if (names.includes('physics')) parts.physics.value = await loadPart.physics();
      if (names.includes('taxi')) parts.taxi.value = await loadPart.taxi();
    },
    begin,
    /** Begins a sortie at a field, in an aircraft. */
    beginAt: (field: string, aircraft: string, ...events: readonly Event[]) =>
      begin(
        { kind: 'set', inputs: { field: hashOf(field), aircraft: hashOf(aircraft) } },
        ...events,
      ),
    /** What happened in the sortie, in order. */
    happened: () => record.entries.filter(({ sortie: of }) => of === sortie.value.id),
  };
}
