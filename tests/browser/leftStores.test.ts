/**
 * What the first release left on a device, in a real browser: none of it is lost, and all of it can
 * be continued.
 */

import type { Page } from 'playwright-core';
import { words as library } from '../../src/views/library/words.en';
import { LATER, LEFT_STORES, type LeftStore, laterThan, newestStore } from '../core/record/stores';
import { describe, expect, test } from './harness';
import { closeSheet, due, entry, key, openPlace, read, tick } from './pilot';
import { openStep, openWriting, responseEntry } from './writing';

const [first] = LEFT_STORES;

/** Puts a store on the device, before the app is opened again. */
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
const LATER_ON = new Date('1987-04-05T19:30:00Z');

type Open = (screen: 'tablet', opened: { at: Date; path: string }) => Promise<Page>;

/** Opens the app on a device that a release was used on. */
async function openOn(left: LeftStore, open: Open, problems: string[]): Promise<Page> {
  // A page that holds no database open, on the same origin.
  const page = await open('tablet', { at: LATER_ON, path: 'schemas/field.schema.json' });
  await leave(page, left);
  // Headless pages ask for an icon that no host of ours has.
  const asked = problems.findIndex((problem) => problem.includes('favicon.ico'));
  if (asked >= 0) problems.splice(asked, 1);
  await page.goto(page.url().replace('schemas/field.schema.json', '#/wind'));
  return page;
}

const header = (page: Page) => read(page.locator('header').first());

describe('a device that the first release was used on', () => {
  test('goes on where it was left: the step, the wind half typed, the own field and procedure', async ({
    open,
    problems,
  }) => {
    if (first === undefined) throw new Error('there is no store of the first release');
    const page = await openOn(first, open, problems);
    // Steps are under way, so that the app opens there; the wind waits on Wind.
    await openPlace(page, 'Wind');
    await expect.poll(() => entry(page).inputValue()).toBe('0101');
    await expect.poll(() => header(page)).toContain('XHAS');
    await expect.poll(() => header(page)).toContain('Harrow Sound, mended');

    await openPlace(page, 'Steps');
    await expect.poll(() => read(page.getByRole('alert'))).toContain('Interrupted');
    await key(page, 'Go on').click();
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');

    await openWriting(page);
    await openStep(page, 'Trim');
    expect(await responseEntry(page).inputValue()).toBe('four units');
    await closeSheet(page);
    await key(page, library.drawField).click();
    const drawing = page.getByRole('dialog', { name: 'Draw a field' });
    await expect.poll(() => drawing.getByLabel('Code').inputValue()).toBe('XTSL');
  });
});

describe('a device that a later release was used on', () => {
  test('starts, goes on with what is known here, says what is not, and keeps it', async ({
    open,
    problems,
  }) => {
    const page = await openOn(laterThan(newestStore()), open, problems);
    await expect.poll(() => header(page)).toContain('XHAS');
    await expect.poll(() => header(page)).toContain('280° 14');
    await page.getByText('are of a newer version of Lapstrip: kept, and not used here.').waitFor();
    await openPlace(page, 'Steps');
    await key(page, 'Go on').click();
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');
    await tick(page);
    await expect.poll(() => due(page)).not.toBe('Stick and pedals full travel, free');
    await page.reload();
    await openPlace(page, 'Log');
    await expect.poll(() => page.getByRole('main').getByText('XHAR').count()).toBeGreaterThan(0);
    const stands = await page.evaluate(async () => {
      const answer = <T>(request: IDBRequest<T>) =>
        new Promise<T>((done) => {
          request.onsuccess = () => done(request.result);
        });
      const db = await answer(indexedDB.open('lapstrip'));
      const keysIn = (part: string) =>
        answer(db.transaction(part).objectStore(part).getAllKeys()).then((keys) =>
          keys.map(String),
        );
      const keys = await Promise.all(['entries', 'documents', 'attachments'].map(keysIn));
      db.close();
      return keys.flat();
    });
    expect(stands).toEqual(expect.arrayContaining([...LATER.entries, LATER.document, 'ink-1']));
  });
});
