/**
 * A part of the screen that can't be drawn takes nothing else with it, and says what can be done.
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { allSaved, dialog } from './logFiles';
import {
  due,
  EVENING,
  key,
  openDevice,
  openPlace,
  read,
  setWind,
  sortieKey,
  toSteps,
} from './pilot';

/** Makes the page refuse to draw a text; the app has no code for that. */
const refusing = (): void => {
  const page = window as unknown as { refused: string | null };
  page.refused = null;
  const create = document.createTextNode.bind(document);
  document.createTextNode = (text) => {
    if (page.refused !== null && text.includes(page.refused))
      throw new TypeError('cannot be drawn');
    return create(text);
  };
};

const refuse = (page: Page, text: string | null) =>
  page.evaluate((refused) => {
    (window as unknown as { refused: string | null }).refused = refused;
  }, text);

const main = (page: Page) => page.getByRole('main');

describe('a place that cannot be drawn', () => {
  test.for([
    ['Wind', 'Paste'],
    ['Taxi', 'Route'],
    ['Steps', 'Cannot'],
    ['Numbers', 'Take-off'],
    ['Log', 'Save as CSV'],
  ] as const)(
    '%s: the others stay, and it is there again when it can be',
    async ([place, text], { open }) => {
      const page = await open('phone', { at: EVENING, before: refusing });
      await toSteps(page);
      const other = place === 'Steps' ? 'Numbers' : 'Steps';
      await openPlace(page, other);
      await refuse(page, text);
      await openPlace(page, place);
      await main(page).getByText(`${place} cannot be shown.`).waitFor();
      expect(await read(page.locator('header').first())).toContain('270° 12');
      await key(page, 'Go on without it').click();
      await expect.poll(() => main(page).getByText('cannot be shown').count()).toBe(0);
      await openPlace(page, place);
      await main(page).getByText(`${place} cannot be shown.`).waitFor();
      await refuse(page, null);
      await key(page, 'Try again').click();
      await expect.poll(() => main(page).getByText('cannot be shown').count()).toBe(0);
      await expect.poll(() => page.getByText(text).first().isVisible()).toBe(true);
    },
  );

  test('beside another, it is left out and the other goes on', async ({ open }) => {
    const page = await open('tablet on its side', { at: EVENING, before: refusing });
    await toSteps(page);
    await openPlace(page, 'Numbers');
    await refuse(page, 'Cannot');
    await openPlace(page, 'Wind');
    await page.getByText('Steps cannot be shown.').waitFor();
    await setWind(page, '28012KT');
    await key(page, 'Go on without it').click();
    await expect.poll(() => page.getByText('cannot be shown').count()).toBe(0);
    expect(await read(page.locator('header').first())).toContain('280° 12');
  });
});

test('a sheet that cannot be drawn closes, and the place under it goes on', async ({ open }) => {
  const page = await open('tablet', { at: EVENING, before: refusing });
  await toSteps(page);
  const before = await due(page);
  await refuse(page, 'Callsign');
  await sortieKey(page).click();
  await dialog(page).getByText('This sheet cannot be shown.').waitFor();
  await key(page, 'Go on without it').click();
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  expect(await due(page)).toBe(before);
  await refuse(page, null);
  await sortieKey(page).click();
  await dialog(page).getByText('Callsign').first().waitFor();
});

test('everything is saved, what is stored amiss too; started anew beside it, nothing of it is lost', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, before: refusing });
  await toSteps(page);
  const before = await due(page);
  await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((done) => {
      const opening = indexedDB.open('lapstrip');
      opening.onsuccess = () => done(opening.result);
    });
    const writing = db.transaction('documents', 'readwrite');
    writing
      .objectStore('documents')
      .put({ hash: 'amiss', kind: 'field', content: null, own: false });
    await new Promise((done) => {
      writing.oncomplete = done;
    });
    db.close();
  });
  await refuse(page, 'Save as CSV');
  await openPlace(page, 'Log');
  await page.getByText('Log cannot be shown.').waitFor();
  const files = await allSaved(page, 'Save everything as a file', 2);
  const named = (name: string) => JSON.parse(files.find((file) => file.name === name)?.text ?? '');
  const { entries } = named('lapstrip-log.json');
  expect(entries.some(({ kind }: { kind: string }) => kind === 'wind')).toBe(true);
  // What can't be read is in no log for others to import; it is saved as it stood.
  const amiss = { hash: 'amiss', kind: 'field', content: null, own: false };
  expect(named('lapstrip-device.json').setAside).toContainEqual({
    part: 'documents',
    value: amiss,
  });

  await key(page, 'Start anew beside it').click();
  await key(page, 'Yes, start anew').click();
  // Nothing is chosen there: it begins as on the first day.
  await page.getByRole('button', { name: /^XHAR/ }).waitFor();
  await page.getByRole('button', { name: /^XHAR/ }).click();
  await setWind(page, '09010KT');
  await openDevice(page);
  await key(page, 'Go back to what was stored before').click();
  await openPlace(page, 'Steps');
  await expect.poll(() => due(page)).toBe(before);
  expect(await read(page.locator('header').first())).toContain('270° 12');
});

test('an error that nothing caught is told once, with a way to save everything', async ({
  open,
  problems,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  const before = await due(page);
  const told = page.getByText('Lapstrip has made an error. What you entered stays as it is.');
  const fail = () =>
    page.evaluate(() => {
      setTimeout(() => {
        throw new TypeError('in an effect');
      });
      void Promise.reject(new TypeError('in a promise'));
    });
  await fail();
  await told.waitFor();
  expect(await told.count()).toBe(1);
  expect(await due(page)).toBe(before);
  await key(page, 'What to do').click();
  const files = await allSaved(page, 'Save everything as a file', 2);
  expect(files.map(({ name }) => name).sort()).toEqual([
    'lapstrip-device.json',
    'lapstrip-log.json',
  ]);
  await dialog(page).getByRole('button', { name: 'Close', exact: true }).click();
  await fail();
  // Both were thrown, and provoked here; neither is reported again.
  await expect.poll(() => problems.length).toBe(4);
  expect(problems.splice(0).every((problem) => /in an effect|in a promise/.test(problem))).toBe(
    true,
  );
  expect(await told.count()).toBe(0);
  expect(await due(page)).toBe(before);
});
