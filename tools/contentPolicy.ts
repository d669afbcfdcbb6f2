/**
 * Writes the content security policy into the built page: everything comes from where the app
 * itself came from, nothing runs that was not built, nothing leaves. A `meta` works on every static
 * host; `frame-ancestors` cannot be said there and comes with the headers (headers.ts).
 */

import type { Plugin } from 'vite';

/** The policy as the page itself can say it. `blob:` is for pictures that the pilot brought. */
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

/** The plugin; only the build carries the policy, because the development server scripts inline. */
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
