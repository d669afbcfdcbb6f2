/** A file that another app shared: the worker left it where the page finds it. */

import { FILE_NAME, SHARED, SHARED_FILE } from '../../device/cacheNames';
import { openFile } from './opened';

/** What follows `?` in the address the worker answers with. */
export const SHARED_QUERY = '?shared=file';

/** Shows the file, and takes it out of the cache. Never rejects. */
export async function takeSharedFile(): Promise<void> {
  try {
    const cache = await caches.open(SHARED);
    const response = await cache.match(SHARED_FILE);
    if (response === undefined) return;
    await caches.delete(SHARED);
    const name = decodeURIComponent(response.headers.get(FILE_NAME) ?? '');
    const type = response.headers.get('content-type') ?? '';
    await openFile(new File([await response.blob()], name, { type }), null);
  } catch {
    // No cache, as over plain http: then nothing was shared either.
  }
}
