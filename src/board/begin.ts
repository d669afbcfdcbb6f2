/** Takes up where the pilot left off. */

import { chooseAircraft, interrupt, keepDraft } from './actions';
import { draft, followDate, inputs, record, sortie } from './board';
import { aircraft } from './documents';

/** A window that was hidden for less than this was only glanced away from. */
const GLANCE_MS = 10_000;

/** Longer than this the app will not wait for a storage that does not answer. */
const STORE_PATIENCE_MS = 2000;

/** Reads the record and what it asks for. Resolves when the first frame can be drawn. */
export async function begin(): Promise<void> {
  const opened = record.open();
  await Promise.race([opened, new Promise((done) => setTimeout(done, STORE_PATIENCE_MS))]);
  followDate();
  draft.value = inputs.value.draft;
  const { run, list } = sortie.value;
  // A reload in mid-sequence is an interruption: it says where the pilot was and how long ago.
  if ((list ?? run)?.last) interrupt();
  const first = aircraft[0];
  if (inputs.value.aircraft === null && first !== undefined) chooseAircraft(first);
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
