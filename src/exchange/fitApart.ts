/** Fitting an aircraft to its handbook in a worker, which can be stopped and is ended if it takes too long. */

import type { Fit, FitQuestion } from '../core';
import { askApart } from './askApart';

/** How long a fit may take, ms: sixty rows take seven seconds on a fast machine. */
const PATIENCE_MS = 90_000;

/** What the worker is asked. */
export interface FitAsked {
  readonly question: FitQuestion;
  /** It was fitted before: it is only held against its table. */
  readonly isFitted: boolean;
}

/** What it answers: null if the table has no figure. */
export interface FitTold {
  readonly fit: Fit | null;
}

/** What came of it. */
export type FitOutcome =
  | { readonly kind: 'fitted'; readonly fit: Fit }
  | { readonly kind: 'failed'; readonly problem: 'too-slow' | 'not-worked-out' | 'stopped' };

/** A fit under way. */
export interface Fitting {
  /** Never rejects. */
  readonly outcome: Promise<FitOutcome>;
  readonly stop: () => void;
}

type Problem = Extract<FitOutcome, { kind: 'failed' }>['problem'];

const failed = (problem: Problem): FitOutcome => ({ kind: 'failed', problem });

/** Starts fitting. */
export function fitApart(asked: FitAsked): Fitting {
  const { outcome, end } = askApart<FitTold, FitOutcome>({
    worker: new Worker(new URL('./fit.worker.ts', import.meta.url), { type: 'module' }),
    asked,
    patienceMs: PATIENCE_MS,
    late: failed('too-slow'),
    answerIn: ({ fit }) => (fit === null ? failed('not-worked-out') : { kind: 'fitted', fit }),
  });
  return {
    outcome: outcome.catch(() => failed('not-worked-out')),
    stop: () => end(failed('stopped')),
  };
}
