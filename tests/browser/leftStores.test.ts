/** What the first release left on a device, in a real browser: nothing of it is lost, and all of it goes on. */

import type { Page } from 'playwright-core';
import { LEFT_STORES, type LeftStore } from '../core/record/stores';
import { describe, expect, test } from './harness';
import { due, entry, key, openPlace, read } from './pilot';
import { openStep, responseEntry } from './writing';

const [first] = LEFT_STORES;

/** Puts a store onto the device, before the app is opened again. */
async function leave(page: Page, left: LeftStore): Promise<void> {
  await page.evaluate(async ({ databases, local }) => {
    const done = (request: IDBRequest) =>
      new Promise<void>((resolve, reject) => {
        request.onsuccess = () => resolve();
        request.onerror = () => reject(request.error);
      });
    for (const { name, version, parts } of databases) {
      await done(indexedDB.deleteDatabase(name));
      const opening = indexedDB.open(name, version);
      opening.onupgradeneeded = () => {
        for (const { name: part, keyPath, indexes, values } of parts) {
          const store = opening.result.createObjectStore(part, { keyPath });
          for (const [index, by] of indexes) store.createIndex(index, by);
          for (const value of values) store.put(value);
        }
      };
      await done(opening);
      opening.result.close();
    }
    for (const [name, value] of Object.entries(local)) localStorage.setItem(name, value);
  }, left);
}

/** Half an hour after the store was left. */
const LATER = new Date('1987-04-05T19:30:00Z');

describe('a device that the first release was used on', () => {
  test('goes on where it was left: the step, the wind half typed, the own field and procedure', async ({
    open,
    problems,
  }) => {
    if (first === undefined) throw new Error('there is no store of the first release');
    // A page that holds no database open, on the same origin.
    const page = await open('tablet', { at: LATER, path: 'schemas/field.schema.json' });
    await leave(page, first);
    // A page without a head asks for an icon that no host of ours has.
    const asked = problems.findIndex((problem) => problem.includes('favicon.ico'));
    if (asked >= 0) problems.splice(asked, 1);
    await page.goto(page.url().replace('schemas/field.schema.json', '#/wind'));
    await expect.poll(() => entry(page).inputValue()).toBe('0101');
    await expect.poll(() => read(page.locator('header').first())).toContain('XHAS');
    await expect.poll(() => read(page.locator('header').first())).toContain('Harrow Sound, mended');

    await openPlace(page, 'Steps');
    await expect.poll(() => read(page.getByRole('alert'))).toContain('You left');
    await key(page, 'Go on').click();
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');

    await page.locator('header').first().getByRole('button', { name: /XHAS/ }).first().click();
    await key(page, 'Write my own').click();
    await key(page, 'Undo').waitFor();
    await openStep(page, 'Trim');
    expect(await responseEntry(page).inputValue()).toBe('four units');
    await page.keyboard.press('Escape');
    await key(page, 'Draw a field').click();
    const drawing = page.getByRole('dialog', { name: 'Draw a field' });
    await expect.poll(() => drawing.getByLabel('Code').inputValue()).toBe('XTSL');
  });
});
