/**
 * A false tick is the worst failure: nothing a hand does by accident ticks a step.
 *
 * The rule: a tap that ticks is one pointer, 80 to 800 ms, moving less than 12 px; it is ignored
 * for half a second after the step changed and on the first touch after waking; a critical step
 * must be held. Common practice, no published source.
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import {
  doneKey,
  due,
  EVENING,
  goOnFrom,
  key,
  SETTLED_MS,
  standStill,
  tickAll,
  toSteps,
  type Wait,
} from './pilot';
import { touch, touchWithPalm } from './touch';

const FIRST = 'Seat pins three out, in the rack';
const SECOND = 'Brake lever parked, needle white';
const THIRD = 'Stick and pedals full travel, free';
/** The first step that is not critical. */
const PLAIN = 'Gear lever down, three green';
const AFTER_PLAIN = 'Oxygen flowing, hose clipped';

/** The app handles a touch at once: the step would have changed by then. */
const SEEN_MS = 150;

/** Goes to the first step that a tap ticks, and lets it settle. Those before it are held back. */
async function toPlainStep(page: Page): Promise<Wait> {
  await toSteps(page);
  await goOnFrom(page, 'Ramp', 'Gear lever');
  await expect.poll(() => due(page)).toBe(PLAIN);
  const wait = await standStill(page);
  await wait(SETTLED_MS);
  return wait;
}

describe('a step that a tap ticks', () => {
  test('is not ticked by a tap that moves, lasts too long or is too short', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page);
    for (const clumsy of [{ slidePx: 14 }, { ms: 810 }, { ms: 70 }]) {
      await touch(page, doneKey(page), { ...clumsy, wait });
      await wait(SEEN_MS);
      expect(await due(page), JSON.stringify(clumsy)).toBe(PLAIN);
      // The key says for a moment why it did not count.
      await wait(2000);
    }
    await touch(page, doneKey(page), { wait });
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is ticked after a sheet was closed by a tap beside it, which presses nothing below', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    const wait = await toPlainStep(page);
    await key(page, 'Cannot').click();
    const places = page.getByRole('button', { name: 'Numbers' });
    const sheet = page.getByRole('dialog');
    await wait(SETTLED_MS);
    await sheet.waitFor();
    await touch(page, places, { covered: true, wait });
    await wait(SETTLED_MS);
    expect(await sheet.count()).toBe(0);
    expect(await due(page)).toBe(PLAIN);
    await touch(page, doneKey(page), { wait });
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is not ticked by two fingers, nor while a palm rests elsewhere', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page);
    await touch(page, doneKey(page), { fingers: 2, wait });
    await wait(2000);
    expect(await due(page)).toBe(PLAIN);
    await touchWithPalm(page, doneKey(page), page.locator('strong'), wait);
    await wait(2000);
    expect(await due(page)).toBe(PLAIN);
    await touch(page, doneKey(page), { wait });
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is ticked once by two taps in quick succession', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page);
    await touch(page, doneKey(page), { ms: 85, wait });
    await wait(80);
    await touch(page, doneKey(page), { ms: 85, wait });
    await wait(SEEN_MS);
    expect(await due(page)).toBe(AFTER_PLAIN);
  });

  test('is not held back by a brush over that key either', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page);
    await touch(page, key(page, 'Later'), { slidePx: 14, wait });
    await wait(SEEN_MS);
    expect(await due(page)).toBe(PLAIN);
  });

  test('is not ticked by the touch that finds the screen just woken', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page);
    await glanceAway(page);
    await touch(page, doneKey(page), { wait });
    await wait(2000);
    expect(await due(page)).toBe(PLAIN);
    await touch(page, doneKey(page), { wait });
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is ticked once by a key that is held down until it repeats', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page);
    await doneKey(page).focus();
    // Pressed again without a release is how a browser reports autorepeat.
    for (let i = 0; i < 30; i++) {
      await page.keyboard.down('Enter');
      await wait(33);
    }
    await page.keyboard.up('Enter');
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });
});

describe('a critical step', () => {
  test('wants the key held, by touch and on the keyboard', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    const wait = await standStill(page);
    await wait(SETTLED_MS);
    await touch(page, doneKey(page), { wait });
    await wait(2000);
    expect(await due(page)).toBe(FIRST);
    await doneKey(page).focus();
    await page.keyboard.press('Enter');
    await wait(SEEN_MS);
    expect(await due(page)).toBe(FIRST);
    await touch(page, doneKey(page), { ms: 710, wait });
    await expect.poll(() => due(page)).toBe(SECOND);
    await wait(SETTLED_MS);
    await page.keyboard.down('Enter');
    await wait(710);
    await page.keyboard.up('Enter');
    await expect.poll(() => due(page)).toBe(THIRD);
  });

  test('asks a screen reader, which cannot hold a key, twice', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    const wait = await standStill(page);
    await expect
      .poll(() => doneKey(page).getAttribute('aria-description'))
      .toMatch(/press and hold, or press twice/);
    await wait(SETTLED_MS);
    const press = () => doneKey(page).evaluate((button: HTMLElement) => button.click());
    await press();
    await wait(SEEN_MS);
    expect(await due(page)).toBe(FIRST);
    await press();
    await expect.poll(() => due(page)).toBe(SECOND);
  });
});

/** Takes `pointerType` from clicks, as Safari before 18.2 and Firefox before 129 do. */
function makeClicksOlder(): void {
  addEventListener(
    'click',
    (event) => Object.defineProperty(event, 'pointerType', { value: undefined }),
    { capture: true },
  );
}

describe('where a click does not say what made it', () => {
  const press = (page: Page) =>
    doneKey(page).evaluate((button) => {
      button.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true, detail: 1 }));
    });

  test('a screen reader ticks a step', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: makeClicksOlder });
    await toPlainStep(page);
    await press(page);
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('a screen reader ticks a critical step by pressing twice', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: makeClicksOlder });
    await toSteps(page);
    const wait = await standStill(page);
    await wait(SETTLED_MS);
    await press(page);
    await wait(SEEN_MS);
    expect(await due(page)).toBe(FIRST);
    await press(page);
    await expect.poll(() => due(page)).toBe(SECOND);
  });

  test('a mouse that presses too briefly or moves ticks nothing by its click', async ({ open }) => {
    const page = await open('phone', {
      at: EVENING,
      before: makeClicksOlder,
      context: { hasTouch: false },
    });
    const wait = await toPlainStep(page);
    for (const [ms, movedPx] of [
      [10, 0],
      [120, 20],
      [900, 0],
    ] as const) {
      const box = await doneKey(page).boundingBox();
      if (box === null) throw new Error('no key');
      const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await wait(ms);
      await page.mouse.move(x + movedPx, y);
      await page.mouse.up();
      await wait(SEEN_MS);
      expect(await due(page), `${ms} ms, ${movedPx} px`).toBe(PLAIN);
      await wait(2000);
    }
  });
});

/** Goes to the roll, the brakes just released by a touch, with the clock stopped. */
async function releaseBrakes(page: Page): Promise<Wait> {
  await toSteps(page);
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  await tickAll(page);
  const wait = await standStill(page);
  await key(page, 'Brakes released').waitFor();
  await wait(SETTLED_MS);
  await touch(page, key(page, 'Brakes released'), { wait });
  return wait;
}

test('what comes up under a finger is not pressed by the same tap, nor by one just after it', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  const wait = await releaseBrakes(page);
  // The ladder has come, and one of its keys is touched before anyone can have read it.
  await touch(page, key(page, 'Airborne'), { wait });
  await wait(2000);
  await expect.poll(() => key(page, 'Airborne').isVisible()).toBe(true);
  // Where "Stopping" was, "Back" comes up: the tap that opened the list must not close it.
  await touch(page, key(page, 'Stopping'), { wait });
  await wait(SEEN_MS);
  await expect.poll(() => page.getByText('Rejected take-off').isVisible()).toBe(true);
});

test('a second tap on Airborne opens none of the places that come up under it', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  const wait = await releaseBrakes(page);
  await wait(SETTLED_MS);
  await touch(page, key(page, 'Airborne'), { wait });
  const numbers = page.getByRole('navigation').getByRole('button', { name: 'Numbers' });
  await wait(SEEN_MS);
  await touch(page, numbers, { wait });
  expect(page.url()).toContain('#/steps');
  await wait(SETTLED_MS);
  await touch(page, numbers, { wait });
  await expect.poll(() => page.url()).toContain('#/numbers');
});

/** The screen goes dark and lights up again at once, as after a glance at the cockpit. */
async function glanceAway(page: Page): Promise<void> {
  await page.evaluate(() => {
    const turn = (state: DocumentVisibilityState) => {
      Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    };
    turn('hidden');
    turn('visible');
  });
}
