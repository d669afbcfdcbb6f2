/** What a report says is closed. */

import type { Weather } from './whole/report';

/** Runways a report closes, by their numbers, or all of them. */
export type Closure = 'all' | readonly string[];

/**
 * What a report closes: by snow (`R/SNOCLO`, or for one runway `R28/SNOCLO`: FM 15, 15.13.6), by
 * deposits too deep to measure (the same, `//99//`), or by a colour state of `BLACK`, which
 * military fields report when the runway can't be used, whatever the weather (common practice, no
 * published source). Empty if nothing.
 */
export function closureOf({ runwayStates, colourState }: Weather): Closure {
  if (colourState?.black) return 'all';
  const closed = runwayStates.filter((state) => state.code === 'snow-closed' || state.closed);
  const runways = closed.map(({ runway }) => runway);
  return runways.includes('all') ? 'all' : runways.filter((runway) => runway !== 'repeated');
}

/** Whether a closure concerns a runway end: by its number, or that of its other end. */
export const closes = (closure: Closure, ends: readonly string[]): boolean =>
  closure === 'all' || ends.some((end) => closure.includes(end));
