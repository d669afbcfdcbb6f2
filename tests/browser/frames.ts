/** Waiting for the screen itself, which no test's clock controls. */

import type { Page } from 'playwright-core';

/**
 * Waits for a number of layout-and-paint rounds. A new observer reports once per painted frame,
 * after everything observed earlier: on a slow machine it takes as long as it takes.
 */
export const drawn = (page: Page, frames: number): Promise<void> =>
  page.evaluate(async (count) => {
    for (let frame = 0; frame < count; frame++) {
      await new Promise<void>((next) => {
        const observer = new ResizeObserver(() => {
          observer.disconnect();
          next();
        });
        observer.observe(document.documentElement);
      });
    }
  }, frames);
