/** Reads and parses incoming text away from the page, which can terminate it. */

import { boundedJson } from './boundedJson';
import { jsonFault, linesOf } from './jsonFault';
import type { Asked } from './parseApart';

addEventListener('message', async ({ data: { from, paths } }: MessageEvent<Asked>) => {
  const text = typeof from === 'string' ? from : await from.text();
  if (paths !== undefined) {
    postMessage(linesOf(text, paths));
    return;
  }
  const parsed = boundedJson(text);
  const fault = parsed.problem === 'not-json' ? jsonFault(text) : null;
  postMessage({ ...parsed, length: text.length, fault });
});
