/**
 * A version put on the host while the app is in use: later parts stay available as long as a page
 * needs them, or the app says, in front of everything, that a reload helps and loses nothing.
 */

import { cp, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll } from 'vitest';
import { words as library } from '../../src/views/library/words.en';
import { describe, expect, test } from './harness';
import { closeSheet, due, key, openAbout, openLibrary, toSteps, waitUntilStored } from './pilot';
import { DIST } from './server';

/** The sheet that a field is drawn in, by its title. */
const DRAWING = /^Draw/;

const NEWS = 'Ink on a page of notes.';
const RELEASES = [
  { version: '9.9.9', en: [NEWS], de: ['Tinte auf einem Notizblatt.'] },
  ...JSON.parse(await readFile(join(DIST, 'whatsNew.json'), 'utf8')),
];

/** Removed when no page asks for anything any more. */
const made: string[] = [];
afterAll(async () => {
  for (const folder of made) await rm(folder, { recursive: true, force: true });
});

/** The app as another version: every part of it under another name, and news of it. */
async function another(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'lapstrip-version-'));
  made.push(folder);
  await cp(DIST, folder, { recursive: true });
  const assets = await readdir(join(folder, 'assets'));
  const renamed = assets.map((file) => [file, file.replace(/\.(\w+)$/, '_B.$1')] as const);
  for (const [from, to] of renamed) {
    await rename(join(folder, 'assets', from), join(folder, 'assets', to));
  }
  for (const file of await readdir(folder, { recursive: true })) {
    if (!['.js', '.css', '.html'].includes(extname(file))) continue;
    const text = await readFile(join(folder, file), 'utf8');
    const changed = renamed.reduce((code, [from, to]) => code.replaceAll(from, to), text);
    // What is not named by its content, as index.html is, the worker knows by a revision.
    await writeFile(join(folder, file), changed.replace(/\brevision"?: ?"/g, '$&B'));
  }
  await writeFile(join(folder, 'whatsNew.json'), JSON.stringify(RELEASES));
  return folder;
}

/** Which version a page is of, by its script. */
const versionOf = (page: Page) =>
  page
    .evaluate(() => document.querySelector<HTMLScriptElement>('script[type=module]')?.src ?? '')
    .then((src) => (src.includes('_B.') ? 'B' : 'A'))
    .catch(() => 'loading');

/** Has the page look for a new version, as it does every hour, and waits until one is stored. */
const findNewVersion = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (!registration.waiting) await new Promise((resolve) => setTimeout(resolve, 50));
  });

/** Opens the sheet for drawing a field: few do, so its code is loaded on demand. */
async function drawField(page: Page): Promise<void> {
  await openLibrary(page);
  await key(page, library.drawField).click();
}

/** The browser reports missing parts on the console; provoked here, so removed. */
function forgive(problems: string[]): void {
  const others = problems.filter((problem) => !/404|Failed to fetch dynamically/.test(problem));
  problems.splice(0, problems.length, ...others);
}

describe('a version put on the host', () => {
  test('before this page has a worker: what is missing is said in front of all, and a reload loses nothing', async ({
    open,
    host,
    problems,
  }) => {
    const page = await open('tablet');
    await toSteps(page);
    const step = await due(page);
    host.folder = await another();
    await drawField(page);
    const reload = key(page, 'Reload, nothing is lost');
    // In front of what is open: a tap reaches it.
    await reload.click();
    await expect.poll(() => versionOf(page)).toBe('B');
    expect(await due(page)).toBe(step);
    await drawField(page);
    await page.getByRole('dialog', { name: DRAWING }).waitFor();
    forgive(problems);
  });

  test('and a part that does not come without a network is said in its sheet, with the way to try again', async ({
    open,
    host,
    problems,
  }) => {
    const page = await open('tablet');
    await toSteps(page);
    await host.stop();
    await drawField(page);
    await key(page, 'Try again').waitFor();
    expect(await key(page, 'Reload, nothing is lost').count()).toBe(0);
    await host.start();
    await key(page, 'Try again').click();
    await page.getByRole('dialog', { name: DRAWING }).waitFor();
    problems.length = 0;
  });

  test('and taken by another window leaves this one all its parts; then the older one comes back', async ({
    device,
    host,
  }) => {
    const page = await device.start('tablet');
    await toSteps(page);
    const step = await due(page);
    await waitUntilStored(page);
    const other = await device.another();
    await waitUntilStored(other);

    host.folder = await another();
    await findNewVersion(other);
    await other.getByText(NEWS).waitFor();
    await key(other, 'Take it now').click();
    await expect.poll(() => versionOf(other)).toBe('B');

    // This window still shows the version it was opened with, parts that come late too.
    expect(await versionOf(page)).toBe('A');
    await page.bringToFront();
    await drawField(page);
    await page.getByRole('dialog', { name: DRAWING }).waitFor();
    expect(await key(page, 'Reload, nothing is lost').count()).toBe(0);
    for (const _ of ['drawing', 'sortie']) await closeSheet(page);
    await key(page, 'Take it now').click();
    await expect.poll(() => versionOf(page)).toBe('B');
    expect(await due(page)).toBe(step);

    // The host goes back to the older version.
    host.folder = DIST;
    await other.close();
    await findNewVersion(page);
    await key(page, 'Take it now').click();
    await expect.poll(() => versionOf(page)).toBe('A');
    expect(await due(page)).toBe(step);
    await drawField(page);
    await page.getByRole('dialog', { name: DRAWING }).waitFor();
  });
});

describe('the parts of an earlier version', () => {
  test('are dropped when the app is started with no page of it open', async ({ device, host }) => {
    const page = await device.start('tablet');
    await toSteps(page);
    await waitUntilStored(page);
    host.folder = await another();
    await findNewVersion(page);
    await key(page, 'Take it now').click();
    await expect.poll(() => versionOf(page)).toBe('B');
    const isKept = () => page.evaluate(() => caches.has('lapstrip-earlier'));
    await expect.poll(isKept).toBe(false);
  });
});

describe('About', () => {
  test('says which version this is and leads to all licences', async ({ open }) => {
    const page = await open('phone');
    await toSteps(page);
    await openAbout(page);
    const { version } = JSON.parse(
      await readFile(new URL('../../package.json', import.meta.url), 'utf8'),
    );
    await page.getByText(`Version ${version}`).waitFor();
    const link = page.getByRole('link', { name: 'All licences' });
    const href = await link.evaluate((element: HTMLAnchorElement) => element.href);
    const answer = await page.request.get(href);
    expect(answer.headers()['content-type']).toContain('text/plain');
    expect(await answer.text()).toContain('SIL OPEN FONT LICENSE Version 1.1');
  });
});
