/**
 * Time in a window opened `at` a moment: its clock runs on from there, and can be moved and
 * stopped.
 */

import type { Locator, Page } from 'playwright-core';

/** Advances time, ms. */
export type Wait = (ms: number) => Promise<void>;

const clocks = new WeakSet<Wait>();
const still = new WeakSet<Page>();

/** Advances the clock, so that whole sorties take a few seconds. */
export function clockOf(page: Page): Wait {
  const clock: Wait = (ms) => page.clock.runFor(ms);
  clocks.add(clock);
  return clock;
}

/**
 * Stops the clock a second ahead, when no earlier touch is still being tracked: from here on time
 * passes only by {@link clockOf}, so that a slow machine makes no tap longer than intended.
 */
export async function standStill(page: Page): Promise<Wait> {
  still.add(page);
  await stop(page, 1000);
  return clockOf(page);
}

/** Stops the clock while `work` runs, if it runs yet; within it, `wait` moves the clock. */
export async function whileStill(page: Page, wait: Wait, work: () => Promise<void>): Promise<void> {
  if (!clocks.has(wait) || still.has(page)) return work();
  still.add(page);
  await stop(page, 100);
  await work();
  await page.clock.resume();
  still.delete(page);
}

/** Longer than anything takes to be drawn on a busy machine, ms. */
const PATIENCE_MS = 10_000;

/**
 * Waits until `target` is seen, while `wait` moves the clock: what is drawn may load more in the
 * next frame, and where the clock stands there is none.
 */
export async function comes(target: Locator, wait: Wait): Promise<void> {
  const until = Date.now() + PATIENCE_MS;
  while (!(await target.first().isVisible())) {
    if (Date.now() > until) throw new Error(`waited in vain for ${target}`);
    await wait(20);
  }
}

/** The clock stops at a future moment, `ms` from now. */
async function stop(page: Page, ms: number): Promise<void> {
  const soon = async () => page.clock.pauseAt((await page.evaluate(() => Date.now())) + ms);
  // If a slow machine has passed that moment already, the clock has stopped and can be moved on.
  await soon().catch(soon);
}
