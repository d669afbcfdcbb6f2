/**
 * The oldest browser of each engine that the app supports, still available to old devices. All have
 * what it can't do without: container sizes, dvh, and CompressionStream for links (Safari 16.4,
 * Firefox 113).
 */
export const OLDEST = { chrome: '111', edge: '111', firefox: '115', safari: '16.4' } as const;

/** The same in the bundler's notation. */
export const TARGET = Object.entries(OLDEST).map(([name, version]) => name + version);
