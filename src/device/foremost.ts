/**
 * Of several windows only one speaks, sounds and listens to pads: two would do everything twice. It
 * is the first to be visible; when that one is hidden or closed, another takes over.
 */

import { signal } from '@preact/signals';

const NAME = 'lapstrip-foremost';

/** Whether this window is that one. */
export const isForemost = signal(false);

/** Starts taking turns. In a browser without locks, every window is the one. */
export function takeTurns(): void {
  const { locks } = navigator;
  if (!locks) {
    isForemost.value = true;
    return;
  }
  let leave: (() => void) | null = null;
  let waiting: AbortController | null = null;
  const enter = () => {
    if (waiting !== null || leave !== null) return;
    waiting = new AbortController();
    const held = () =>
      new Promise<void>((resolve) => {
        waiting = null;
        isForemost.value = true;
        leave = () => {
          leave = null;
          isForemost.value = false;
          resolve();
        };
      });
    locks.request(NAME, { signal: waiting.signal }, held).catch(() => {
      waiting = null;
    });
  };
  const follow = () => {
    if (document.visibilityState === 'visible') enter();
    else {
      waiting?.abort();
      waiting = null;
      leave?.();
    }
  };
  document.addEventListener('visibilitychange', follow);
  follow();
}
