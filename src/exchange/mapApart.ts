/** Reading an extract of a map in a worker, which can be stopped and is ended if it takes too long. */

import type { MapExtract } from '../core';
import { askApart } from './askApart';

/** Nothing larger is read, bytes or characters. */
export const LARGEST_MAP = 50_000_000;

/** How long reading may take, ms. */
export const MAP_PATIENCE_MS = 30_000;

/** What came of reading. */
export type MapOutcome =
  | { readonly kind: 'read'; readonly extract: MapExtract }
  | {
      readonly kind: 'failed';
      readonly problem: 'too-large' | 'too-slow' | 'not-read' | 'stopped';
    };

/** A reading under way. */
export interface MapReading {
  /** Resolves when it is read, failed or stopped; never rejects. */
  readonly outcome: Promise<MapOutcome>;
  /** Ends the worker; nothing of the file stays. */
  readonly stop: () => void;
}

type Told =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'read'; readonly extract: MapExtract };

const failed = (problem: Extract<MapOutcome, { kind: 'failed' }>['problem']): MapOutcome => ({
  kind: 'failed',
  problem,
});

/** Starts reading a file or a pasted text; `onProgress` gets the share done, 0 to 1. */
export function readMapApart(from: Blob | string, onProgress: (share: number) => void): MapReading {
  const size = typeof from === 'string' ? from.length : from.size;
  if (size > LARGEST_MAP) {
    return { outcome: Promise.resolve(failed('too-large')), stop: () => undefined };
  }
  const { outcome, end } = askApart<Told, MapOutcome>({
    worker: new Worker(new URL('./map.worker.ts', import.meta.url), { type: 'module' }),
    asked: from,
    patienceMs: MAP_PATIENCE_MS,
    late: failed('too-slow'),
    answerIn: (told) => {
      if (told.kind === 'read') return told;
      onProgress(told.share);
      return null;
    },
  });
  return {
    outcome: outcome.catch(() => failed('not-read')),
    stop: () => end(failed('stopped')),
  };
}
