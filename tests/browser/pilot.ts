/** What a pilot does again and again, done as a pilot does it. */

import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { clockOf, type Wait } from './time';
import { touch } from './touch';

export { clockOf, standStill, type Wait } from './time';

/** The aircraft and the field that tests fly with unless they say otherwise; both invented. */
export const AIRCRAFT = 'Ondrell Sleet 3';
export const FIELD = 'XHAR';

/** The evening that the demo's isles live in. Its sun stands above the horizon at Harrow Sound. */
export const EVENING = new Date('1987-04-05T18:50:00Z');

/** A key or a place by what stands on it, as it is seen and as it is read out. */
export const key = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

/** Goes from the first start to the entry where winds are typed. */
export async function beginSortie(page: Page, aircraft = AIRCRAFT): Promise<void> {
  await page.getByRole('button', { name: 'Understood' }).click();
  await page.getByRole('button', { name: aircraft }).click();
  await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
}

/** Types a wind into the entry at the keyboard, and waits for the key that takes the best end. */
export async function typeWind(page: Page, text: string): Promise<void> {
  await typeAnything(page, text);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .waitFor();
}

/** The entry where winds are typed. */
export const entry = (page: Page): Locator => page.getByRole('textbox', { name: 'Wind or report' });

/** Types into the entry in place of what stands there, whatever comes of it. */
export async function typeAnything(page: Page, text: string): Promise<void> {
  await entry(page).click();
  await entry(page).press('ControlOrMeta+a');
  await page.keyboard.type(text);
}

/** Types a wind and sets it. The keypad is closed then. */
export async function setWind(page: Page, text: string): Promise<void> {
  await typeAnything(page, text);
  await page.keyboard.press('Enter');
  await page.getByRole('navigation', { name: 'Places' }).waitFor();
}

/** Opens one of the five places. */
export async function openPlace(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name }).click();
}

/** From the first start to the first step, with runway 28 in use in a wind that is good for it. */
export async function toSteps(page: Page, wind = '27012G20KT', aircraft = AIRCRAFT): Promise<void> {
  await beginSortie(page, aircraft);
  await setWind(page, wind);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await openPlace(page, 'Steps');
  await doneKey(page).waitFor();
}

/** The time on the strip, which opens Sortie. */
export const sortieKey = (page: Page): Locator =>
  page
    .locator('header')
    .first()
    .getByRole('button', { name: /\d{4}Z$/ });

/** Makes a step the one that is due, by the list of all steps of its phase; those before it are held back. */
export async function goOnFrom(page: Page, phase: string, item: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${phase}, \\d`) }).click();
  await page
    .getByRole('dialog')
    .getByRole('listitem')
    .filter({ hasText: item })
    .getByRole('button', { name: 'Go on from here' })
    .click();
}

/** The key that ticks the due step; on a step that is spoken it says so. */
export const doneKey = (page: Page): Locator =>
  page.getByRole('button', { name: /^(Done|Said)( Hold the key)?$/ });

/** What stands there, as text, every space a plain one. */
export const read = async (target: Locator): Promise<string> =>
  plain((await target.textContent()) ?? '');

const plain = (text: string) => text.replace(/\s+/g, ' ');

/** The step that is due: its item and its response, as they are read. */
export async function due(page: Page): Promise<string> {
  return read(page.locator('strong').locator('..'));
}

/** How long a deliberate tap lasts, and how long a critical step is held, ms. */
const TAP_MS = 120;
const HELD_MS = 750;

/** After a step has changed it takes no tap for half a second. */
export const SETTLED_MS = 600;

/** Presses a key that ticks something, once it takes taps, as long as it asks for in the words of the page. */
export async function pressDeliberately(
  page: Page,
  target: Locator,
  wait: Wait,
  hold = 'Hold the key',
): Promise<void> {
  await target.waitFor();
  await wait(SETTLED_MS);
  const ms = (words: string) => (plain(words).includes(hold) ? HELD_MS : TAP_MS);
  await touch(page, target, { ms, wait });
}

/** What stands where the due step is, or nothing: asked at once, whatever is drawn just then. */
const dueNow = (page: Page) =>
  page.evaluate(() => document.querySelector('strong')?.parentElement?.textContent ?? '');

/** Ticks the due step by touch, waits until it has given way, and says which it was. */
export async function tick(page: Page, wait: Wait = clockOf(page)): Promise<string> {
  const ticked = await due(page);
  const drawn = await dueNow(page);
  await pressDeliberately(page, doneKey(page), wait);
  await expect.poll(() => dueNow(page)).not.toBe(drawn);
  return ticked;
}

/** Ticks step after step, one at least, until something else than a step is due, and says which were ticked. */
export async function tickAll(page: Page, wait: Wait = clockOf(page)): Promise<string[]> {
  const ticked: string[] = [];
  await doneKey(page).waitFor();
  while (await doneKey(page).isVisible()) ticked.push(await tick(page, wait));
  return ticked;
}

/** Waits until the app is stored and its worker answers for the page, which begins after the first answer. */
export async function waitUntilStored(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}
