/** Whether the pilot was called away from the steps. */

import type { Entry } from './entry';
import type { Sortie } from './fold';

type Steps = Pick<Sortie, 'run' | 'list'>;

/** When the steps were left and not yet resumed; null if they weren't. */
export const interruptedAt = ({ run, list }: Steps): Entry['at'] | null =>
  (list ?? run)?.interruptedAt ?? null;

/**
 * Whether leaving the steps counts as an interruption: something was done in them to come back to,
 * they haven't been left already, and the sortie goes on.
 */
export function mayInterrupt(sortie: Steps & Pick<Sortie, 'id' | 'endedAt'>): boolean {
  const current = sortie.list ?? sortie.run;
  return (
    sortie.id !== null &&
    sortie.endedAt === null &&
    current !== null &&
    current.last !== null &&
    current.interruptedAt === null
  );
}

/** Being away from the app for less than this is a glance, ms. */
const GLANCE_MS = 10_000;

/** Having another place open for longer than this is more than a look, ms. */
const LOOK_MS = 60_000;

/** Whether the app was hidden so briefly that nothing was interrupted. */
export const wasGlance = (hiddenForMs: number): boolean => hiddenForMs < GLANCE_MS;

/** Whether another place was open long enough to interrupt the steps. */
export const wasMoreThanLook = (elsewhereForMs: number): boolean => elsewhereForMs > LOOK_MS;
