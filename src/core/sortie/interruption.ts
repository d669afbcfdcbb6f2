/** Whether the pilot was called away from the steps. */

import type { Entry } from './entry';
import type { Sortie } from './fold';

type Steps = Pick<Sortie, 'run' | 'list'>;

/** When the steps were left, and not yet taken up again; null where they were not. */
export const interruptedAt = ({ run, list }: Steps): Entry['at'] | null =>
  (list ?? run)?.interruptedAt ?? null;

/**
 * Whether leaving the steps counts as an interruption: something was done in them, which there is to
 * come back to, they are not left already, and the sortie goes on.
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

/** Away from the app for less than this was a glance, ms. */
const GLANCE_MS = 10_000;

/** Another place that was open for longer than this was more than a look, ms. */
const LOOK_MS = 60_000;

/** Whether the app was hidden so briefly that nothing was interrupted. */
export const wasGlance = (hiddenForMs: number): boolean => hiddenForMs < GLANCE_MS;

/** Whether another place was open for so long that the steps were interrupted. */
export const wasMoreThanLook = (elsewhereForMs: number): boolean => elsewhereForMs > LOOK_MS;
