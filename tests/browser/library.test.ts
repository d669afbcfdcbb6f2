/** The Library: versions of one document, comparing them, copying, deleting and taking that back. */

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { words as incoming } from '../../src/views/library/incomingWords.en';
import { words as library } from '../../src/views/library/words.en';
import { expect, test } from './harness';
import { beginSortie, closeSheet, EVENING, key, openLibrary, openSortie, read } from './pilot';

const HARROW = new URL('../../airfields-demo/fields/XHAR.json', import.meta.url);

/** Brings the demo's field with another name and a shorter run, and puts it in place of what is here. */
async function bring(page: Page, name: string, toraM: number, as: string): Promise<void> {
  const field = JSON.parse(await readFile(HARROW, 'utf8'));
  field.name = name;
  field.runways[0].ends[0].toraM = toraM;
  await page
    .getByRole('dialog')
    .locator('input[type=file]')
    .setInputFiles({
      name: 'xhar.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(field)),
    });
  await key(page, as).click();
  await page.getByText(incoming.wasPutOver(name)).waitFor();
  await closeSheet(page);
}

const row = (page: Page, name: string) =>
  page.getByRole('dialog').getByRole('button', { name: new RegExp(`^XHAR ${name}`) });

/** The names under which Sortie offers the field. */
async function offered(page: Page): Promise<string[]> {
  await openSortie(page);
  const fields = page.getByRole('dialog').getByRole('button', { name: /^XHAR/ });
  await fields.first().waitFor();
  const names = await Promise.all((await fields.all()).map(read));
  await closeSheet(page);
  return names;
}

test('a newer version takes the place of the older in every list; both are compared, deleted and brought back', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await openLibrary(page);
  await bring(page, 'Harrow, shorter', 1000, incoming.overDemo);
  await bring(page, 'Harrow, shorter still', 900, incoming.overMine);
  expect(await row(page, 'Harrow, shorter').count()).toBe(1);
  await row(page, 'Harrow, shorter still').click();
  await key(page, library.earlier(1)).click();
  await expect.poll(() => row(page, 'Harrow, shorter').count()).toBe(2);

  await key(page, library.doesTo.compare('XHAR')).first().click();
  const compared = page.getByRole('dialog', { name: /^Compare/ });
  await compared.getByText(/TORA/).waitFor();
  await expect.poll(() => read(compared)).toMatch(/TORA\): 1\s000 m → 900 m/);
  await closeSheet(page);
  await closeSheet(page);
  expect(await offered(page)).toEqual([expect.stringContaining('Harrow, shorter still')]);

  await openLibrary(page);
  await row(page, 'Harrow, shorter still').click();
  await key(page, library.doesTo.delete('XHAR')).click();
  await key(page, library.undo('XHAR')).waitFor();
  await expect.poll(() => row(page, 'Harrow, shorter').count()).toBe(0);
  // What was deleted stays deleted over a restart, and can still be brought back.
  await page.reload();
  await openLibrary(page);
  await page.getByText(library.deleted(1)).click();
  await key(page, library.undo('XHAR')).click();
  await row(page, 'Harrow, shorter still').waitFor();
  await closeSheet(page);
  expect(await offered(page)).toEqual([expect.stringContaining('Harrow, shorter still')]);
});

test('a copy gets a code of its own; one that is taken is refused', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await beginSortie(page);
  await openLibrary(page);
  await row(page, 'Harrow Sound').click();
  await key(page, library.doesTo.copy('XHAR')).click();
  const code = page.getByRole('textbox', { name: library.copyCode });
  await code.fill('XLIN');
  await key(page, library.copyIt).click();
  await page.getByText(library.codeTaken('XLIN')).waitFor();
  await code.fill('xham');
  await key(page, library.copyIt).click();
  await page.getByRole('dialog').getByRole('button', { name: /^XHAM/ }).waitFor();
});
