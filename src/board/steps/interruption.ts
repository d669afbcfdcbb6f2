/** Being called away from the steps, and resuming them. */

import { leadsToSteps, mayInterrupt, wasGlance } from '../../core';
import { record, sortie } from '../board';
import { goneMs, moment, wallNowMs } from '../flight/time';
import { openPlace, place, sheet, typing } from '../places';
import { add, momentAt } from '../record/adding';
import { backFromWatch, goesBehindWatch } from '../watch';

/**
 * Marks that the pilot was called away from the steps, now or at an earlier moment of the device's
 * clock.
 */
export function interrupt(sinceMs = wallNowMs()): void {
  const { id, list, run } = sortie.value;
  const current = list ?? run;
  if (id === null || current === null || !mayInterrupt(sortie.value)) return;
  record.add(id, momentAt(sinceMs), { kind: 'interrupted', run: current.id });
}

/** Leads a pilot who comes back to the steps, if that comes first; not away from what is open. */
export function backToSteps(awayMs: number, isPlaceAsked: boolean): void {
  if (sheet.value !== null || typing.value || place.value === 'steps') return;
  if (leadsToSteps(sortie.value, awayMs, isPlaceAsked)) openPlace('steps');
}

/** Resumes the steps. */
export function resume(): void {
  const run = sortie.value.list ?? sortie.value.run;
  if (run !== null && run.interruptedAt !== null) add({ kind: 'resumed', run: run.id });
}

/** Marks an interruption while the app is hidden. */
export function interruptWhenLeft(): void {
  let hidden = { elapsedMs: Number.NEGATIVE_INFINITY, wallMs: 0 };
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') {
      hidden = moment();
      // Opening the page that watches isn't leaving, whichever window is in front then.
      if (!goesBehindWatch()) interrupt();
      return;
    }
    const watchedSinceMs = backFromWatch();
    if (watchedSinceMs !== null) interrupt(watchedSinceMs);
    void record.refresh();
    const awayMs = goneMs(hidden);
    if (wasGlance(awayMs)) resume();
    else backToSteps(awayMs, true);
  });
}
