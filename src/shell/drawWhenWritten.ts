/**
 * Drawing waits for the disk: a tick on the screen survives a dead battery, because it was stored
 * before it was drawn.
 */

import { options } from 'preact';

/** A store slower than this no longer holds up the screen, ms. */
const WRITING_PATIENCE_MS = 500;

/**
 * From now on, changes are drawn only once everything added is stored or was refused. `settled`
 * resolves then; at once if nothing is being stored. What was waited for in vain is waited for
 * once, or every letter typed beside a store that hangs would be late.
 */
export function drawWhenWritten(settled: () => Promise<unknown>): void {
  let inVain: Promise<unknown> | null = null;
  options.debounceRendering = async (draw) => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<void>((done) => {
      timer = setTimeout(() => {
        inVain = settled();
        done();
      }, WRITING_PATIENCE_MS);
    });
    await (settled() === inVain ? null : Promise.race([allSettled(settled), late]));
    clearTimeout(timer);
    draw();
  };
}

/** Also waits for what is added meanwhile. */
async function allSettled(settled: () => Promise<unknown>): Promise<void> {
  let seen: Promise<unknown> | null = null;
  while (settled() !== seen) {
    seen = settled();
    await seen;
  }
}
