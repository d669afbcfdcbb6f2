/**
 * Uncaught errors: in an effect, in what a tap set off, in a promise. Rendering has its boundaries;
 * nobody sees these, and something may have stopped.
 */

import { signal } from '@preact/signals';

/** Whether the pilot has been told that something failed; once per window. */
export const failure = signal<'none' | 'untold' | 'told'>('none');

/**
 * Notes an error. However many follow, and whatever fails while reporting it, the pilot is told
 * once.
 */
export function noteFailure(error: unknown): void {
  // Browsers report more than errors here: a slow ResizeObserver, or another site's script.
  if (error == null || failure.peek() !== 'none') return;
  failure.value = 'untold';
}

/** The pilot has seen it. */
export function failureTold(): void {
  failure.value = 'told';
}

/**
 * Starts listening; call once. A part that failed to load is reported where it should have been
 * drawn.
 */
export function watchForFailures(page: EventTarget = globalThis): void {
  const missing = new WeakSet<object>();
  page.addEventListener('vite:preloadError', (event) => {
    if ('payload' in event && event.payload instanceof Error) missing.add(event.payload);
  });
  page.addEventListener('error', (event) => {
    if ('error' in event) noteFailure(event.error);
  });
  page.addEventListener('unhandledrejection', (event) => {
    if (!('reason' in event)) return;
    const { reason } = event;
    if (!(reason instanceof Error && missing.has(reason))) noteFailure(reason);
  });
}
