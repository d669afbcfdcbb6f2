/** What a pilot does again and again, done the way a pilot does it. */

import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { RoomName } from '../../src/board/places';
import { stepWords } from '../../src/parts/stepTextWords.en';
import { words as germanRooms } from '../../src/shell/roomWords.de';
import { words as rooms } from '../../src/shell/roomWords.en';
import { words as germanFrame } from '../../src/shell/words.de';
import { words as frame } from '../../src/shell/words.en';
import { words as germanLibrary } from '../../src/views/library/words.de';
import { words as library } from '../../src/views/library/words.en';
import { clockOf, comes, type Wait, whileStill } from './time';
import { touch } from './touch';

export { clockOf, comes, standStill, type Wait } from './time';

/** The default aircraft and field of the tests; both invented. */
export const AIRCRAFT = 'Ondrell Sleet 3';
export const FIELD = 'XHAR';

/** The evening in which the demo's isles live. At Harrow Sound the sun is still up. */
export const EVENING = new Date('1987-04-05T18:50:00Z');

/** A key or a place by its label, as seen and as read out. */
export const key = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

/** Goes from the first start to the wind entry. */
export async function beginSortie(page: Page, aircraft = AIRCRAFT): Promise<void> {
  await page.getByRole('button', { name: 'Understood' }).click();
  await page.getByRole('button', { name: aircraft }).click();
  await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
}

/** Types a wind at the keyboard, and waits for the key that takes the best end. */
export async function typeWind(page: Page, text: string): Promise<void> {
  await typeAnything(page, text);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .waitFor();
}

/** The wind entry. */
export const entry = (page: Page): Locator => page.getByRole('textbox', { name: 'Wind or report' });

/** Replaces what is in the entry, whatever comes of it. */
export async function typeAnything(page: Page, text: string): Promise<void> {
  await entry(page).click();
  await entry(page).press('ControlOrMeta+a');
  await page.keyboard.type(text);
}

/** Types a wind and sets it, which closes the keypad. */
export async function setWind(page: Page, text: string): Promise<void> {
  await typeAnything(page, text);
  await page.keyboard.press('Enter');
  await page.getByRole('navigation', { name: 'Places' }).waitFor();
}

/** Closes the sheet on top by the keyboard, and waits until it is gone. */
export async function closeSheet(page: Page): Promise<void> {
  const sheets = page.getByRole('dialog');
  await sheets.last().waitFor();
  const before = await sheets.count();
  await page.keyboard.press('Escape');
  await expect.poll(() => sheets.count()).toBeLessThan(before);
}

/** Opens one of the five places. */
export async function openPlace(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name }).click();
}

/** From the first start to the first step, with runway 28 in use in a wind that suits it. */
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

const stripKey = (page: Page, name: RegExp): Locator =>
  page.locator('header').first().getByRole('button', { name });

const either = (english: string, german: string) => new RegExp(`^(${english}|${german})`);

/** The field on the strip, which opens Sortie. */
export const sortieKey = (page: Page): Locator =>
  stripKey(page, either(frame.strip.field, germanFrame.strip.field));

/** The time on the strip, which opens the clock. */
export const clockKey = (page: Page): Locator => stripKey(page, /\d{4}Z$/);

/** Opens a room from wherever no other sheet is open. */
async function openRoom(page: Page, name: RoomName): Promise<void> {
  await sortieKey(page).click();
  const tab = page
    .getByRole('dialog')
    .getByRole('button', { name: either(`${rooms.tabs[name]}$`, `${germanRooms.tabs[name]}$`) });
  await tab.click();
  await expect.poll(() => tab.getAttribute('aria-current')).toBe('page');
}

/** Opens Sortie: what is flown today. */
export const openSortie = (page: Page): Promise<void> => openRoom(page, 'sortie');

/** Opens the Library: what there is to choose from, to edit and to share. */
export const openLibrary = (page: Page): Promise<void> => openRoom(page, 'library');

/**
 * Opens the row of what is flown today, by the heading it stands under in the Library, and returns
 * it.
 */
export async function flownToday(page: Page, heading: string): Promise<Locator> {
  const row = page
    .getByRole('dialog')
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: heading }) })
    .getByRole('listitem')
    .filter({ hasText: new RegExp(`${library.today}|${germanLibrary.today}`) });
  const head = row.getByRole('button').first();
  await head.waitFor();
  if ((await head.getAttribute('aria-expanded')) !== 'true') await head.click();
  return row;
}

/** Opens Device: theme, language, hand, voice, keys. */
export const openDevice = (page: Page): Promise<void> => openRoom(page, 'device');

/** Opens About. */
export const openAbout = (page: Page): Promise<void> => openRoom(page, 'about');

/**
 * Makes a step the due one, by the list of all steps of its phase; those before it are held back.
 */
export async function goOnFrom(page: Page, phase: string, item: string): Promise<void> {
  const place = page.locator('main').first();
  const before = await read(place);
  await page.getByRole('button', { name: new RegExp(`^${phase}, \\d`) }).click();
  await page
    .getByRole('dialog')
    .getByRole('listitem')
    .filter({ hasText: item })
    .getByRole('button', { name: 'Go on from here' })
    .click();
  // Until it is drawn, the place still stands as before: a tick would be taken for another.
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  await expect.poll(() => read(place)).not.toBe(before);
}

/** The key that ticks the due step; for a spoken step its label says so. */
export const doneKey = (page: Page): Locator =>
  page.getByRole('button', { name: /^(Done|Said)( Press and hold)?$/ });

/** An element's text, every space a plain one. */
export const read = async (target: Locator): Promise<string> =>
  plain((await target.textContent()) ?? '');

const plain = (text: string) => text.replace(/\s+/g, ' ');

/** The due step: its item and response, as read. */
export async function due(page: Page): Promise<string> {
  return read(page.locator('strong').locator('..'));
}

/** The durations of a deliberate tap and of a hold on a critical step, ms. */
const TAP_MS = 120;
const HELD_MS = 750;

/** After a step changes, taps don't count for half a second. */
export const SETTLED_MS = 600;

/**
 * Presses a key that ticks something, once it accepts taps, for as long as it asks in the words of
 * the page.
 */
export async function pressDeliberately(
  page: Page,
  target: Locator,
  wait: Wait,
  hold = 'Press and hold',
): Promise<void> {
  await comes(target, wait);
  await wait(SETTLED_MS);
  const ms = (words: string) => (plain(words).includes(hold) ? HELD_MS : TAP_MS);
  await touch(page, target, { ms, wait });
}

/** The due step's text, or nothing: read at once, whatever is drawn at that moment. */
const dueNow = (page: Page) =>
  page.evaluate(() => document.querySelector('strong')?.parentElement?.textContent ?? '');

/** Does what ticks the due step, waits until it gives way, and returns which it was. */
export async function untilItGivesWay(page: Page, ticking: () => Promise<void>): Promise<string> {
  const drawn = await dueNow(page);
  await ticking();
  await expect.poll(() => dueNow(page)).not.toBe(drawn);
  return plain(drawn);
}

/** Ticks the due step by touch, waits until it gives way, and returns which it was. */
export async function tick(page: Page, wait: Wait = clockOf(page)): Promise<string> {
  await comes(doneKey(page), wait);
  return untilItGivesWay(page, () => pressDeliberately(page, doneKey(page), wait));
}

/** Takes the best runway where the due step asks for one, and comes back to it. */
export async function chooseRunway(page: Page, wait: Wait = clockOf(page)): Promise<void> {
  await openPlace(page, 'Wind');
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await openPlace(page, 'Steps');
  await comes(doneKey(page), wait);
}

/**
 * Ticks step after step, at least one, until something other than a step is due, and returns them.
 */
export async function tickAll(page: Page, wait: Wait = clockOf(page)): Promise<string[]> {
  const ticked: string[] = [];
  await comes(doneKey(page).or(key(page, stepWords.supply.wind)), wait);
  const isStep = async () => {
    if (await doneKey(page).isVisible()) return true;
    // What is drawn may load its key in the next frame.
    await wait(100);
    if (await doneKey(page).isVisible()) return true;
    if (!(await key(page, stepWords.supply.wind).isVisible())) return false;
    // Outside limits Wind is offered too, and the pilot decides.
    if (await key(page, /^Continue outside limits/).isVisible()) return false;
    await chooseRunway(page, wait);
    return true;
  };
  await whileStill(page, wait, async () => {
    while (await isStep()) ticked.push(await tick(page, wait));
  });
  return ticked;
}

/**
 * Waits until the app is stored and its worker controls the page, which starts after the first
 * answer.
 */
export async function waitUntilStored(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}

/** The screen is dark for a while, like that of a device laid aside. */
export async function darken(page: Page, ms: number): Promise<void> {
  const turn = (state: DocumentVisibilityState) =>
    page.evaluate((shown) => {
      Object.defineProperty(document, 'visibilityState', { value: shown, configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    }, state);
  await turn('hidden');
  await page.clock.runFor(ms);
  await turn('visible');
}
