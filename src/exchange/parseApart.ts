/** Parsing incoming text in a worker, which is terminated if it takes too long. */

import type { ParsedJson } from './boundedJson';

/** How long a slow tablet takes for the largest record, with room to spare, ms. */
const PATIENCE_MS = 20_000;

/** The value of a text or file and its length in characters; or why it isn't known. */
export type ParsedApart =
  | (ParsedJson & { readonly length: number })
  | { readonly value: null; readonly problem: 'too-slow' };

/** Parses a text or a file of bounded depth and size. Rejects if it can't be read. */
export async function parseApart(from: Blob | string): Promise<ParsedApart> {
  const worker = new Worker(new URL('./parse.worker.ts', import.meta.url), { type: 'module' });
  let timer: ReturnType<typeof setTimeout> | undefined;
  try {
    return await new Promise<ParsedApart>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<ParsedApart>) => resolve(data);
      worker.onerror = () => reject(new Error('not read'));
      worker.onmessageerror = () => reject(new Error('not read'));
      timer = setTimeout(() => resolve({ value: null, problem: 'too-slow' }), PATIENCE_MS);
      worker.postMessage(from);
    });
  } finally {
    clearTimeout(timer);
    worker.terminate();
  }
}
