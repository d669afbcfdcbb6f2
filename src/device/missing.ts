/**
 * Whether the host has replaced this page while it is open. Parts are named by their content, so one
 * that this page asks for late may be gone from there: then only a reload helps, and trying again
 * never does. Without a network nothing is known, and trying again is right.
 */

import { signal } from '@preact/signals';

/** A part could not be loaded, because the host has another version. */
export const isReplaced = signal(false);

/** This page's own script, whose name changes with every version. */
export const ownScript = (): string =>
  document.querySelector<HTMLScriptElement>('script[type=module][src]')?.src ?? '';

/** Looks at what the host has now. Never rejects. */
async function look(): Promise<void> {
  try {
    const response = await fetch('./', { cache: 'no-store' });
    const file = ownScript().replace(/.*\//, '');
    if (response.ok && !(await response.text()).includes(file)) isReplaced.value = true;
  } catch {
    // No network: the part itself says that it did not come.
  }
}

/** Looks whenever the build's loader says that a part did not come. To be called once. */
export function watchForMissingParts(): void {
  addEventListener('vite:preloadError', () => void look());
}
