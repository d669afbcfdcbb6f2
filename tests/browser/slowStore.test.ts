/**
 * A device whose storage is slow, damaged, or of a newer version: the sortie in progress stays the
 * same.
 */

import type { Page } from 'playwright-core';
import { words } from '../../src/shell/noticeWords.en';
import { words as library } from '../../src/views/library/words.en';
import { type Device, describe, expect, test } from './harness';
import {
  doneKey,
  due,
  EVENING,
  entry,
  flownToday,
  key,
  openLibrary,
  openPlace,
  read,
  setWind,
  sortieKey,
  tick,
  toSteps,
  typeAnything,
} from './pilot';

const SECOND = 'Brake lever parked, needle white';

/** The page's storage doesn't answer until told to. */
function answerWhenTold(): void {
  const told = new Promise<void>((resolve) => addEventListener('answer', () => resolve()));
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function slow(this: IDBFactory, name, version) {
    const request = open.call(this, name, version);
    const listen = request.addEventListener.bind(request);
    request.addEventListener = (type: string, heard: EventListenerOrEventListenerObject) =>
      listen(type, async (event) => {
        if (type === 'success') await told;
        if (typeof heard === 'function') heard.call(request, event);
      });
    return request;
  };
}

const header = (page: Page) => read(page.locator('header').first());

async function flownBefore(device: Device): Promise<Page> {
  const page = await device.start('tablet', { context: { serviceWorkers: 'block' } });
  await toSteps(page);
  await tick(page, (ms) => page.waitForTimeout(ms));
  await expect.poll(() => due(page)).toBe(SECOND);
  return page;
}

describe('storage that answers after the pilot has begun to work', () => {
  test('gets what was done meanwhile into the sortie that was flown, and no newer one', async ({
    device,
  }) => {
    const page = await flownBefore(device);
    await page.addInitScript(answerWhenTold);
    await page.goto(page.url().replace(/#.*/, '#/wind'));
    await page.reload();
    await page.getByText(words.late).waitFor();
    await page.getByRole('button', { name: 'Ondrell Sleet 3' }).click();
    await page.getByRole('button', { name: /^XHAR/ }).click();
    await setWind(page, '01015KT');
    await page.evaluate(() => dispatchEvent(new Event('answer')));
    await expect.poll(() => page.getByText(words.late).count()).toBe(0);
    await openPlace(page, 'Steps');
    // It was left when the page was reloaded.
    await key(page, 'Go on').click();
    await expect.poll(() => due(page)).toBe(SECOND);
    await openPlace(page, 'Log');
    await expect.poll(() => page.locator('ol > li').count()).toBe(1);
  });
});

describe('what is stored and cannot be read', () => {
  test('leaves every place as it was, and is told once', async ({ device }) => {
    const page = await flownBefore(device);
    await page.evaluate(async () => {
      const opening = indexedDB.open('lapstrip');
      await new Promise((resolve) => {
        opening.onsuccess = resolve;
      });
      const at = { wallMs: Date.now(), sortieMs: Date.now() };
      const write = opening.result.transaction('entries', 'readwrite');
      const store = write.objectStore('entries');
      const all = await new Promise<{ sortie: string }[]>((resolve) => {
        const asked = store.getAll();
        asked.onsuccess = () => resolve(asked.result);
      });
      const sortie = all.at(-1)?.sortie;
      const damaged = [
        { closedToday: {} },
        { load: {} },
        { options: null },
        { holdShortM: null },
      ].map((inputs, place) => ({ id: `bad-${place}`, seq: 900 + place, kind: 'set', inputs }));
      for (const one of [
        ...damaged,
        { id: 'bad-clock', seq: 950, kind: 'clock', sortieMs: 1e20, rate: 1 },
        { id: 'bad-number', seq: Number.MAX_SAFE_INTEGER, kind: 'noted', text: 'high' },
      ])
        store.put({ ...one, sortie, at });
      await new Promise((resolve) => {
        write.oncomplete = resolve;
      });
      opening.result.close();
    });
    await page.reload();
    await page.getByText(words.damaged(6)).waitFor();
    await key(page, 'Go on').click();
    await expect.poll(() => due(page)).toBe(SECOND);
    await tick(page, (ms) => page.waitForTimeout(ms));
    await expect.poll(() => due(page)).not.toBe(SECOND);
    for (const place of ['Wind', 'Taxi', 'Numbers', 'Log']) {
      await openPlace(page, place);
      await expect.poll(async () => (await read(page.locator('main'))).length).toBeGreaterThan(40);
    }
    await page.reload();
    await doneKey(page).or(key(page, 'Go on')).or(page.locator('ol > li')).first().waitFor();
    expect(await page.getByText(words.damaged(6)).count()).toBe(0);
  });

  test('of a newer store, all that is there is shown, and nothing is said to be forgotten', async ({
    device,
  }) => {
    const page = await flownBefore(device);
    await page.evaluate(async () => {
      const opening = indexedDB.open('lapstrip', 7);
      opening.onupgradeneeded = () => opening.result.createObjectStore('tracks');
      await new Promise((resolve) => {
        opening.onsuccess = resolve;
      });
      opening.result.close();
    });
    await page.reload();
    await key(page, 'Go on').click();
    await expect.poll(() => due(page)).toBe(SECOND);
    expect(await page.getByText(words.forgets).count()).toBe(0);
    expect(await page.getByText(words.newer).count()).toBe(0);
  });
});

test('an own field is there again after a restart on Wind, and is flown from', async ({
  device,
}) => {
  const page = await device.start('tablet', { context: { serviceWorkers: 'block' } });
  await toSteps(page);
  await openLibrary(page);
  await flownToday(page, library.fields);
  await key(page, library.doesTo.edit('XHAR')).click();
  const sheet = page.getByRole('dialog', { name: /^Edit / });
  await sheet.getByRole('group', { name: 'Part of the field' }).getByText('Field').click();
  await sheet.getByLabel('Code').fill('XHAS');
  await sheet.getByRole('button', { name: 'Save', exact: true }).click();
  await sheet.getByRole('button', { name: 'Use XHAS' }).click();
  await openPlace(page, 'Wind');
  await page.reload();
  await expect.poll(() => header(page)).toContain('XHAS');
  // The wind was typed at a field of another name.
  await key(page, 'Use it here').click();
  await key(page, /^Use 28/)
    .first()
    .waitFor();
});

test('a sortie of the log is taken up again, where it was left, and that can be undone', async ({
  device,
}) => {
  const page = await flownBefore(device);
  await sortieKey(page).click();
  await key(page, /^End the sortie/).click();
  await openPlace(page, 'Log');
  await page.locator('ol > li').first().getByRole('button').click();
  await key(page, 'Take up again').click();
  await openPlace(page, 'Steps');
  await expect.poll(() => read(page.getByRole('alert'))).toContain('Interrupted');
  await key(page, 'Go on').click();
  await expect.poll(() => due(page)).toBe(SECOND);
  await page.reload();
  await key(page, 'Go on').click();
  await expect.poll(() => due(page)).toBe(SECOND);
});

test('what is typed is no entry of the record, and is there after the page is killed', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await openPlace(page, 'Wind');
  const entries = () =>
    page.evaluate(async () => {
      const opening = indexedDB.open('lapstrip');
      await new Promise((resolve) => {
        opening.onsuccess = resolve;
      });
      const asked = opening.result.transaction('entries').objectStore('entries').count();
      await new Promise((resolve) => {
        asked.onsuccess = resolve;
      });
      opening.result.close();
      return asked.result;
    });
  const before = await entries();
  await typeAnything(page, '0');
  for (const letter of '101') {
    await page.clock.runFor(1000);
    await page.keyboard.type(letter);
  }
  await page.clock.runFor(200);
  expect(await entries()).toBe(before);
  await page.reload();
  await expect.poll(() => entry(page).inputValue()).toBe('0101');
});
