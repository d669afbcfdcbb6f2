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
let started = false;
let accepted = false;

/**
 * Stores the app and begins to look for new versions. To be called once, after the first answer,
 * so that storing everything does not slow that answer down. Resolves when the browser has taken
 * the worker or refused it; never rejects.
 */
export async function startUpdates(callbacks: UpdateCallbacks): Promise<void> {
  if (started || !('serviceWorker' in navigator)) return;
  started = true;
  try {
    const { Workbox } = await import('workbox-window');
    const registering = new Workbox(WORKER);
    listen(registering, callbacks);
    const registration = await registering.register({ immediate: true });
    worker = registering;
    // A worker that was active before this page came has stored everything already.
    if (registration?.active) callbacks.onOffline();
    keepLooking(registering);
  } catch {
    // Refused, as private windows and some policies do, or the network went away meanwhile. The app
    // runs on as a page.
  }
}

function listen(registering: Workbox, callbacks: UpdateCallbacks): void {
  // The first worker to take over brought nothing new; any later one did.
  let stored = navigator.serviceWorker.controller !== null;
  registering.addEventListener('waiting', () => callbacks.onReady());
  registering.addEventListener('controlling', () => {
    if (accepted) location.reload();
    // Another window took the new version: this one still shows the old, and says so.
    else if (stored) callbacks.onReady();
    else callbacks.onOffline();
    stored = true;
  });
}

/** Takes the new version and shows it. To be called only when the pilot asked for it. */
export async function applyUpdate(): Promise<void> {
  accepted = true;
  const registration = await navigator.serviceWorker.getRegistration();
  // Taken already, by another window: only this page is still old.
  if (registration?.waiting) worker?.messageSkipWaiting();
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
