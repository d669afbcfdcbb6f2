/** Waiting for the screen itself, which no clock of a test moves. */

import type { Page } from 'playwright-core';

/**
 * Lets the page be laid out and drawn so many times. What is observed anew is told of once in every
 * drawn frame, after all that was observed before it: on a slow machine it takes as long as it takes.
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
