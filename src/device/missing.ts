/**
 * Whether a part that failed to load can still come. Parts are named by their content, so one that
 * this page loads late may be gone from a host that has another version by now. And browsers from
 * before mid-2026 never retry a module that failed once (whatwg/html pull request 10327). In both
 * cases only a reload helps. Offline we can't know, and retrying is right.
 */

import { signal } from '@preact/signals';

/** Why this page must be reloaded: the host has another version, or a part failed again while the host answers. */
export const mustReload = signal<'replaced' | 'stuck' | null>(null);

/** This page's own script, whose name changes with every version. */
export const ownScript = (): string =>
  document.querySelector<HTMLScriptElement>('script[type=module][src]')?.src ?? '';

/** Checks which version the host has now. Never rejects. */
async function look(hasFailedBefore: boolean): Promise<void> {
  try {
    const response = await fetch('./', { cache: 'no-store' });
    if (!response.ok) return;
    const file = ownScript().replace(/.*\//, '');
    if (!(await response.text()).includes(file)) mustReload.value = 'replaced';
    else if (hasFailedBefore) mustReload.value = 'stuck';
  } catch {
    // Offline: the part itself says that it failed to load.
  }
}

/** Parts that fail within this after the first are the same failure, ms. */
const AT_ONCE_MS = 2000;

/** Checks whenever the bundler's loader reports a part that failed to load. Call once. */
export function watchForMissingParts(): void {
  let firstMs = Number.POSITIVE_INFINITY;
  addEventListener('vite:preloadError', () => {
    const nowMs = performance.now();
    firstMs = Math.min(firstMs, nowMs);
    void look(nowMs - firstMs > AT_ONCE_MS);
  });
}
