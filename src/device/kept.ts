/** Device settings needed only after the first answer: signals stored in localStorage. */

import { effect, type Signal, signal } from '@preact/signals';

/**
 * A signal that outlives the window. `read` turns whatever was stored into a valid value; null if
 * nothing was.
 */
export function kept<T>(name: string, read: (stored: unknown) => T): Signal<T> {
  const key = `lapstrip.${name}`;
  const value = signal(read(stored(key)));
  // Written only on change: a default nobody chose may differ in a later version.
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
    // Refused, or not what we wrote.
    return null;
  }
}

function store(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // Storage is refused: it lasts until the window closes.
  }
}
