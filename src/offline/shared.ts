/**
 * What another app shares: a text goes into the address, as it would by a link; a file waits where
 * the page finds it. W3C Web Share Target.
 */

import { FILE_NAME, SHARED, SHARED_FILE } from '../device/cacheNames';

/** The fields of the form, as the manifest names them (tools/manifest.ts). */
const TEXTS = ['title', 'text', 'url'] as const;
const FILE = 'file';

/** Larger than any file the app reads, bytes: only that it was too large is kept. */
const LARGEST = 60_000_000;

/** Takes a shared form, and answers with the address that opens what came. */
export async function takeShared(request: Request): Promise<Response> {
  const form = await request.formData();
  const file = form.get(FILE);
  const query = new URLSearchParams();
  if (file instanceof File && file.size > 0) {
    const cache = await caches.open(SHARED);
    const body = file.size > LARGEST ? null : file;
    const headers = { 'content-type': file.type, [FILE_NAME]: encodeURIComponent(file.name) };
    await cache.put(SHARED_FILE, new Response(body, { headers }));
    query.set('shared', 'file');
  } else {
    for (const name of TEXTS) {
      const text = form.get(name);
      if (typeof text === 'string' && text !== '') query.set(name, text);
    }
  }
  return Response.redirect(`./?${query}`, 303);
}
