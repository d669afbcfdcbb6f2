/** An aircraft of one's own that has no procedure: one is written, one copied, or none flown. */

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { linksTo } from '../../src/exchange/link';
import { starter } from '../../src/parts/starter/words.en';
import { words } from '../../src/views/procedure/words.en';
import { words as stepsWords } from '../../src/views/steps/words.en';
import { describe, expect, test } from './harness';
import { beginSortie, closeSheet, due, EVENING, key, openPlace, read, setWind } from './pilot';

const TURNSTONE = new URL('../../airfields-demo/aircraft/turnstone.json', import.meta.url);
const NAME = 'Own Wing 1';

/** With an aircraft from elsewhere, which brought no procedure, at the steps. */
async function toStepsWithOwn(page: Page): Promise<void> {
  const {
    translations: _,
    $schema: __,
    ...aircraft
  } = JSON.parse(await readFile(TURNSTONE, 'utf8'));
  const own = { ...aircraft, code: 'own-wing', name: NAME };
  const { link } = await linksTo(new URL('.', page.url()).href, own, '0123456789abcdef');
  await page.goto('about:blank');
  await page.goto(link);
  await key(page, 'Add it').click();
  await page.getByText('was added.').waitFor();
  await closeSheet(page);
  await beginSortie(page, NAME);
  await setWind(page, '27012G20KT');
  await key(page, /^Use \d\d/)
    .first()
    .click();
  await openPlace(page, 'Steps');
  await page.getByText(stepsWords.noProcedure(NAME)).waitFor();
}

/** The sheet with the three ways. */
async function ask(page: Page): Promise<void> {
  await key(page, stepsWords.writeCopyOrWithout).click();
  await page.getByRole('dialog', { name: words.title(NAME) }).waitFor();
}

describe('an aircraft without a procedure', () => {
  test('gets a short one, which is open to be changed, and flown at once', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toStepsWithOwn(page);
    await ask(page);
    await key(page, words.write).click();
    const editor = page.getByRole('dialog').last();
    await expect
      .poll(() => editor.getByRole('combobox', { name: 'Aircraft it is for' }).inputValue())
      .toBe('own-wing');
    await closeSheet(page);
    await expect.poll(() => due(page)).toBe(starter.steps['brakes-parked'].join(' '));
    // It is there after a reload.
    await page.reload();
    await openPlace(page, 'Steps');
    await expect.poll(() => due(page)).toBe(starter.steps['brakes-parked'].join(' '));
  });

  test('gets another one’s, without what it lacks', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toStepsWithOwn(page);
    await ask(page);
    await key(page, words.copyOf('Sleet, usual sortie')).click();
    const name = page.getByRole('dialog').last().getByRole('textbox', { name: 'Name' });
    await expect.poll(() => name.inputValue()).toContain(NAME);
    expect(await read(page.getByRole('dialog').last())).not.toContain('Chute');
    await closeSheet(page);
    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
  });

  test('is flown without one, and Steps says so and works on', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toStepsWithOwn(page);
    await ask(page);
    await key(page, words.without).click();
    const said = page.getByText(stepsWords.flownWithout(NAME));
    await said.waitFor();
    await openPlace(page, 'Numbers');
    await page.getByText('Rotate').first().waitFor();
    await page.reload();
    await openPlace(page, 'Steps');
    await said.waitFor();
    await key(page, stepsWords.writeOrCopy).waitFor();
  });
});
