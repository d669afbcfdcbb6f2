/** Time in a window that was opened `at` a moment: its clock runs on from there, and can be moved and stopped. */

import type { Page } from 'playwright-core';

/** Lets time pass, ms. */
export type Wait = (ms: number) => Promise<void>;

const clocks = new WeakSet<Wait>();
const still = new WeakSet<Page>();

/** Moves the clock on, so that whole sorties can be flown in a few seconds. */
export function clockOf(page: Page): Wait {
  const clock: Wait = (ms) => page.clock.runFor(ms);
  clocks.add(clock);
  return clock;
}

/**
 * Stops the clock, a second on, when no touch of before is followed any more: from here on time passes
 * only by {@link clockOf}, so that a slow machine makes no tap longer than it is meant to be.
 */
export async function standStill(page: Page): Promise<Wait> {
  still.add(page);
  await stop(page, 1000);
  return clockOf(page);
}

/** Stops the clock for as long as `work` takes, where `wait` moves one. */
export async function whileStill(page: Page, wait: Wait, work: () => Promise<void>): Promise<void> {
  if (!clocks.has(wait) || still.has(page)) return work();
  await stop(page, 100);
  await work();
  await page.clock.resume();
}

/** A clock is stopped at a moment to come, `ms` from now. */
async function stop(page: Page, ms: number): Promise<void> {
  const soon = async () => page.clock.pauseAt((await page.evaluate(() => Date.now())) + ms);
  // Where a slow machine has let that moment pass, the clock stands by now, and can be moved on.
  await soon().catch(soon);
}
