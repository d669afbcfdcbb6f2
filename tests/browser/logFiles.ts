/** Files of the log, saved and brought as a pilot does it. */

import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { onTestFinished } from 'vitest';
import { key } from './pilot';

/** The sheet that lies on top. */
export const dialog = (page: Page): Locator => page.getByRole('dialog').last();

/** Presses a key that saves a file, and gives its text. */
export async function saved(page: Page, name: string): Promise<{ name: string; text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), key(page, name).click()]);
  return {
    name: download.suggestedFilename(),
    text: await readFile(await download.path(), 'utf8'),
  };
}

/** Looks at a log from a file. */
export async function look(page: Page, text: string): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'lapstrip-log-'));
  // The app may still be reading it when what came is already announced.
  onTestFinished(() => rm(folder, { recursive: true }));
  await writeFile(join(folder, 'log.json'), text);
  await page.getByLabel('Bring a log from a file').setInputFiles(join(folder, 'log.json'));
  await dialog(page).getByText('What came').waitFor();
}
