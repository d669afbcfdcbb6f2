/**
 * The worker that stores the app, starts it without a network, and takes what other apps share with
 * it. A version of its own replaces it only when the pilot takes that version (src/device/update.ts).
 */

import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import { CacheFirst } from 'workbox-strategies';
import { EARLIER, ON_DEMAND } from '../device/cacheNames';
import { takeShared } from './shared';

declare const self: ServiceWorkerGlobalScope & {
  /** Every file of the build that is stored; written in by vite-plugin-pwa. */
  readonly __WB_MANIFEST: (PrecacheEntry | string)[];
};

self.addEventListener('message', ({ data }: ExtendableMessageEvent) => {
  const asked: unknown = data;
  const type = typeof asked === 'object' && asked !== null && 'type' in asked ? asked.type : null;
  if (type === 'SKIP_WAITING') void self.skipWaiting();
});

clientsClaim();
precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();

// A missing file is a 404, not the page.
registerRoute(
  new NavigationRoute(createHandlerBoundToURL('index.html'), {
    denylist: [/\/[^/?]+\.[^/]+$/],
  }),
);

// Fetched when first wanted, and then here without a network too, until a version brings its own.
registerRoute(/\/assets\/map\.[^/]+$/, new CacheFirst({ cacheName: ON_DEMAND }));
self.addEventListener('activate', (event) => event.waitUntil(caches.delete(ON_DEMAND)));

// What this version does not hold is a part of another, asked for by a page that is still open:
// src/device/update.ts keeps it there before it takes a version. The world's fields the page keeps by
// itself (src/record/worldFile.ts).
registerRoute(
  /\/assets\/(?!world-)[^/]+$/,
  new CacheFirst({ cacheName: EARLIER, matchOptions: { ignoreVary: true } }),
);

registerRoute(
  ({ sameOrigin, url }) => sameOrigin && url.href === self.registration.scope,
  ({ request }) => takeShared(request),
  'POST',
);
