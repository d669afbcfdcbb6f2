/** Reads an extract of a map away from the page, which can end it at any moment. */

import { loadMapReader } from '../core';

/** Progress is told no more often than this, ms. */
const TELL_MS = 100;

addEventListener('message', async ({ data }: MessageEvent<Blob | string>) => {
  const text = typeof data === 'string' ? data : await data.text();
  const { readMapExtract } = await loadMapReader();
  let toldMs = 0;
  const onProgress = (share: number) => {
    const nowMs = performance.now();
    if (nowMs - toldMs < TELL_MS) return;
    toldMs = nowMs;
    postMessage({ kind: 'progress', share });
  };
  postMessage({ kind: 'read', extract: readMapExtract(text, { onProgress }) });
});
