/** Documents are there even if the network fails once or the page came over plain http. */

import { readFile } from 'node:fs/promises';
import { networkInterfaces } from 'node:os';
import { describe, expect, test } from './harness';
import { dialog } from './logFiles';
import {
  beginSortie,
  EVENING,
  key,
  openLibrary,
  openPlace,
  read,
  setWind,
  sortieKey,
} from './pilot';

const FIELD = new URL('../../airfields-demo/fields/XHAR.json', import.meta.url);

describe('a document that could not be loaded', () => {
  test('is asked for again, and the way to the runway is there without a reload', async ({
    open,
    problems,
  }) => {
    const page = await open('tablet', { at: EVENING });
    let failures = 0;
    await page.route(/field-xhar|lapstrip-documents/, (route) =>
      failures++ < 2 ? route.abort() : route.continue(),
    );
    await beginSortie(page);
    await expect.poll(() => failures, { timeout: 20_000 }).toBeGreaterThan(2);
    await setWind(page, '27012G20KT');
    await openPlace(page, 'Taxi');
    await expect
      .poll(() => page.getByRole('region', { name: /^Plan of Harrow Sound/ }).count())
      .toBe(1);
    // The browser reports on the console what it was refused.
    problems.splice(0);
  });
});

/** An address of this machine other than localhost, for which browsers demand https. */
function networkAddress(): string | undefined {
  const all = Object.values(networkInterfaces()).flatMap((addresses) => addresses ?? []);
  return all.find(({ family, internal }) => family === 'IPv4' && !internal)?.address;
}

const ADDRESS = networkAddress();

describe.skipIf(ADDRESS === undefined)('served over plain http on a local network', () => {
  const overHttp = test.override('hostName', ADDRESS ?? '');

  overHttp('an own field is kept, and chosen after a reload', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    await beginSortie(page);
    const field = { ...JSON.parse(await readFile(FIELD, 'utf8')), code: 'XOWN', name: 'Own Strip' };
    await openLibrary(page);
    await page.getByLabel('Look at a file').setInputFiles({
      name: 'own.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(field)),
    });
    await key(page, 'Add it').click();
    await expect.poll(() => read(dialog(page))).toContain('was added.');
    await page.reload();
    await sortieKey(page).click();
    await key(page, /Own Strip/).click();
    await dialog(page).getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => read(page.locator('header').first())).toContain('XOWN');
  });
});
