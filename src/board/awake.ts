/** Keeps the screen on while a sortie is flown. */

import { computed, effect, signal, untracked } from '@preact/signals';
import { type Awake, WakeLock } from '../device/wakeLock';
import { sortie } from './board';
import { wallMs } from './flight/time';

/** A sortie untouched for this long was abandoned: the screen may dim, ms. */
const LEFT_LYING_MS = 4 * 3_600_000;

/** Whether the screen is kept on. */
export const awake = signal<Awake>('not-wanted');

/**
 * Something was done in the steps or on the taxi route, the sortie hasn't ended, and the pilot is
 * about.
 */
const isFlown = computed(() => {
  const { run, taxied, endedAt, lastAt } = sortie.value;
  const begun = (run !== null && run.last !== null) || taxied.length > 0;
  const since = lastAt === null ? 0 : wallMs.value - lastAt.wallMs;
  return begun && endedAt === null && since < LEFT_LYING_MS;
});

/** Starts keeping the screen on; call once. */
export function keepAwake(): void {
  const lock = new WakeLock((now) => {
    awake.value = now;
  });
  effect(() => {
    // Every entry asks again, so that a lock the browser withdrew returns with the next tick.
    void sortie.value;
    if (isFlown.value) untracked(() => void lock.hold());
    else untracked(() => void lock.release());
  });
}
