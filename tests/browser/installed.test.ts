/** The app as something installed: from any folder, under its policy, and without a network. */

import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { beginSortie, typeWind, waitUntilStored } from './pilot';
import { BELOW } from './server';

/** Gives a first wind, after which the app is stored. */
async function stored(page: Page): Promise<void> {
  await beginSortie(page);
  await typeWind(page, '27012G20KT');
  await page.keyboard.press('Enter');
  await waitUntilStored(page);
}

const PROBE = 'lapstrip-probe';

describe('the app on a host', () => {
  test('runs from a folder below the root, asking for nothing outside it', async ({ open }) => {
    const page = await open('phone');
    expect(new URL(page.url()).pathname).toBe(BELOW);
    await expect.poll(() => page.locator('main').count()).toBe(1);
  });

  test('carries a policy under which a script written into the page does not run', async ({
    open,
    problems,
  }) => {
    const page = await open('phone');
    const ran = await page.evaluate((probe) => {
      const script = document.createElement('script');
      script.textContent = `document.documentElement.dataset.${probe} = 'ran'`;
      document.body.append(script);
      return document.documentElement.dataset[probe] ?? 'refused';
    }, 'probe');
    expect(ran).toBe('refused');
    // Provoked above, so it must have been noticed each way, by the page's own policy and by the
    // host's; then it is no problem of the app's.
    const ways = [/console error/, /refused by the content policy: script-src-elem inline/];
    const noticed = ways.flatMap((way) => [way, way]);
    await expect
      .poll(() => problems.toSorted())
      .toEqual(noticed.map((way) => expect.stringMatching(way)));
    problems.length = 0;
  });

  test('says what it is to whoever installs it', async ({ open, host }) => {
    const page = await open('phone');
    const href = await page.locator('link[rel=manifest]').getAttribute('href');
    const manifest = await (await page.request.get(new URL(href ?? '', host.url).href)).json();
    expect(manifest.name).toBe('Lapstrip');
    expect(new URL(manifest.start_url, host.url).href).toBe(host.url);
    expect(new URL(manifest.scope, host.url).href).toBe(host.url);
    // Its words are English, and German where a browser reads localized members.
    expect(manifest.lang).toBe('en');
    expect(manifest.description_localized.de).toContain('Kniebrett');
    expect(
      manifest.shortcuts.map((one: { name_localized: { de: string } }) => one.name_localized.de),
    ).toEqual(['Wind', 'Schritte']);
    const listed = [...manifest.icons, ...manifest.screenshots];
    for (const { src, sizes, type } of listed) {
      const answer = await page.request.get(new URL(src, host.url).href);
      expect(answer.status(), src).toBe(200);
      expect(answer.headers()['content-type'], src).toBe(type);
      if (type === 'image/png') expect(sizeOfPng(await answer.body()), src).toBe(sizes);
    }
    expect(manifest.icons.some(({ purpose }: { purpose?: string }) => purpose === 'maskable')).toBe(
      true,
    );
  });
});

describe('without a network', () => {
  test('a cold start in a new window shows the app', async ({ device, host }) => {
    await stored(await device.start('tablet'));
    await device.shut();
    await host.stop();
    const before = host.asked.length;
    const page = await device.start('tablet', { path: '#/steps' });
    await expect.poll(() => page.locator('main').count()).toBe(1);
    expect(host.asked.length).toBe(before);
  });

  test('everything the build made for the app is stored, not only what was looked at', async ({
    device,
    host,
  }) => {
    const page = await device.start('tablet');
    await stored(page);
    await host.stop();
    const answers = await page.evaluate(async () => {
      const name = (await caches.keys()).find((key) => key.includes('precache')) ?? '';
      const requests = await (await caches.open(name)).keys();
      return Promise.all(
        requests.map(async ({ url }) => {
          const address = url.replace(/\?__WB_REVISION__=.*/, '');
          return [address, (await fetch(address)).ok] as const;
        }),
      );
    });
    expect(answers.length).toBeGreaterThan(5);
    expect(answers.filter(([, ok]) => !ok)).toEqual([]);
  });
});

describe('a new version', () => {
  test('waits until the pilot takes it, and the sortie is kept', async ({ device, host }) => {
    const page = await device.start('tablet');
    await stored(page);
    await page.evaluate((name) => {
      document.documentElement.dataset.same = name;
    }, PROBE);
    const newer = await newVersion(host.folder);
    host.folder = newer.folder;
    const state = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update();
      const coming = registration.installing ?? registration.waiting;
      while (coming && coming.state !== 'installed') {
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
      return registration.waiting?.state;
    });
    expect(state).toBe('installed');
    expect(await page.evaluate(() => document.documentElement.dataset.same)).toBe(PROBE);

    await page.getByRole('button', { name: 'Take it now' }).click();
    const isSame = () =>
      page.evaluate(() => document.documentElement.dataset.same ?? null).catch(() => 'loading');
    await expect.poll(isSame).toBe(null);
    expect(await page.evaluate(waitingWorker)).toBe(null);
    // The sortie is where it was.
    await expect.poll(() => page.getByText('27012G20KT').count()).toBeGreaterThan(0);
    await newer.remove();
  });
});

const waitingWorker = async () => (await navigator.serviceWorker.ready).waiting;

/** The app again, differing in one byte of its worker, which is what browsers go by. */
async function newVersion(folder: string) {
  const copy = await mkdtemp(join(tmpdir(), 'lapstrip-version-'));
  await cp(folder, copy, { recursive: true });
  await appendFile(join(copy, 'sw.js'), '\n');
  return { folder: copy, remove: () => rm(copy, { recursive: true, force: true }) };
}

/** Width and height of a PNG as a manifest writes them. PNG specification, 11.2.2 IHDR. */
function sizeOfPng(png: Buffer): string {
  return `${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`;
}
