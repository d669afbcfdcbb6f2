/** Fingers: touches with a place and a duration, as the app judges them. */

import type { CDPSession, Locator, Page } from 'playwright-core';
import { type Wait, whileStill } from './time';

/** How long a finger stays on the glass in an ordinary tap, ms. */
const TAP_MS = 120;

interface Touch {
  /** How long the finger stays, ms, possibly depending on the element; more than 800 is no tap. */
  readonly ms?: number | ((words: string) => number);
  /** How far it slides to the right before it leaves, CSS px. */
  readonly slidePx?: number;
  /** How far it slides down, CSS px. */
  readonly downPx?: number;
  /** How many fingers come down together, 10 px apart. */
  readonly fingers?: number;
  /** Something lies over it, and takes the touch. */
  readonly covered?: boolean;
  /** How time passes while the finger stays. */
  readonly wait?: Wait;
}

const screens = new WeakMap<Page, Promise<CDPSession>>();

/** Stands in for a page's glass: touches are sent through it. */
function screenOf(page: Page): Promise<CDPSession> {
  const screen = screens.get(page) ?? page.context().newCDPSession(page);
  screens.set(page, screen);
  return screen;
}

const sleep: Wait = (ms) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** Longer than a sheet takes to leave on a busy machine, ms. */
const COVERED_MS = 10_000;

/**
 * The middle of what `target` finds, scrolled into view, and the element there. Waits until nothing
 * lies over it, such as a sheet that is just leaving.
 */
async function middleOf(target: Locator, wait: Wait, covered = false) {
  const until = Date.now() + COVERED_MS;
  for (;;) {
    const { free, ...middle } = await target.evaluate((element) => {
      element.scrollIntoView({ block: 'nearest', inline: 'nearest', behavior: 'instant' });
      const { left, top, width, height } = element.getBoundingClientRect();
      if (width * height === 0) throw new Error('nothing to touch');
      const [x, y] = [left + width / 2, top + height / 2];
      const there = document.elementFromPoint(x, y);
      // An element that takes no touches lets them through to its container.
      const within = there !== document.documentElement && there?.contains(element) === true;
      const free = within || element.contains(there);
      return { x, y, words: element.textContent ?? '', free };
    });
    if (free || covered) return middle;
    if (Date.now() > until) throw new Error(`something lies over "${middle.words}"`);
    await wait(50);
  }
}

/** Touches the middle of what `target` finds, as a finger would. */
export async function touch(page: Page, target: Locator, how: Touch = {}): Promise<void> {
  const { ms = TAP_MS, slidePx = 0, downPx = 0, fingers = 1, covered = false, wait = sleep } = how;
  const { x, y, words } = await middleOf(target, wait, covered);
  const at = (slid: number, down: number) =>
    Array.from({ length: fingers }, (_, id) => ({ x: x + slid + 10 * id, y: y + down, id }));
  const screen = await screenOf(page);
  const put = async () => {
    await screen.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0, 0) });
    if (slidePx !== 0 || downPx !== 0) {
      const touchPoints = at(slidePx, downPx);
      await screen.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints });
    }
    await wait(typeof ms === 'number' ? ms : ms(words));
    await screen.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  };
  await whileStill(page, wait, put);
}

/** Touches what `target` finds while a palm comes down on `palm` and leaves first. */
export async function touchWithPalm(
  page: Page,
  target: Locator,
  palm: Locator,
  wait: Wait = sleep,
): Promise<void> {
  const finger = { ...(await middleOf(target, wait)), id: 0 };
  const hand = { ...(await middleOf(palm, wait)), id: 1 };
  const screen = await screenOf(page);
  const send = (type: 'touchStart' | 'touchEnd', touchPoints: (typeof finger)[]) =>
    screen.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', [finger]);
  await send('touchStart', [finger, hand]);
  await wait(TAP_MS);
  await send('touchEnd', [hand]);
  await send('touchEnd', []);
}

/** Pinches what `target` finds, from 200 px apart to 60. */
export async function pinch(page: Page, target: Locator, wait: Wait = sleep): Promise<void> {
  const { x, y } = await middleOf(target, wait);
  const apart = (px: number) => [
    { x: x - px / 2, y, id: 0 },
    { x: x + px / 2, y, id: 1 },
  ];
  const screen = await screenOf(page);
  await screen.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: apart(200) });
  await wait(100);
  await screen.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: apart(60) });
  await wait(100);
  await screen.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}
