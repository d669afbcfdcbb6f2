/** Reads and parses incoming text away from the page, which can terminate it. */

import { boundedJson } from './boundedJson';

addEventListener('message', async ({ data }: MessageEvent<Blob | string>) => {
  const text = typeof data === 'string' ? data : await data.text();
  postMessage({ ...boundedJson(text), length: text.length });
});
