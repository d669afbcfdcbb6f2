/** What the report tests do again and again: pasting, and reading what stands under the answer. */

import type { Locator, Page } from 'playwright-core';
import type { Opened } from './harness';
import { AIRCRAFT, clockKey, entry, key, read, sortieKey } from './pilot';

/** A window whose clipboard the app may read. */
export const WITH_CLIPBOARD: Opened = {
  context: { permissions: ['clipboard-read', 'clipboard-write'] },
};

/** Goes from the first start to the entry, at any field, and closes the keypad. */
export async function beginAt(page: Page, field: string): Promise<void> {
  await key(page, 'Understood').click();
  await page.getByRole('button', { name: AIRCRAFT }).click();
  await page.getByRole('button', { name: new RegExp(`^${field}`) }).click();
  await entry(page).press('Enter');
}

/** Pastes with the key for it. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await key(page, 'Paste').click();
}

/** The weather card. */
export const card = (page: Page): Locator => page.getByRole('region', { name: 'Weather' });

/** A row of the card by its name, as read. */
export const cardRow = (page: Page, name: string): Promise<string> =>
  read(card(page).locator('dl > div', { has: page.getByText(name, { exact: true }) }));

/** What is said about the text in the entry. */
export const said = (page: Page): Promise<string> => read(page.locator('main [aria-live]').first());

/**
 * What stands above the answer, from the entry on: what was understood, and what to know about a
 * report.
 */
export const aboveAnswer = (page: Page): Promise<string> =>
  read(answer(page).locator('xpath=preceding-sibling::*[1]'));

/** The answer, as a screen reader hears it. */
export const answer = (page: Page): Locator => page.locator('main section[aria-live="polite"]');

/** The row of an end in the list of all. */
export const endRow = (page: Page, end: string): Locator =>
  page
    .getByRole('list', { name: 'Every runway, best first' })
    .getByRole('listitem')
    .filter({ has: page.getByRole('button', { name: `Use ${end}`, exact: true }) });

/** Opens Sortie, does something there and closes it. */
export async function inSortie(page: Page, work: (sheet: Locator) => Promise<unknown>) {
  await inSheet(page, sortieKey(page), work);
}

/** Opens the clock, does something there and closes it. */
export async function inClock(page: Page, work: (sheet: Locator) => Promise<unknown>) {
  await inSheet(page, clockKey(page), work);
}

async function inSheet(page: Page, opens: Locator, work: (sheet: Locator) => Promise<unknown>) {
  await opens.click();
  const sheet = page.getByRole('dialog');
  await sheet.waitFor();
  await work(sheet);
  await sheet.getByRole('button', { name: 'Close' }).click();
}
