/**
 * The whole job without a pointer: every control is reachable, focus is visible, and dialogs return
 * it.
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { AIRCRAFT, doneKey, due, EVENING, key, read, SETTLED_MS, untilItGivesWay } from './pilot';

/** What has the focus, as it is read out. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const { activeElement } = document;
    const name = activeElement?.getAttribute('aria-label') ?? activeElement?.textContent ?? '';
    return name.replace(/\s+/g, ' ').trim();
  });

/** More stops than any screen has controls. */
const MOST_STOPS = 140;

/** Presses Tab until a control has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    if (name.test(await focused(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never came to ${name}`);
}

async function pressOn(page: Page, name: RegExp): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}

/** Whether the focused element looks different from the others. */
const focusIsSeen = (page: Page) =>
  page.evaluate(() => {
    const { activeElement } = document;
    if (activeElement === null || activeElement === document.body) return false;
    const { outlineStyle, outlineWidth } = getComputedStyle(activeElement);
    return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  });

/** Ticks the due step: a critical one is held. */
async function tickByKey(page: Page): Promise<void> {
  await tabTo(page, /^(Done|Said)( ?Press and hold)?$/);
  const critical = (await focused(page)).includes('Press and hold');
  await page.clock.runFor(SETTLED_MS);
  await untilItGivesWay(page, async () => {
    await page.keyboard.down('Enter');
    await page.clock.runFor(critical ? 750 : 50);
    await page.keyboard.up('Enter');
  });
}

/** From the caution to the first answer. */
async function toAnswer(page: Page): Promise<void> {
  await expect.poll(() => focused(page)).toBe('Understood');
  await page.keyboard.press('Enter');
  await pressOn(page, new RegExp(AIRCRAFT));
  await pressOn(page, /^XHAR/);
  await expect.poll(() => focused(page)).toBe('Wind or report');
  await page.keyboard.type('27012G20KT');
  await page.keyboard.press('Enter');
}

describe('on the keyboard alone', () => {
  test('a pilot comes from the caution to the roll', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toAnswer(page);
    await pressOn(page, /^Use 28/);
    await expect.poll(() => read(key(page, /^Runway/).first())).toContain('28');
    await pressOn(page, /^Steps$/);

    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    await tickByKey(page);
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await pressOn(page, /^Line-up, \d/);
    await expect.poll(() => page.getByRole('dialog').count()).toBe(1);
    await tabTo(page, /^Close$/);
    await page.getByRole('dialog').getByRole('button', { name: 'Go on from here' }).last().focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
    while (await doneKey(page).isVisible()) await tickByKey(page);
    await tabTo(page, /^Brakes released$/);
    await page.clock.runFor(SETTLED_MS);
    await page.keyboard.press('Enter');
    await expect.poll(() => key(page, 'Airborne').isVisible()).toBe(true);
    await tabTo(page, /^Airborne$/);
    await page.clock.runFor(SETTLED_MS);
    await page.keyboard.press('Enter');
    await expect.poll(() => due(page)).toBe('Gear up, three lights out');
  });

  test('focus stays on the key while step after step is ticked', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toAnswer(page);
    await pressOn(page, /^Steps$/);
    await tickByKey(page);
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    expect(await focused(page)).toMatch(/^Done/);
    await tickByKey(page);
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');
    expect(await focused(page)).toMatch(/^Done/);
  });

  test('focus is seen on every stop of every place, in every theme', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toAnswer(page);
    for (const theme of ['day', 'dusk', 'night']) {
      await page.evaluate((name) => {
        document.documentElement.dataset.theme = name;
      }, theme);
      for (const place of ['Wind', 'Steps', 'Numbers']) {
        await pressOn(page, new RegExp(`^${place}$`));
        const seen = new Set<string>();
        for (let stop = 0; stop < MOST_STOPS; stop += 1) {
          await page.keyboard.press('Tab');
          const name = await focused(page);
          // Round once: the browser's own controls, then the first again.
          if (seen.size > 8 && seen.has(name)) break;
          if (await page.evaluate(() => document.activeElement === document.body)) continue;
          seen.add(name);
          expect(await focusIsSeen(page), `${theme}, ${place}: ${name}`).toBe(true);
        }
        expect(seen.size).toBeGreaterThan(8);
      }
    }
  });

  test('a dialog keeps the focus and gives it back to what opened it', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toAnswer(page);
    await pressOn(page, /^Numbers$/);
    // Before today's numbers are worked out the book's stand there, and the same speed is another key.
    await page.getByRole('heading', { name: 'Take-off on 28' }).waitFor();
    for (const opener of [/^138 kt$/, /1850Z$/]) {
      await pressOn(page, opener);
      await expect.poll(() => page.getByRole('dialog').count()).toBe(1);
      for (let stop = 0; stop < MOST_STOPS; stop += 1) {
        await page.keyboard.press('Tab');
        const outside = await page.evaluate(() => {
          const { activeElement } = document;
          // The browser's own controls come between the last and the first.
          return activeElement !== document.body && !activeElement?.closest('dialog');
        });
        expect(outside).toBe(false);
      }
      await page.keyboard.press('Escape');
      await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
      await expect.poll(() => focused(page)).toMatch(opener);
    }
  });

  test('Escape leaves the entry as it was before it was typed in', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toAnswer(page);
    await pressOn(page, /^Wind, /);
    await expect.poll(() => focused(page)).toBe('Wind or report');
    await page.keyboard.type('010');
    await page.keyboard.press('Escape');
    const entry = page.getByRole('textbox', { name: 'Wind or report' });
    await expect.poll(() => entry.inputValue()).toBe('27012G20KT');
    await expect.poll(() => key(page, 'Use 28').first().isVisible()).toBe(true);
  });
});
