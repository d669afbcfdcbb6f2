/** What belongs to the device and is wanted only after the first answer: signals kept in localStorage. */

import { effect, type Signal, signal } from '@preact/signals';

/** A signal that outlives the window. `read` makes something valid of whatever was stored; null: nothing. */
export function kept<T>(name: string, read: (stored: unknown) => T): Signal<T> {
  const key = `lapstrip.${name}`;
  const value = signal(read(stored(key)));
  // Written only once it changes: what a device never chose may change with a new version.
  let isFirst = true;
  effect(() => {
    const text = JSON.stringify(value.value);
    if (isFirst) isFirst = false;
    else store(key, text);
  });
  return value;
}

function stored(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null');
  } catch {
    // Refused, or not what was written.
    return null;
  }
}

function store(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Storage is refused: it holds until the window closes.
  }
}
