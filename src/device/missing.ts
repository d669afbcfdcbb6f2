/**
 * Whether a part that failed to load can still come. Parts are named by their content, so one that
 * this page loads late may be gone from a host that has another version by now. And browsers from
 * before mid-2026 never retry a module that failed once (whatwg/html pull request 10327). In both
 * cases only a reload helps. Offline we can't know, and retrying is right.
 */

import { signal } from '@preact/signals';

/** Why this page must be reloaded: the host has another version, or a part fails again and again while the host answers. */
export const mustReload = signal<'replaced' | 'stuck' | null>(null);

/** This page's own script, whose name changes with every version. */
export const ownScript = (): string =>
  document.querySelector<HTMLScriptElement>('script[type=module][src]')?.src ?? '';

/** Parts that fail within this after the last are the same failure, ms. */
const AT_ONCE_MS = 2000;

/** A network that stutters fails once or twice; so many failures while the host answers are no accident. */
const STUCK_AT = 3;

/** Failures while the host answered with this page's version. */
let failures = 0;

/** Checks which version the host has now. Never rejects. */
async function look(isNew: boolean): Promise<void> {
  try {
    const response = await fetch('./', { cache: 'no-store' });
    if (!response.ok) return;
    const file = ownScript().replace(/.*\//, '');
    if (!(await response.text()).includes(file)) {
      mustReload.value = 'replaced';
      return;
    }
    if (isNew) failures += 1;
    if (failures >= STUCK_AT) mustReload.value = 'stuck';
  } catch {
    // Offline: the part itself says that it failed to load.
  }
}

/** Checks whenever the bundler's loader reports a part that failed to load. Call once. */
export function watchForMissingParts(): void {
  let lastMs = Number.NEGATIVE_INFINITY;
  addEventListener('vite:preloadError', () => {
    const nowMs = performance.now();
    void look(nowMs - lastMs > AT_ONCE_MS);
    lastMs = nowMs;
  });
}
