/**
 * Drawing a field: from nothing until it is flown from, correcting one, by touch and by keyboard.
 */

import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { endPlaces } from '../../src/core/airfield/runwayLine';
import { degreesWritten } from '../../src/core/earth/degreesWritten';
import { readDocument } from '../../src/core/readDocument.schema';
import { objections } from './accessible';
import { controls, misfits, resize } from './fitting';
import { describe, expect, test } from './harness';
import {
  beginSortie,
  EVENING,
  flownToday,
  key,
  openLibrary,
  openPlace,
  read,
  setWind,
} from './pilot';
import { EVERY_SCREEN, SCREENS } from './screens';
import { THEMES } from './themes';

const drawing = (page: Page) => page.getByRole('dialog', { name: /^(Draw a field|Edit )/ });

async function openDrawing(page: Page, by: 'Draw a field' | 'Edit XHAR'): Promise<Locator> {
  await openLibrary(page);
  if (by === 'Edit XHAR') await flownToday(page, 'Fields');
  await key(page, by).click();
  const sheet = drawing(page);
  await sheet.getByRole('button', { name: 'Undo' }).waitFor();
  return sheet;
}

const part = (sheet: Locator, name: 'Field' | 'Runways' | 'Plan') =>
  sheet.getByRole('group', { name: 'Part of the field' }).getByRole('button', { name }).click();

const board = (sheet: Locator) => sheet.getByRole('region', { name: /^Plan of/ });

const tool = (sheet: Locator, name: string) =>
  sheet
    .getByRole('group', { name: 'What a tap does' })
    .getByRole('button', { name, exact: true })
    .click();

/** Whether all of an element is seen, within what scrolls about it. */
const isWholeInView = (element: Element): Promise<boolean> =>
  new Promise((resolve) => {
    new IntersectionObserver(([entry], observer) => {
      observer.disconnect();
      resolve((entry?.intersectionRatio ?? 0) > 0.99);
    }).observe(element);
  });

const choose = async (sheet: Locator, list: string, name: string) => {
  await sheet.locator('summary').filter({ hasText: list }).click();
  await sheet.getByRole('button', { name, exact: true }).click();
};

/** A runway of 900 m at 85° true, whose middle becomes the reference point. */
async function writeRunway(sheet: Locator): Promise<void> {
  await sheet.getByLabel('Code').fill('XTSL');
  await sheet.getByLabel('Name', { exact: true }).fill('Teasel Flat');
  await sheet.getByLabel('Elevation, ft').fill('20');
  await part(sheet, 'Runways');
  // Both ends in one paste, as from a table.
  const ends = endPlaces({
    by: 'centre',
    centre: { latDeg: 62.5, lonDeg: -11 },
    bearingTrueDeg: 85,
    lengthM: 900,
  });
  await sheet.getByLabel('One end', { exact: true }).fill(ends.map(degreesWritten).join('\n'));
  // The variation there was about −14° on that day (IGRF-12): 85 + 14 is 99, which is painted 10.
  await sheet.getByText('Runway 10/28, 900 m, 085° true, 099° magnetic').waitFor();
  await sheet.getByRole('button', { name: 'Add a runway', exact: true }).click();
  await sheet.getByRole('heading', { name: 'Runway 10/28' }).waitFor();
}

/** Taps where a spot of the plan is drawn, metres east and north of the reference point. */
async function tapper(sheet: Locator) {
  const surface = board(sheet);
  await surface.scrollIntoViewIfNeeded();
  const box = await surface.boundingBox();
  if (box === null) throw new Error('there is no board');
  // The runway is fitted into the board, 40 px from its edges; it reaches 448 m east and west.
  const pxPerM = Math.min((box.width - 80) / 896.6, 2);
  return async (eastM: number, northM: number) => {
    await surface.click({
      position: { x: box.width / 2 + eastM * pxPerM, y: box.height / 2 - northM * pxPerM },
    });
  };
}

async function drawPlan(sheet: Locator): Promise<void> {
  await part(sheet, 'Plan');
  const tap = await tapper(sheet);
  await tool(sheet, 'Taxiway');
  // The runway climbs to the north by tan 5° towards the east.
  await tap(-420, -37);
  for (const [east, north] of [
    [-420, -150],
    [0, -150],
    [420, -150],
    [420, 37],
  ] as const)
    await tap(east, north);
  await tool(sheet, 'Holding point');
  await tap(-420, -95);
  await tap(420, -60);
  await tool(sheet, 'Apron');
  await tap(0, -150);
  await tap(0, -220);
  await tool(sheet, 'Stand');
  await tap(0, -220);
}

describe('a field drawn from nothing', () => {
  test('is kept, chosen, ranked and taxied on', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    const sheet = await openDrawing(page, 'Draw a field');
    const missing = sheet.getByRole('button', { name: 'It has no runway.' });
    await missing.waitFor();
    expect(await sheet.getByRole('button', { name: 'Save', exact: true }).isDisabled()).toBe(true);
    await writeRunway(sheet);
    await expect.poll(() => missing.count()).toBe(0);
    await sheet.getByText('No holding point gives on to 28.').waitFor();
    await drawPlan(sheet);
    // Six of the taxiway, which two holding points divide, one of the apron, one of the runway, and
    // none from what was placed last to where the next tool began.
    await sheet.getByText('Stretches: 8').waitFor();
    await sheet.getByText('Nothing is missing: every stand reaches every open runway.').waitFor();
    await sheet.getByRole('button', { name: 'Save', exact: true }).click();
    const saved = sheet.getByText('XTSL is saved as one of your own fields.');
    // It was saved by a key at the foot of the page: what comes of it is seen there.
    await expect.poll(() => saved.evaluate(isWholeInView)).toBe(true);
    await sheet.getByRole('button', { name: 'Use XTSL' }).click();
    // 270° at 12 knots is five degrees off 28, as drawn.
    await setWind(page, '27012KT');
    await key(page, /^Use 28/)
      .first()
      .click();
    await openPlace(page, 'Taxi');
    await expect.poll(async () => read(page.locator('main'))).toContain('A2');
  });

  test('is there again after a reload, half drawn, and can still be taken back', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await writeRunway(await openDrawing(page, 'Draw a field'));
    await page.reload();
    const sheet = await openDrawing(page, 'Draw a field');
    await expect
      .poll(() => sheet.getByLabel('Name', { exact: true }).inputValue())
      .toBe('Teasel Flat');
    expect(await sheet.getByLabel('Reference point').inputValue()).toBe(
      '62°30′00.00″N 011°00′00.00″W',
    );
    await part(sheet, 'Runways');
    await sheet.getByRole('heading', { name: 'Runway 10/28' }).waitFor();
    await sheet.getByRole('button', { name: 'Undo' }).click();
    await sheet.getByRole('heading', { name: 'Runway 10/28' }).waitFor({ state: 'detached' });
    await sheet.getByRole('button', { name: 'Redo' }).click();
    await sheet.getByRole('heading', { name: 'Runway 10/28' }).waitFor();
  });

  test('is there again after the page was killed 200 ms later', async ({ open }) => {
    const page = await open('tablet');
    await beginSortie(page);
    const sheet = await openDrawing(page, 'Draw a field');
    await sheet.getByLabel('Code').fill('XTSL');
    await sheet.getByLabel('Name', { exact: true }).fill('Teasel Flat');
    // The time within which storing is promised, not a wait for something to appear.
    await new Promise((done) => setTimeout(done, 200));
    // Killed by the device: it gets no event, and so no last chance to save.
    const devtools = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent('crash');
    void devtools.send('Page.crash').catch(() => undefined);
    await crashed;
    const next = await page.context().newPage();
    await next.goto(page.url());
    const again = await openDrawing(next, 'Draw a field');
    await expect.poll(() => again.getByLabel('Code').inputValue()).toBe('XTSL');
    expect(await again.getByLabel('Name', { exact: true }).inputValue()).toBe('Teasel Flat');
  });

  test('is saved as a file that holds together', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    const sheet = await openDrawing(page, 'Draw a field');
    await writeRunway(sheet);
    const download = page.waitForEvent('download');
    await sheet.getByRole('button', { name: 'Save as a file' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toMatch(/^lapstrip-field-xtsl.*\.json$/);
    const { document } = readDocument(await readFile(await file.path(), 'utf8'));
    if (document?.kind !== 'field') throw new Error('no field');
    expect(document.content.runways[0]?.ends.map(({ toraM }) => toraM)).toEqual([900, 900]);
  });
});

describe('a field mended', () => {
  test('by keyboard alone: chosen in the list, moved with the arrows, taken back', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    const sheet = await openDrawing(page, 'Edit XHAR');
    await choose(sheet, 'Stands', 'Stand 6');
    const east = sheet.getByLabel('East of the reference, m');
    const before = Number(await east.inputValue());
    await board(sheet).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowLeft');
    // Two steps of 5 m, and one of 1 m back.
    await expect.poll(async () => Number(await east.inputValue())).toBe(before + 9);
    await page.keyboard.press('Control+z');
    await expect.poll(async () => Number(await east.inputValue())).toBe(before);
    await page.keyboard.press('Delete');
    await sheet.getByText('Stands: 9').waitFor();
    await page.keyboard.press('Control+z');
    await sheet.getByText('Stands: 10').waitFor();
    await sheet.getByText('Undone: Stand 6 removed.').waitFor();
    // It is ringed where it lies.
    await expect.poll(() => board(sheet).locator('circle[r="22"]').count()).toBe(1);
    // The sheet is still open: Escape first deselects.
    await choose(sheet, 'Holding points', 'K2');
    await board(sheet).focus();
    await page.keyboard.press('Escape');
    await sheet.getByText('Nothing is chosen.').waitFor();
  });

  test('a point is dragged where the finger lets it go', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    const sheet = await openDrawing(page, 'Edit XHAR');
    await choose(sheet, 'Junctions', 'junction k');
    const east = sheet.getByLabel('East of the reference, m');
    const before = Number(await east.inputValue());
    const ring = await board(sheet).locator('circle[r="17"]').boundingBox();
    if (ring === null) throw new Error('nothing is ringed');
    const [x, y] = [ring.x + ring.width / 2, ring.y + ring.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 15, y);
    await page.mouse.move(x + 30, y);
    await page.mouse.up();
    await expect.poll(async () => Number(await east.inputValue())).toBeGreaterThan(before + 20);
    await sheet.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => Number(await east.inputValue())).toBe(before);
  });

  test('what is missing is said, and leads to its place', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    const sheet = await openDrawing(page, 'Edit XHAR');
    await choose(sheet, 'Stretches', 'apron, Stand 6 to junction p6');
    await sheet.getByRole('button', { name: 'Remove', exact: true }).click();
    await part(sheet, 'Field');
    await sheet.getByRole('button', { name: 'Nothing joins Stand 6 to the rest.' }).click();
    await sheet.getByRole('heading', { name: 'Chosen: Stand 6' }).waitFor();
    await sheet.getByLabel('Join to').selectOption({ label: 'junction p6' });
    await sheet.getByRole('button', { name: 'Join', exact: true }).click();
    await sheet.getByText('Nothing is missing: every stand reaches every open runway.').waitFor();
  });
});

test('a picture is traced, placed by a runway, and gone with the editor', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  const sheet = await openDrawing(page, 'Edit XHAR');
  const picker = sheet.locator('input[accept^="image/png"]');
  const notes = { name: 'notes.txt', mimeType: 'text/plain', buffer: Buffer.from('Stand 6') };
  await picker.setInputFiles(notes);
  await sheet.getByText('This is no picture.').waitFor();
  await picker.setInputFiles('public/icons/512.png');
  const laid = board(sheet).locator('canvas');
  await laid.waitFor();
  await sheet.getByLabel('Place it by runway').selectOption('10/28');
  await sheet.getByRole('button', { name: 'Place by 10/28' }).click();
  const [surface, before] = [await board(sheet).boundingBox(), await laid.boundingBox()];
  if (surface === null || before === null) throw new Error('there is no picture');
  // On the picture, north up as it lies at first, a fifth and four fifths of the way across.
  const [y, across] = [before.y + before.height / 2, before.width];
  const tap = (share: number) => page.mouse.click(before.x + share * across, y);
  await sheet.getByText('On the picture, tap where runway 10 begins.').waitFor();
  await tap(0.2);
  await sheet.getByText('On the picture, tap where runway 28 begins.').waitFor();
  await tap(0.8);
  // Its runway runs from where 10 begins: as long on the picture as on the plan, and turned with it.
  const turned = () =>
    laid.evaluate((canvas) => {
      const { a, b } = new DOMMatrix(getComputedStyle(canvas.parentElement ?? canvas).transform);
      return { scale: Math.hypot(a, b), degrees: (Math.atan2(b, a) * 180) / Math.PI };
    });
  // 10/28 runs at 86° true: the picture is turned to the left by 4°.
  await expect.poll(async () => Math.round((await turned()).degrees)).toBe(-4);
  await sheet.getByRole('button', { name: 'Close' }).click();
  // Back in the Library, which it was opened from.
  await key(page, 'Edit XHAR').click();
  await sheet.getByRole('button', { name: 'Choose a picture' }).waitFor();
  expect(await laid.count()).toBe(0);
});

test('everything fits every screen, can be hit, and is read out', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await beginSortie(page);
  const sheet = await openDrawing(page, 'Edit XHAR');
  for (const name of ['Field', 'Runways', 'Plan'] as const) {
    await part(sheet, name);
    if (name === 'Plan') await choose(sheet, 'Stretches', 'B, B1 to K1');
    for (const screen of EVERY_SCREEN) {
      await resize(page, SCREENS[screen].viewport);
      expect(await misfits(page), `${name}, ${screen}`).toEqual([]);
      expect(
        await objections(page, screen === 'phone' ? THEMES : ['day']),
        `${name}, ${screen}`,
      ).toEqual([]);
      const small = (await controls(page)).filter(
        ({ width, height }) => Math.min(width, height) < 44,
      );
      expect(small, `${name}, ${screen}`).toEqual([]);
    }
  }
});
