/** Being called away from the steps, and taking them up again. */

import { add } from './adding';
import { record, sortie } from './board';
import { keepDraft } from './windEntry';

/** A window that was hidden for less than this was only glanced away from. */
const GLANCE_MS = 10_000;

/** Marks that the pilot was called away from the steps. */
export function interrupt(): void {
  const run = sortie.value.list ?? sortie.value.run;
  if (run !== null && run.interruptedAt === null && sortie.value.endedAt === null) {
    add({ kind: 'interrupted', run: run.id });
  }
}

/** Takes the steps up again. */
export function resume(): void {
  const run = sortie.value.list ?? sortie.value.run;
  if (run !== null && run.interruptedAt !== null) add({ kind: 'resumed', run: run.id });
}

/** Marks an interruption when the app is hidden for more than a glance, and keeps what is typed when it goes. */
export function interruptWhenLeft(): void {
  let hiddenAt = 0;
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') {
      hiddenAt = Date.now();
      keepDraft();
      return;
    }
    void record.refresh();
    if (hiddenAt > 0 && Date.now() - hiddenAt > GLANCE_MS) interrupt();
  });
  addEventListener('pagehide', keepDraft);
}
