/**
 * A false tick is the worst failure: what a hand does by accident ticks nothing.
 *
 * The rule: a tap that ticks is one pointer, 80 to 800 ms, moving less than 12 px; it is ignored for
 * half a second after the step changed and on the first touch after waking; a critical step wants
 * the key held. Common practice, no published source.
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { doneKey, due, EVENING, goOnFrom, key, SETTLED_MS, tickAll, toSteps } from './pilot';
import { hold, middleOf, touch, touchAt, touchWithPalm } from './touch';

const FIRST = 'Seat pins three out, in the rack';
const SECOND = 'Brake lever parked, needle white';
/** The first step that is not critical. */
const PLAIN = 'Gear lever down, three green';
const AFTER_PLAIN = 'Oxygen flowing, hose clipped';

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** Comes to the first step that a tap ticks: those before it are critical, and are held back. */
async function toPlainStep(page: Page): Promise<void> {
  await toSteps(page);
  await goOnFrom(page, 'Ramp', 'Gear lever');
  await expect.poll(() => due(page)).toBe(PLAIN);
  await sleep(SETTLED_MS);
}

/** What the app does with a touch it does at once: the step would have changed by then. */
const SEEN_MS = 150;

describe('a step that a tap ticks', () => {
  test('is not ticked by a tap that moves, lasts too long or is too short', async ({ open }) => {
    const page = await open('phone');
    await toPlainStep(page);
    await touch(page, doneKey(page), { slidePx: 14 });
    await touch(page, doneKey(page), { ms: 900 });
    await touch(page, doneKey(page), { ms: 30 });
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(PLAIN);
    await touch(page, doneKey(page));
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is not ticked by two fingers, nor while a palm rests elsewhere', async ({ open }) => {
    const page = await open('phone');
    await toPlainStep(page);
    await touch(page, doneKey(page), { fingers: 2 });
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(PLAIN);
    await touchWithPalm(page, doneKey(page), page.locator('strong'));
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(PLAIN);
    await touch(page, doneKey(page));
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is ticked once by two taps in quick succession', async ({ open }) => {
    const page = await open('phone');
    await toPlainStep(page);
    await touch(page, doneKey(page), { ms: 85 });
    await touch(page, doneKey(page), { ms: 85 });
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(AFTER_PLAIN);
  });

  test('is not held back by a brush over that key either', async ({ open }) => {
    const page = await open('phone');
    await toPlainStep(page);
    await touch(page, key(page, 'Hold back'), { slidePx: 14 });
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(PLAIN);
  });

  test('is not ticked by the touch that finds the screen just woken', async ({ open }) => {
    const page = await open('phone');
    await toPlainStep(page);
    await glanceAway(page);
    await touch(page, doneKey(page));
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(PLAIN);
    await touch(page, doneKey(page));
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('is ticked once by a key that is held down until it repeats', async ({ open }) => {
    const page = await open('phone');
    await toPlainStep(page);
    await doneKey(page).focus();
    // Pressed again without having been let go is how a browser sees a key repeat.
    for (let i = 0; i < 30; i++) {
      await page.keyboard.down('Enter');
      await sleep(33);
    }
    await page.keyboard.up('Enter');
    expect(await due(page)).toBe(AFTER_PLAIN);
  });
});

describe('a critical step', () => {
  test('wants the key held, by touch and on the keyboard', async ({ open }) => {
    const page = await open('phone');
    await toSteps(page);
    await touch(page, doneKey(page));
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(FIRST);
    await doneKey(page).focus();
    await page.keyboard.press('Enter');
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(FIRST);
    await hold(page, doneKey(page));
    await expect.poll(() => due(page)).toBe(SECOND);
    await sleep(SETTLED_MS);
    await page.keyboard.press('Enter', { delay: 800 });
    await expect.poll(() => due(page)).not.toBe(SECOND);
  });

  test('asks a screen reader, which cannot hold a key, twice', async ({ open }) => {
    const page = await open('phone');
    await toSteps(page);
    await expect
      .poll(() => doneKey(page).getAttribute('aria-description'))
      .toMatch(/hold the key down, or press it twice/);
    await sleep(SETTLED_MS);
    const press = () => doneKey(page).evaluate((button: HTMLElement) => button.click());
    await press();
    await sleep(SEEN_MS);
    expect(await due(page)).toBe(FIRST);
    await press();
    await expect.poll(() => due(page)).toBe(SECOND);
  });
});

/** The screen goes dark and lights up again at once, as under a glance at the cockpit. */
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

test('what comes up under a finger is not pressed by the same tap, nor by one just after it', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await goOnFrom(page, 'Line-up', 'Nozzle lamp');
  await tickAll(page);
  const released = key(page, 'Brakes released');
  await released.waitFor();
  await sleep(SETTLED_MS);
  const place = await middleOf(released);
  await touchAt(page, place);
  await touchAt(page, place);
  await sleep(SEEN_MS);
  // The ladder has come, and its key is where the other was; "Back" is near it.
  expect(await key(page, 'Airborne').isVisible()).toBe(true);
  expect(await page.getByText('Stopped on the runway').count()).toBe(0);
  await sleep(SETTLED_MS);
  await touch(page, key(page, 'Stopping'));
  await sleep(SEEN_MS);
  expect(await page.getByText('Stopped on the runway').isVisible()).toBe(true);
});
