/**
 * Writes the content security policy into the built page: load only from the app's own host, run
 * only what was built, send nothing. A `meta` works on every static host; it can't say
 * `frame-ancestors`, which comes with the headers (headers.ts).
 */

import type { Plugin } from 'vite';

/** The part of the policy a page can state. `blob:` is for pictures the pilot brings. */
export const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only the build carries the policy: the development server runs inline scripts. */
export function contentPolicy(): Plugin {
  return {
    name: 'lapstrip-content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}
