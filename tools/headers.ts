/**
 * What a host sends with the app: one list, which `npm start`, the host of the browser tests and the
 * README's configurations all keep to.
 */

import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { POLICY } from './contentPolicy';

/** Sent with every file. */
export const HEADERS = {
  // What the page says of itself, and who may put it in a frame, which only a header can say.
  'Content-Security-Policy': `${POLICY}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'geolocation=(self), serial=(self), camera=(), microphone=(), payment=()',
} as const;

/** What no other file of any version is ever called: kept for good. */
const HASHED = /(^|\/)(assets\/|workbox-)[^/]+$/;

/** `Cache-Control` of a file named with a hash of its content. */
export const IMMUTABLE = 'public, max-age=31536000, immutable';
/** `Cache-Control` of all others, index.html and sw.js above all: asked for anew each time. */
export const NO_CACHE = 'no-cache';

/** `Cache-Control` for a path, with or without what lies before the app's own folder. */
export const cachingOf = (path: string): string => (HASHED.test(path) ? IMMUTABLE : NO_CACHE);

/** The plugin: `vite preview`, and so `npm start`, sends them. */
export function headers(): Plugin {
  return {
    name: 'lapstrip-headers',
    // A file that is not there is not index.html: a part of an older version must be missed, not kept.
    config: () => ({ appType: 'mpa' }),
    configurePreviewServer({ config, middlewares }) {
      const served = resolve(config.root, config.build.outDir);
      middlewares.use((request, response, next) => {
        for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
        const { pathname } = new URL(request.url ?? '/', 'http://host');
        // That something is not there is never kept.
        const isThere = existsSync(join(served, pathname));
        response.setHeader('Cache-Control', isThere ? cachingOf(pathname) : NO_CACHE);
        next();
      });
    },
  };
}
