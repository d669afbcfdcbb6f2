/** The caches that the page and its worker (src/offline) share, by name. */

/**
 * Where the parts of an earlier version stay while one of its pages is open. The worker looks there
 * for what its own version lacks.
 */
export const EARLIER = 'lapstrip-earlier';

/** Where parts stay that are fetched when first wanted: what reads a map. Each version has its own. */
export const ON_DEMAND = 'lapstrip-on-demand';

/** Where a file shared from another app waits for the page, under {@link SHARED_FILE}. */
export const SHARED = 'lapstrip-shared';

/** The only address in {@link SHARED}, relative to the app. */
export const SHARED_FILE = './shared-file';

/** The header that carries the file's name, percent-encoded. */
export const FILE_NAME = 'x-file-name';
