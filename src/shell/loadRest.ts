/** What the first answer does not need, loaded once it stands. */

import { loadTheRest } from '../board/board';
import { askToKeepStorage } from '../device/storage';
import { watchUpdates } from './updates';
import { loadViews } from './views';

/** Loads the sun, the other views and the worker, and asks the browser to keep what is stored. */
export function loadRest(): void {
  // One frame later, so that the answer is painted first.
  requestAnimationFrame(() =>
    setTimeout(() => {
      loadViews();
      void loadTheRest().catch(() => undefined);
      watchUpdates();
      void askToKeepStorage();
    }),
  );
}
