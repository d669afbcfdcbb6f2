/**
 * The oldest browser of each engine that the app is built for: releases that old devices still get.
 * All have what it cannot do without: sizes of containers, dvh, and CompressionStream for links
 * (Safari 16.4, Firefox 113).
 */
export const OLDEST = { chrome: '111', edge: '111', firefox: '115', safari: '16.4' } as const;

/** The same as the bundler wants to be told. */
export const TARGET = Object.entries(OLDEST).map(([name, version]) => name + version);
