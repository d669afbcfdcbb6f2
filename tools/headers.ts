/**
 * The headers a host sends: one list for `npm start`, the browser tests' host and the README's
 * configurations.
 */

import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { POLICY } from './contentPolicy';

/** Sent with every file. */
export const HEADERS = {
  // The page's own policy, plus who may frame it, which only a header can say.
  'Content-Security-Policy': `${POLICY}; frame-ancestors 'none'`,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Permissions-Policy': 'geolocation=(self), serial=(self), camera=(), microphone=(), payment=()',
} as const;

/** Names that no other file of any version ever has: cached for good. */
const HASHED = /(^|\/)assets\/[^/]+$/;

/** For files with a hash of their content in the name. */
export const IMMUTABLE = 'public, max-age=31536000, immutable';
/** For all others, above all index.html and sw.js: revalidated each time. */
export const NO_CACHE = 'no-cache';

/** `Cache-Control` for a path, with or without the part before the app's folder. */
export const cachingOf = (path: string): string => (HASHED.test(path) ? IMMUTABLE : NO_CACHE);

/** Makes `vite preview`, and so `npm start`, send them. */
export function headers(): Plugin {
  return {
    name: 'lapstrip-headers',
    // Answer no missing file with index.html: an older version would keep that instead.
    config: () => ({ appType: 'mpa' }),
    configurePreviewServer({ config, middlewares }) {
      const served = resolve(config.root, config.build.outDir);
      middlewares.use((request, response, next) => {
        for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
        const { pathname } = new URL(request.url ?? '/', 'http://host');
        // A 404 is never cached.
        const isThere = existsSync(join(served, pathname));
        response.setHeader('Cache-Control', isThere ? cachingOf(pathname) : NO_CACHE);
        next();
      });
    },
  };
}
