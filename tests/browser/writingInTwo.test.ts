/** One's own version written in two windows at once: the second to save it hears of the first. */

import type { Page } from 'playwright-core';
import { objections } from './accessible';
import { misfits, resize, SIZES } from './fitting';
import { type Device, describe, expect, test } from './harness';
import {
  beginSortie,
  closeSheet,
  EVENING,
  key,
  openPlace,
  openSortie,
  read,
  setWind,
} from './pilot';
import { THEMES, wear } from './themes';
import { openStep, openWriting, responseEntry, saidIn, scrollBack, sheet } from './writing';

const said = (page: Page) => expect.poll(() => read(saidIn(page)));

async function writeTrim(page: Page, response: string): Promise<void> {
  await openStep(page, 'Trim');
  await responseEntry(page).fill(response);
}

const trim = (page: Page) => responseEntry(page).inputValue();

async function twoWindows(device: Device, before?: () => void): Promise<readonly [Page, Page]> {
  const opened = { at: EVENING, ...(before === undefined ? {} : { before }) };
  const one = await device.start('tablet', opened);
  await beginSortie(one);
  await setWind(one, '27012G20KT');
  const two = await device.another(opened);
  for (const page of [one, two]) {
    await openWriting(page);
    await openStep(page, 'Trim');
  }
  return [one, two];
}

describe('two windows that write the same procedure', () => {
  test('the second is told of the version the first kept, and goes on from it; undo brings its own back', async ({
    device,
  }) => {
    const [one, two] = await twoWindows(device);
    await writeTrim(two, 'four units');
    await writeTrim(one, 'three units');
    await key(one, 'Save').click();
    await said(one).toContain('Saved as version 1.');
    await said(two).toBe('Meanwhile version 1 was saved elsewhere, without what is written here.');
    expect(await trim(two)).toBe('four units');
    expect(await key(two, 'Save').isEnabled()).toBe(false);

    await key(two, 'Go on from version 1').click();
    await said(two).toBe('Version 1 stands here now. Undo brings back what was here.');
    expect(await trim(two)).toBe('three units');
    expect(await key(two, 'Save').isEnabled()).toBe(false);
    await key(two, 'Undo').click();
    expect(await trim(two)).toBe('four units');
    await key(two, 'Save').click();
    await said(two).toContain('Saved as version 2.');
  });

  test('the second keeps its own as the newer; the first hears of it, and both are there', async ({
    device,
  }) => {
    const [one, two] = await twoWindows(device);
    await writeTrim(two, 'four units');
    await writeTrim(one, 'three units');
    await key(one, 'Save').click();
    await key(two, 'Save mine as version 2').click();
    await said(two).toContain('Saved as version 2.');
    await said(one).toContain('Meanwhile version 2 was saved elsewhere');
    await key(two, 'Versions').click();
    for (const number of [1, 2]) {
      await sheet(two)
        .getByRole('listitem')
        .filter({ hasText: `Version ${number},` })
        .waitFor();
    }
    await key(two, 'Restore: Version 1').click();
    await key(two, 'Steps').last().click();
    expect(await trim(two)).toBe('three units');
    // Nothing is written in the first that could be kept as the newer one.
    expect(await key(one, 'Save mine as version 3').isEnabled()).toBe(false);
    await key(one, 'Go on from version 2').click();
    expect(await trim(one)).toBe('four units');
  });

  test('one in which nothing is written shows at once what the other kept, and flies it', async ({
    device,
  }) => {
    const [one, two] = await twoWindows(device);
    await writeTrim(one, 'three units');
    await key(one, 'Save').click();
    await said(two).toBe('Version 1 was saved elsewhere, and stands here now.');
    expect(await trim(two)).toBe('three units');
    // The editor, and the Library beneath it.
    await closeSheet(two);
    await closeSheet(two);
    await openSortie(two);
    const chosen = two.getByRole('group', { name: 'Procedure' }).getByRole('button');
    await expect.poll(() => chosen.last().textContent()).toBe('Sleet, usual sortie, mine');
    await expect.poll(() => chosen.last().getAttribute('aria-pressed')).toBe('true');
    await closeSheet(two);
    await openPlace(two, 'Steps');
    await two.getByRole('button', { name: /^Taxi, \d/ }).click();
    await expect.poll(() => read(two.getByRole('dialog'))).toContain('three units');
  });

  test('what was not kept outlives its window, is told of the other version again, and fits on every screen', {
    timeout: 240_000,
  }, async ({ device }) => {
    const [one, two] = await twoWindows(device);
    await writeTrim(two, 'four units');
    await writeTrim(one, 'three units');
    await key(one, 'Save').click();
    await said(two).toContain('Meanwhile version 1');
    await two.waitForTimeout(300);
    await two.reload();
    await openWriting(two);
    await openStep(two, 'Trim');
    expect(await trim(two)).toBe('four units');
    await said(two).toContain('Meanwhile version 1 was saved elsewhere');

    const found: string[] = [];
    for (const [width, height] of SIZES) {
      await resize(two, { width, height });
      for (const theme of THEMES) {
        await wear(two, theme);
        const where = `at ${width} x ${height} by ${theme}`;
        found.push(...(await misfits(two)).map((misfit) => `${where}: ${misfit}`));
      }
    }
    await scrollBack(two);
    found.push(...(await objections(two)));
    expect(found).toEqual([]);
  });

  test('without a word between them the second is told when it keeps', async ({ device }) => {
    const [one, two] = await twoWindows(device, () => {
      Reflect.deleteProperty(globalThis, 'BroadcastChannel');
    });
    await writeTrim(two, 'four units');
    await writeTrim(one, 'three units');
    await key(one, 'Save').click();
    await said(one).toContain('Saved as version 1.');
    await key(two, 'Save').click();
    await said(two).toBe('Meanwhile version 1 was saved elsewhere, without what is written here.');
    await key(two, 'Save mine as version 2').click();
    await said(two).toContain('Saved as version 2.');
  });
});
