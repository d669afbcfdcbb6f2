/**
 * Writes what a release leaves on a device to tests/fixtures/stores, which every later version must
 * read: `npm run build && node tools/store.mjs`, or with the folder of another build.
 *
 * It flies the built app in a browser for a while: one sortie ended and one begun, one procedure
 * kept and one being written, one field kept and one being drawn, a wind half typed. It saves the
 * store as it then stands, named for the version in package.json.
 */

import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from './chromium.mjs';

process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING = 'true';
const { preview } = await import('vite');

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const BEGINS = new Date('1987-04-05T18:50:00Z');
const [built = `${ROOT}dist`] = process.argv.slice(2);

const server = await preview({
  root: `${ROOT}src`,
  configFile: `${ROOT}vite.config.ts`,
  logLevel: 'error',
  build: { outDir: built },
});
const [address] = server.resolvedUrls?.local ?? [];
const browser = await chromium.launch({ executablePath: findChromium(), args: QUIET_FLAGS });
const context = await browser.newContext({
  viewport: { width: 820, height: 1180 },
  hasTouch: true,
  serviceWorkers: 'block',
});
const page = await context.newPage();
page.setDefaultTimeout(8000);
await page.clock.install({ time: BEGINS });
await page.goto(address);

const key = (name) => page.getByRole('button', { name, exact: typeof name === 'string' });
const places = page.getByRole('navigation', { name: 'Places' });
const go = (place) => places.getByRole('button', { name: place }).click();
const header = page.locator('header').first();
const openSortie = () => header.getByRole('button', { name: /XHAR/ }).first().click();

/** Holds a key as long as a critical step requires. */
async function hold(target) {
  await page.clock.runFor(700);
  await target.hover();
  await page.mouse.down();
  await page.clock.runFor(900);
  await page.mouse.up();
  await page.clock.runFor(700);
}

async function tap(target) {
  await page.clock.runFor(700);
  await target.hover();
  await page.mouse.down();
  await page.clock.runFor(150);
  await page.mouse.up();
  await page.clock.runFor(700);
}

async function tick() {
  const done = page.getByRole('button', { name: /^(Done|Said)( Press and hold)?$/ });
  await done.waitFor();
  await ((await done.textContent())?.includes('Hold') ? hold(done) : tap(done));
}

async function wind(text) {
  await page.getByRole('textbox', { name: 'Wind or report' }).click();
  await page.keyboard.type(text);
}

// A short sortie, ended.
await key('Understood').click();
await key(/Ondrell Sleet 3/).click();
await key(/^XHAR/).click();
await wind('27012G20KT');
await page.keyboard.press('Enter');
await key(/^Use \d\d/)
  .first()
  .click();
await go('Steps');
for (let step = 0; step < 3; step += 1) await tick();
await tap(key('Later'));
await key('Cannot').click();
await key('Does not work').click();
await key('Interrupted').click();
await key('Go on').click();
await openSortie();
await key(/^End the sortie/).click();
await page.keyboard.press('Escape');

// One own version kept, and one being written.
await openSortie();
await key('Library').click();
await key(/^Sleet, usual sortie.*flown today/).click();
await key('Edit Sleet, usual sortie').click();
const write = page.getByRole('dialog', { name: 'Write my own' });
const response = write.getByRole('textbox', { name: 'The state it must be in' });
await write
  .getByRole('button', { name: /^Trim:/ })
  .first()
  .click();
await response.fill('three units');
await key('Save').click();
await write.getByText('Saved as version 1.').waitFor();
await response.fill('four units');
await page.clock.runFor(2000);
await page.keyboard.press('Escape');

// A field mended, kept and used, and one being drawn.
await key(/^XHAR.*flown today/).click();
await key('Edit XHAR').click();
const drawing = page.getByRole('dialog', { name: /^(Draw a field|Edit )/ });
const fieldPart = drawing
  .getByRole('group', { name: 'Part of the field' })
  .getByRole('button', { name: 'Field' });
await fieldPart.click();
await drawing.getByLabel('Name', { exact: true }).fill('Harrow Sound, mended');
await drawing.getByLabel('Code').fill('XHAS');
await drawing.getByRole('button', { name: 'Save', exact: true }).click();
await drawing.getByRole('button', { name: 'Use XHAS' }).click();
await page.keyboard.press('Escape');
await header.getByRole('button', { name: /XHA/ }).first().click();
await key('Library').click();
await key('Draw a field').click();
await fieldPart.click();
await drawing.getByLabel('Code').fill('XTSL');
await drawing.getByLabel('Name', { exact: true }).fill('Teasel Flat');
await page.keyboard.press('Escape');
await page.keyboard.press('Escape');

// The next sortie, from the mended field, left amid its steps with a wind half typed.
await go('Wind');
await wind('28014KT');
await page.keyboard.press('Enter');
await key(/^Use \d\d/)
  .first()
  .click();
await go('Steps');
for (let step = 0; step < 2; step += 1) await tick();
await go('Wind');
await wind('0101');
await page.clock.runFor(2000);
await page.waitForTimeout(300);

const stored = await page.evaluate(async () => {
  const answer = (request) =>
    new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const databases = [];
  for (const { name, version } of await indexedDB.databases()) {
    const db = await answer(indexedDB.open(name));
    const parts = [];
    for (const part of db.objectStoreNames) {
      const store = db.transaction(part).objectStore(part);
      parts.push({
        name: part,
        keyPath: store.keyPath,
        indexes: [...store.indexNames].map((index) => [index, store.index(index).keyPath]),
        values: await answer(store.getAll()),
      });
    }
    databases.push({ name, version, parts });
  }
  return { databases, local: { ...localStorage } };
});
await browser.close();
await server.close();

const { version } = JSON.parse(await readFile(`${ROOT}package.json`, 'utf8'));
const path = `${ROOT}tests/fixtures/stores/${version}.json`;
await writeFile(path, `${JSON.stringify({ version, ...stored }, null, 1)}\n`);
for (const { name, parts } of stored.databases)
  for (const part of parts) console.log(`${name}/${part.name}: ${part.values.length}`);
