/** What a pilot does in Write, done the way a pilot does it. */

import type { Locator, Page } from 'playwright-core';
import { words as library } from '../../src/views/library/words.en';
import { flownToday, key, openLibrary, read } from './pilot';

/** The sheet in which a procedure is written. */
export const sheet = (page: Page): Locator => page.getByRole('dialog', { name: 'Write my own' });

/** In the Library: opens the procedure that is flown today. */
export async function writeToday(page: Page): Promise<void> {
  const row = await flownToday(page, library.procedures);
  await row.getByRole('button', { name: library.does.edit }).click();
}

/** Opens it from the Library. */
export async function openWriting(page: Page): Promise<void> {
  await openLibrary(page);
  await writeToday(page);
  await key(page, 'Undo').waitFor();
}

/** Opens a step by the beginning of its row. */
export const openStep = (page: Page, item: string): Promise<void> =>
  sheet(page)
    .getByRole('button', { name: new RegExp(`^${item}:`) })
    .first()
    .click();

/** The text inputs of the open step. */
export const responseEntry = (page: Page): Locator =>
  sheet(page).getByRole('textbox', { name: 'The state it must be in' });

/**
 * Scrolls everything back to the top: half under the keys that stay in sight, a target is small
 * only because of where it is scrolled.
 */
export const scrollBack = (page: Page): Promise<void> =>
  sheet(page).evaluate((dialog) => {
    for (const part of dialog.querySelectorAll('*')) part.scrollTop = 0;
  });

/** The rows of a part, each as read. */
export async function rowsIn(page: Page, part: string): Promise<string[]> {
  const section = sheet(page)
    .locator('section')
    .filter({ has: page.getByRole('heading', { name: new RegExp(`^${part}, \\d`) }) });
  const rows = await section.getByRole('listitem').all();
  return Promise.all(
    rows.map(async (row) => (await read(row.getByRole('button').last())).replace(/:.*$/s, '')),
  );
}

/** What is said at the top of the sheet. */
export const saidIn = (page: Page): Locator => sheet(page).getByRole('status');
