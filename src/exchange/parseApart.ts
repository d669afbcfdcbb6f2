/** Parsing incoming text in a worker, which is terminated if it takes too long. */

import { askApart } from './askApart';
import type { ParsedJson } from './boundedJson';
import type { JsonFault } from './jsonFault';

/** How long a slow tablet takes for the largest record, with room to spare, ms. */
const PATIENCE_MS = 20_000;

/** What the worker is asked: the value of a text, or the lines that hold these places. */
export interface Asked {
  readonly from: Blob | string;
  readonly paths?: readonly string[];
}

/** The value of a text or file and its length in characters; or why it isn't known. */
export type ParsedApart =
  | (ParsedJson & {
      readonly length: number;
      /** Where it stops being JSON; null if it is, or if that isn't known. */
      readonly fault: JsonFault | null;
    })
  | { readonly value: null; readonly problem: 'too-slow'; readonly fault: null };

const TOO_SLOW: ParsedApart = { value: null, problem: 'too-slow', fault: null };

/** Parses a text or a file of bounded depth and size. Rejects if it can't be read. */
export const parseApart = (from: Blob | string): Promise<ParsedApart> =>
  askWorker({ from }, TOO_SLOW);

/**
 * The line of each place of a JSON text, from 1; null where the text doesn't have it. A place is a
 * path such as `runways.0.ends`. Rejects if the text can't be read.
 */
export const linesApart = (
  from: Blob | string,
  paths: readonly string[],
): Promise<readonly (number | null)[]> => askWorker({ from, paths }, []);

const askWorker = <Answer>(asked: Asked, late: Answer): Promise<Answer> =>
  askApart<Answer, Answer>({
    worker: new Worker(new URL('./parse.worker.ts', import.meta.url), { type: 'module' }),
    asked,
    patienceMs: PATIENCE_MS,
    late,
    answerIn: (answer) => answer,
  }).outcome;
