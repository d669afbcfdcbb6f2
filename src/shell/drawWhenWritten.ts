/**
 * Drawing waits for the disk: a tick that stands on the screen outlives a dead battery, because it was
 * written before it was drawn.
 */

import { options } from 'preact';

/** A store that takes longer than this holds up the screen no more, ms. */
const WRITING_PATIENCE_MS = 500;

/**
 * From now on what has changed is drawn once all that was added is written, or was refused. `settled`
 * says when that is; where nothing is being written, it is at once.
 */
export function drawWhenWritten(settled: () => Promise<unknown>): void {
  options.debounceRendering = async (draw) => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const late = new Promise<void>((done) => {
      timer = setTimeout(done, WRITING_PATIENCE_MS);
    });
    await Promise.race([allSettled(settled), late]);
    clearTimeout(timer);
    draw();
  };
}

/** Waits also for what is added while it waits. */
async function allSettled(settled: () => Promise<unknown>): Promise<void> {
  let seen: Promise<unknown> | null = null;
  while (settled() !== seen) {
    seen = settled();
    await seen;
  }
}
