/**
 * Storing the app for use without a network, and taking a new version of it.
 *
 * Nothing here reloads the page by itself: a pilot halfway down the steps decides when. A page that
 * may not or cannot keep a worker, such as one served over plain http, goes on working without.
 */

import type { Workbox } from 'workbox-window';

/** What the app is told. Either may be called at any time after {@link startUpdates}. */
export interface UpdateCallbacks {
  /** A new version is stored and waits until {@link applyUpdate}. */
  onReady(): void;
  /** Everything is stored: from now on the app starts without a network. */
  onOffline(): void;
}

/** The worker, relative to the page, so that the app runs from any folder. */
const WORKER = './sw.js';

/** How often a page left open asks whether there is a new version, ms: an hour. */
const CHECK_EVERY_MS = 60 * 60 * 1000;

let worker: Workbox | null = null;
let waiting = false;
let accepted = false;

/**
 * Stores the app and begins to look for new versions. To be called once, after the first answer,
 * so that storing everything does not slow that answer down. Resolves when the browser has taken
 * the worker or refused it; never rejects.
 */
export async function startUpdates(callbacks: UpdateCallbacks): Promise<void> {
  if (worker || !('serviceWorker' in navigator)) return;
  const { Workbox } = await import('workbox-window');
  worker = new Workbox(WORKER);
  const ready = () => {
    waiting = true;
    callbacks.onReady();
  };
  worker.addEventListener('waiting', ready);
  worker.addEventListener('activated', ({ isUpdate }) => {
    if (!isUpdate) callbacks.onOffline();
  });
  worker.addEventListener('controlling', ({ isUpdate }) => {
    if (accepted) location.reload();
    // Another window took the new version: this one still shows the old, and says so.
    else if (isUpdate) callbacks.onReady();
  });
  try {
    const registration = await worker.register({ immediate: true });
    // A worker that was active before this page came has stored everything already.
    if (registration?.active) callbacks.onOffline();
    keepLooking(worker);
  } catch {
    // Refused: private windows and some policies do so. The app runs as a page, and says nothing.
    worker = null;
  }
}

/** Takes the new version and shows it. To be called only when the pilot asked for it. */
export function applyUpdate(): void {
  accepted = true;
  if (worker && waiting) worker.messageSkipWaiting();
  else location.reload();
}

/** Looks for a new version whenever the app is taken up again after a while; offline is no error. */
function keepLooking(worker: Workbox): void {
  let lookedMs = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || performance.now() - lookedMs < CHECK_EVERY_MS) return;
    lookedMs = performance.now();
    worker.update().catch(() => undefined);
  });
}
