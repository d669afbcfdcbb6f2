/**
 * Whether the host has replaced this page's version while it is open. Parts are named by their
 * content, so one that this page loads late may be gone: then only a reload helps, and retrying
 * never does. Offline we can't know, and retrying is right.
 */

import { signal } from '@preact/signals';

/** A part failed to load because the host has another version. */
export const isReplaced = signal(false);

/** This page's own script, whose name changes with every version. */
export const ownScript = (): string =>
  document.querySelector<HTMLScriptElement>('script[type=module][src]')?.src ?? '';

/** Checks which version the host has now. Never rejects. */
async function look(): Promise<void> {
  try {
    const response = await fetch('./', { cache: 'no-store' });
    const file = ownScript().replace(/.*\//, '');
    if (response.ok && !(await response.text()).includes(file)) isReplaced.value = true;
  } catch {
    // Offline: the part itself says that it failed to load.
  }
}

/** Checks whenever the bundler's loader reports a part that failed to load. Call once. */
export function watchForMissingParts(): void {
  addEventListener('vite:preloadError', () => void look());
}
