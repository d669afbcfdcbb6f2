/**
 * Storing the app for offline use, and taking a new version of it.
 *
 * Nothing here reloads the page by itself: a pilot halfway down the steps decides when. A page that
 * may not or cannot have a worker, such as one over plain http, works on without.
 */

import type { Workbox } from 'workbox-window';
import { EARLIER } from './cacheNames';
import { language } from './language';
import { ownScript } from './missing';
import { whatsNew } from './whatsNew';

/** Callbacks; either may come at any time after {@link startUpdates}. */
export interface UpdateCallbacks {
  /**
   * A new version is stored and waits for {@link applyUpdate}; `news` says what is new in a line or
   * two.
   */
  onReady(news: readonly string[]): void;
  /** Everything is stored: from now on the app starts offline. */
  onOffline(): void;
}

/** The worker, relative to the page, so that the app runs from any folder. */
const WORKER = './sw.js';

/** How often an open page checks for a new version, ms: an hour. */
const CHECK_EVERY_MS = 60 * 60 * 1000;

/** Every open page holds a lock named after its script, so that pages know each other's version. */
const PAGE_LOCK = 'lapstrip-page ';

let worker: Workbox | null = null;
let started = false;
let accepted = false;

/**
 * Stores the app and starts checking for new versions. Call once, after the first answer, so that
 * storing everything doesn't slow it down. Resolves when the browser has accepted the worker or
 * refused it; never rejects.
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
    // A worker that was active before this page has stored everything already.
    if (registration?.active) callbacks.onOffline();
    keepLooking(registering);
    void forgetEarlier().catch(() => undefined);
  } catch {
    // Refused, as private windows and some policies do, or the network dropped. The app runs on as
    // a page.
  }
}

function listen(registering: Workbox, callbacks: UpdateCallbacks): void {
  // The first worker to take over brought nothing new; any later one did.
  let stored = navigator.serviceWorker.controller !== null;
  const tell = () => void whatsNew(language).then(callbacks.onReady);
  registering.addEventListener('waiting', tell);
  registering.addEventListener('controlling', () => {
    if (accepted) location.reload();
    // Another window took the new version: this one still shows the old, and says so.
    else if (stored) tell();
    else callbacks.onOffline();
    stored = true;
  });
}

/** Takes the new version and shows it. Call only when the pilot asked for it. */
export async function applyUpdate(): Promise<void> {
  accepted = true;
  const registration = await navigator.serviceWorker.getRegistration();
  // Another window took it already: only this page is still old.
  if (!registration?.waiting) return location.reload();
  await keepEarlier(registration.scope).catch(() => undefined);
  worker?.messageSkipWaiting();
}

/** Saves the parts stored so far for other pages of this version: the new worker drops them. */
async function keepEarlier(scope: string): Promise<void> {
  const name = (await caches.keys()).find((key) => key.endsWith(`-precache-v2-${scope}`));
  if (name === undefined) return;
  const [stored, earlier] = [await caches.open(name), await caches.open(EARLIER)];
  // A file not named by its content, such as index.html, has its revision in its address.
  const parts = (await stored.keys()).filter(({ url }) => new URL(url).search === '');
  await Promise.all(
    parts.map(async (part) => {
      const response = await stored.match(part);
      if (response) await earlier.put(part.url, response);
    }),
  );
}

/** Drops the parts of earlier versions once none of their pages is open. */
async function forgetEarlier(): Promise<void> {
  const own = PAGE_LOCK + ownScript();
  void navigator.locks.request(own, { mode: 'shared' }, () => new Promise(() => undefined));
  const { held = [] } = await navigator.locks.query();
  const isAnotherOpen = held.some(({ name = '' }) => name.startsWith(PAGE_LOCK) && name !== own);
  if (!isAnotherOpen) await caches.delete(EARLIER);
}

/**
 * Checks for a new version whenever the app comes back after a while; being offline is no error.
 */
function keepLooking(worker: Workbox): void {
  let lookedMs = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || performance.now() - lookedMs < CHECK_EVERY_MS) return;
    lookedMs = performance.now();
    worker.update().catch(() => undefined);
  });
}
