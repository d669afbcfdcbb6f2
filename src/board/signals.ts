/** Core's getters as signals: computed when read, and again when what they read has changed. */

import { computed, type ReadonlySignal } from '@preact/signals';
import { type Memo, sameData } from '../core';

/** The memo the app passes to core. */
export const memo: Memo = <T>(work: () => T, same?: (a: T, b: T) => boolean) => {
  const kept = same === undefined ? computed(work) : unlessSame(work, same);
  return () => kept.value;
};

/** A signal that keeps its last value as long as the new one is the same by `same`. */
function unlessSame<T>(work: () => T, same: (a: T, b: T) => boolean): ReadonlySignal<T> {
  let last: { readonly value: T } | null = null;
  return computed(() => {
    const value = work();
    if (last === null || !same(last.value, value)) last = { value };
    return last.value;
  });
}

/** Keeps a signal's last value as long as the new one says the same. */
export const steady = <T>(work: () => T): ReadonlySignal<T> => unlessSame(work, sameData);
