/**
 * Errors that nothing caught: in an effect, in what a tap set off, in a promise. What is drawn has its
 * boundary; these are seen by nobody, and something may have stopped.
 */

import { signal } from '@preact/signals';

/** Whether the pilot has been told that something failed: once in the life of a window. */
export const failure = signal<'none' | 'untold' | 'told'>('none');

/** Takes note of an error. However many follow, and whatever fails in telling of it, it is told once. */
export function noteFailure(error: unknown): void {
  // A browser reports more than errors here: that an observer was slow, or what another site's script did.
  if (error == null || failure.peek() !== 'none') return;
  failure.value = 'untold';
}

/** The pilot has seen it. */
export function failureTold(): void {
  failure.value = 'told';
}

/** Begins to listen; call once. A part that did not come is told where it is drawn. */
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
