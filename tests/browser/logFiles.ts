/** Log files, saved and imported as a pilot would. */

import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Download, Locator, Page } from 'playwright-core';
import { expect, onTestFinished } from 'vitest';
import { key } from './pilot';

/** The top sheet. */
export const dialog = (page: Page): Locator => page.getByRole('dialog').last();

/** A file that was saved. */
interface Saved {
  readonly name: string;
  readonly text: string;
}

const opened = async (download: Download): Promise<Saved> => ({
  name: download.suggestedFilename(),
  text: await readFile(await download.path(), 'utf8'),
});

/** Presses a key that saves a file, and returns its text. */
export async function saved(page: Page, name: string): Promise<Saved> {
  const [download] = await Promise.all([page.waitForEvent('download'), key(page, name).click()]);
  return opened(download);
}

/** Presses a key that saves several files, and returns them in order of arrival. */
export async function allSaved(page: Page, name: string, count: number): Promise<Saved[]> {
  const downloads: Download[] = [];
  page.on('download', (download) => downloads.push(download));
  await key(page, name).click();
  await expect.poll(() => downloads.length).toBe(count);
  return Promise.all(downloads.map(opened));
}

/** Opens a log from a file to look at it. */
export async function look(page: Page, text: string): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'lapstrip-log-'));
  // The app may still be reading it when the result is announced.
  onTestFinished(() => rm(folder, { recursive: true }));
  await writeFile(join(folder, 'log.json'), text);
  await page.getByLabel('Bring a log from a file').setInputFiles(join(folder, 'log.json'));
  await dialog(page).getByText('What came').waitFor();
}
