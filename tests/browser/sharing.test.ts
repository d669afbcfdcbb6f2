/** A document shared by file, link and code, shown before it is stored, and printed. */

import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { words as rooms } from '../../src/shell/roomWords.en';
import { words as documentWords } from '../../src/views/library/documentWords.en';
import { words as library } from '../../src/views/library/words.en';
import { objections } from './accessible';
import { misfits, resize } from './fitting';
import { describe, expect, test } from './harness';
import {
  AIRCRAFT,
  beginSortie,
  closeSheet,
  EVENING,
  flownToday,
  key,
  openLibrary,
  openSortie,
  read,
  setWind,
} from './pilot';
import { EVERY_SCREEN, SCREENS } from './screens';
import { THEMES, wear } from './themes';

const dialog = (page: Page) => page.getByRole('dialog').last();

/** Opens Share for what is flown today. */
async function toShare(page: Page, what: 'fields' | 'procedures'): Promise<void> {
  await openLibrary(page);
  await (await flownToday(page, library[what]))
    .getByRole('button', { name: library.does.share })
    .click();
  await key(page, 'Copy the link').waitFor();
}

/** The link as it is copied. */
async function linkOf(page: Page, what: 'fields' | 'procedures'): Promise<string> {
  await toShare(page, what);
  await key(page, 'Copy the link').click();
  await page.getByText('The link is copied.').waitFor();
  return page.evaluate(() => navigator.clipboard.readText());
}

const CLIPBOARD = { context: { permissions: ['clipboard-read', 'clipboard-write'] } };

/** The procedure file with one step reworded, one added and one removed, under its old name. */
async function ownProcedure(): Promise<string> {
  const file = new URL('../../airfields-demo/procedures/sleet-usual.json', import.meta.url);
  const procedure = JSON.parse(await readFile(file, 'utf8'));
  procedure.name = 'Sleet, my own way';
  const [ramp] = procedure.phases;
  ramp.steps[1].response = 'parked, <img src=x onerror=alert(1)>';
  const [taken] = ramp.steps.splice(4, 1);
  ramp.steps.push({ id: 'my-pencil', kind: 'do', item: 'Pencil', response: 'sharp' });
  return JSON.stringify({
    ...procedure,
    taken: undefined,
    phases: procedure.phases,
    about: `Without ${taken.item}.`,
  });
}

async function lookAtFile(page: Page, text: string): Promise<void> {
  await openLibrary(page);
  await page
    .getByLabel('Look at a file')
    .setInputFiles({ name: 'own.json', mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Opens a link in a window of its own, as a browser does. */
async function follow(page: Page, link: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(link);
}

const DECODER = new URL('../../node_modules/jsqr/dist/jsQR.js', import.meta.url).pathname;

/** What the decoder, run in a page without a content policy, reads from a picture of the screen. */
async function seen(page: Page, code: Locator): Promise<string | null> {
  await code.scrollIntoViewIfNeeded();
  const picture = (await code.screenshot()).toString('base64');
  const blank = await page.context().newPage();
  await blank.addScriptTag({ path: DECODER });
  const read = await blank.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const canvas = new OffscreenCanvas(image.width, image.height);
    const context = canvas.getContext('2d');
    context?.drawImage(image, 0, 0);
    const pixels = context?.getImageData(0, 0, image.width, image.height);
    const { jsQR } = window as unknown as { jsQR: typeof import('jsqr').default };
    return jsQR(pixels?.data ?? new Uint8ClampedArray(), image.width, image.height)?.data ?? null;
  }, picture);
  await blank.close();
  return read;
}

test('an own version by file: what it would change is said, and only then it is kept', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await setWind(page, '27012KT');
  await lookAtFile(page, await ownProcedure());
  await expect.poll(() => read(dialog(page))).toContain('A procedure: “Sleet, my own way”');
  const said = await read(dialog(page));
  expect(said).toContain('The demo has “Sleet, usual sortie” under the same code.');
  expect(said).toContain('One step more:Pencil – sharp');
  expect(said).toContain('One step left out:');
  expect(said).toContain('One step said otherwise:');
  // Script in a text stays text.
  expect(said).toContain('<img src=x onerror=alert(1)>');
  expect(await page.locator('img').count()).toBe(0);
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  expect(await page.getByText('Sleet, my own way').count()).toBe(0);
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  await lookAtFile(page, await ownProcedure());
  await key(page, 'Add it').click();
  await expect.poll(() => read(dialog(page))).toContain('was added.');
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  await key(page, rooms.tabs.sortie).click();
  await key(page, 'Sleet, my own way').click();
  await page.reload();
  await lookAtFile(page, await ownProcedure());
  await expect.poll(() => read(dialog(page))).toContain('You have the very same already.');
  expect(await key(page, 'Add it').count()).toBe(0);
});

test('an own version goes to a second profile by link, is looked at, added and flown', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, ...CLIPBOARD });
  await beginSortie(page);
  await lookAtFile(page, await ownProcedure());
  await key(page, 'Add it').click();
  await page.getByText('was added.').waitFor();
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  await key(page, rooms.tabs.sortie).click();
  await key(page, 'Sleet, my own way').click();
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  const link = await linkOf(page, 'procedures');
  expect(link).toMatch(/#\/add\?d=[\w-]+$/);

  const other = await open('phone', { at: EVENING, path: link.slice(link.indexOf('#')) });
  await expect.poll(() => dialog(other).count()).toBe(1);
  // On a first start the caution comes with it; whichever lies on top is closed first.
  await other.getByText('What came').waitFor();
  expect(new URL(other.url()).hash).toBe('#/wind');
  await expect
    .poll(() => read(other.getByRole('dialog', { name: 'What came' })))
    .toContain('A procedure: “Sleet, my own way”');
  await key(other, 'Add it').click();
  await other.getByText('was added.').waitFor();
  await other
    .getByRole('dialog', { name: 'What came' })
    .getByRole('button', { name: 'Close' })
    .click();
  await key(other, 'Understood').click();
  await other.getByRole('button', { name: AIRCRAFT }).click();
  await other.getByRole('button', { name: /^XHAR/ }).click();
  await setWind(other, '27012KT');
  await openSortie(other);
  await expect.poll(() => key(other, 'Sleet, my own way').count()).toBe(1);
});

test('a link opened in a window that is open already is taken too, and one cut short is refused', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, ...CLIPBOARD });
  await beginSortie(page);
  const link = await linkOf(page, 'fields');
  await page.evaluate(
    (hash) => {
      location.hash = hash;
    },
    link.slice(link.indexOf('#')),
  );
  await expect.poll(() => read(dialog(page))).toContain('A field: “Harrow Sound”');
  await expect.poll(() => read(dialog(page))).toContain('You have the very same already.');
  await follow(page, link.slice(0, -40));
  await expect.poll(() => read(dialog(page))).toContain('The link is cut short or damaged.');
  expect(await key(page, 'Add it').count()).toBe(0);
});

test('the codes of a procedure, read from the screen one by one, put it together on another device', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await toShare(page, 'procedures');
  await key(page, 'Show the code').click();
  const code = page.getByRole('img', { name: /^QR code/ });
  await code.waitFor();
  const keys = page.getByRole('button', { name: /^\d of \d$/ });
  const links: string[] = [];
  for (let part = 0; part < (await keys.count()); part++) {
    await keys.nth(part).click();
    links.push((await seen(page, code)) ?? '');
  }
  expect(links.length).toBeGreaterThan(1);
  expect(new Set(links).size).toBe(links.length);
  const { origin } = new URL(page.url());
  for (const link of links) expect(link.startsWith(`${origin}/`)).toBe(true);

  const other = await open('phone', { at: EVENING });
  // In any order, one of them twice.
  for (const link of [...links.slice(1), ...links.slice(1, 2)]) {
    await follow(other, link);
    await expect
      .poll(() => read(other.getByRole('dialog', { name: 'What came' })))
      .toContain('was read.');
  }
  await expect
    .poll(() => read(other.getByRole('dialog', { name: 'What came' })))
    .toContain('Still to be read: 1.');
  await follow(other, links[0] ?? '');
  await expect
    .poll(() => read(other.getByRole('dialog', { name: 'What came' })))
    .toContain('A procedure: “Sleet, usual sortie”');
});

describe('printed', () => {
  /** The pages of a PDF and their size in points. A5 is 148 by 210 mm (ISO 216), a point 1/72 inch. */
  const pagesOf = (pdf: Buffer) => {
    const text = pdf.toString('latin1');
    return [...text.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, w, h]) => [
      Math.round((Number(w) / 72) * 25.4),
      Math.round((Number(h) / 72) * 25.4),
    ]);
  };

  test('a procedure is a set of A5 cards, and nothing else of the app', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '27012G20KT');
    await openLibrary(page);
    const unprinted = await page.locator('body > div').count();
    await (await flownToday(page, library.procedures))
      .getByRole('button', { name: library.does.print })
      .click();
    await page.getByText('The cards as they will be').waitFor();
    const printed = async () => pagesOf(await page.pdf({ preferCSSPageSize: true }));
    // What is printed is laid out once the sheet stands.
    await expect.poll(async () => (await printed()).length).toBeGreaterThan(3);
    const pages = await printed();
    expect(pages.length).toBeLessThan(16);
    for (const size of pages) expect(size).toEqual([148, 210]);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('#app').isVisible()).toBe(false);
    const paper = page.locator('body > div').last();
    const today = await read(paper);
    expect(today).toContain('XHAR Harrow Sound');
    expect(today).toContain('270° 12 gusts 20');
    expect(
      await paper.evaluate((one) => {
        const { backgroundColor, color } = getComputedStyle(one);
        return [backgroundColor, color];
      }),
    ).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
    await page.emulateMedia({ media: 'screen' });
    await key(page, 'Left blank').click();
    await expect.poll(() => read(paper)).not.toContain('270° 12');
    await dialog(page).getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => page.locator('body > div').count()).toBe(unprinted);
  });
});

test('sharing and printing fit every screen, in every theme, and can be read by everyone', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  const found: string[] = [];
  const look = async () => {
    for (const screen of EVERY_SCREEN) {
      await resize(page, SCREENS[screen].viewport);
      if (screen === 'phone' || screen === 'tablet') found.push(...(await objections(page)));
      for (const theme of THEMES) {
        await wear(page, theme);
        found.push(...(await misfits(page)).map((misfit) => `${screen} by ${theme}: ${misfit}`));
      }
    }
  };
  await beginSortie(page);
  await toShare(page, 'procedures');
  await key(page, 'Show the code').click();
  await page.getByRole('img', { name: /^QR code/ }).waitFor();
  await look();
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  await (await flownToday(page, library.procedures))
    .getByRole('button', { name: library.does.print })
    .click();
  await page.getByText('The cards as they will be').waitFor();
  await look();
  expect(found).toEqual([]);
});

describe('a link or a code that is pasted, where the device opens links elsewhere', () => {
  test('is taken from the clipboard, and looked at before it is kept', async ({ open }) => {
    const page = await open('phone', { at: EVENING, ...CLIPBOARD });
    await beginSortie(page);
    await setWind(page, '27012KT');
    const link = await linkOf(page, 'fields');
    await closeSheet(page);
    await key(page, documentWords.paste).click();
    await expect.poll(() => read(dialog(page))).toContain('Harrow Sound');
    await expect.poll(() => read(dialog(page))).toContain('You have the very same already.');
    expect(link).toContain('#/add?d=');
    expect(page.url()).not.toContain('add');
  });

  test('is pasted into a box where the clipboard is refused; what is no link is said and kept', async ({
    open,
  }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        Object.defineProperty(navigator, 'clipboard', { value: undefined });
      },
    });
    await beginSortie(page);
    await setWind(page, '27012KT');
    await openLibrary(page);
    await key(page, documentWords.paste).click();
    const box = page.getByRole('textbox', { name: documentWords.paste });
    await box.fill('27012');
    await key(page, documentWords.lookAtPasted).click();
    await page.getByText(documentWords.nothingPasted).waitFor();
    expect(await box.inputValue()).toBe('27012');
    await box.fill('https://example.org/#/add?d=AAAA');
    await expect.poll(() => page.getByText(documentWords.nothingPasted).count()).toBe(0);
    await key(page, documentWords.lookAtPasted).click();
    await expect.poll(() => read(dialog(page))).toContain('cut short or damaged');
    expect(await misfits(page)).toEqual([]);
  });

  test('a link to a report puts it in use', async ({ open }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        Object.defineProperty(navigator, 'clipboard', { value: undefined });
      },
    });
    await beginSortie(page);
    await setWind(page, '27012KT');
    await openLibrary(page);
    await key(page, documentWords.paste).click();
    await page
      .getByRole('textbox', { name: documentWords.paste })
      .fill('https://example.org/app/#/wind?report=31020KT');
    await key(page, documentWords.lookAtPasted).click();
    await expect.poll(() => page.getByText('310° 20').count()).toBeGreaterThan(0);
    await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  });
});
