/**
 * One window of several speaks, sounds and listens to pads: two would say everything twice. It is the
 * first that is shown; when that one is hidden or closed, another.
 */

import { signal } from '@preact/signals';

const NAME = 'lapstrip-foremost';

/** Whether this window is the one. */
export const isForemost = signal(false);

/** Begins to take turns; a browser that cannot lets every window be the one. */
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
