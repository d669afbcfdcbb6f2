/**
 * Storing the app for use without a network, and taking a new version of it.
 *
 * Nothing here reloads the page by itself: a pilot halfway down the steps decides when. A page that
 * may not or cannot keep a worker, such as one served over plain http, goes on working without.
 */

import type { Workbox } from 'workbox-window';
import { language } from './language';
import { ownScript } from './missing';
import { whatsNew } from './whatsNew';

/** What the app is told. Either may be called at any time after {@link startUpdates}. */
export interface UpdateCallbacks {
  /** A new version is stored and waits until {@link applyUpdate}; `news` says in a line or two what is new. */
  onReady(news: readonly string[]): void;
  /** Everything is stored: from now on the app starts without a network. */
  onOffline(): void;
}

/** The worker, relative to the page, so that the app runs from any folder. */
const WORKER = './sw.js';

/** How often a page left open asks whether there is a new version, ms: an hour. */
const CHECK_EVERY_MS = 60 * 60 * 1000;

/**
 * Where the parts of an earlier version stay while a page of it is open. The worker looks there for
 * what its own version does not hold (vite.config.ts).
 */
const EARLIER = 'lapstrip-earlier';

/** Every open page holds a lock of this name with its script's: so pages know of each other's version. */
const PAGE_LOCK = 'lapstrip-page ';

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
    void forgetEarlier().catch(() => undefined);
  } catch {
    // Refused, as private windows and some policies do, or the network went away meanwhile. The app
    // runs on as a page.
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

/** Takes the new version and shows it. To be called only when the pilot asked for it. */
export async function applyUpdate(): Promise<void> {
  accepted = true;
  const registration = await navigator.serviceWorker.getRegistration();
  // Taken already, by another window: only this page is still old.
  if (!registration?.waiting) return location.reload();
  await keepEarlier(registration.scope).catch(() => undefined);
  worker?.messageSkipWaiting();
}

/** Keeps the parts stored so far for other pages of this version: the new worker drops them. */
async function keepEarlier(scope: string): Promise<void> {
  const name = (await caches.keys()).find((key) => key.endsWith(`-precache-v2-${scope}`));
  if (name === undefined) return;
  const [stored, earlier] = [await caches.open(name), await caches.open(EARLIER)];
  // What is not named by its content, as index.html is, has its revision in its address.
  const parts = (await stored.keys()).filter(({ url }) => new URL(url).search === '');
  await Promise.all(
    parts.map(async (part) => {
      const response = await stored.match(part);
      if (response) await earlier.put(part.url, response);
    }),
  );
}

/** Drops the parts of earlier versions once no page of one is open. */
async function forgetEarlier(): Promise<void> {
  const own = PAGE_LOCK + ownScript();
  void navigator.locks.request(own, { mode: 'shared' }, () => new Promise(() => undefined));
  const { held = [] } = await navigator.locks.query();
  const isAnotherOpen = held.some(({ name = '' }) => name.startsWith(PAGE_LOCK) && name !== own);
  if (!isAnotherOpen) await caches.delete(EARLIER);
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
