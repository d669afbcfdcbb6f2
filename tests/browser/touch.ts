/** Fingers: touches with a place and a length, as the app judges them. */

import type { Locator, Page } from 'playwright-core';

/** How long a finger stays on the glass in an ordinary tap, ms. */
const TAP_MS = 120;

interface Touch {
  /** How long the finger stays, ms; more than 800 is no tap. */
  readonly ms?: number;
  /** How far it slides to the right before it leaves, CSS px. */
  readonly slidePx?: number;
  /** How many fingers come down together, 10 px apart. */
  readonly fingers?: number;
}

async function middleOf(target: Locator) {
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (!box) throw new Error(`nothing to touch: ${target}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Touches the middle of what `target` finds, as a finger would. */
export async function touch(page: Page, target: Locator, how: Touch = {}): Promise<void> {
  const { ms = TAP_MS, slidePx = 0, fingers = 1 } = how;
  const { x, y } = await middleOf(target);
  const at = (slid: number) =>
    Array.from({ length: fingers }, (_, id) => ({ x: x + slid + 10 * id, y, id }));
  const screen = await page.context().newCDPSession(page);
  await screen.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
  if (slidePx > 0) {
    await screen.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(slidePx) });
  }
  await new Promise((resolve) => setTimeout(resolve, ms));
  await screen.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await screen.detach();
}

/** Holds the middle of what `target` finds, as a step marked critical wants. */
export const hold = (page: Page, target: Locator, ms = 1200): Promise<void> =>
  touch(page, target, { ms });
