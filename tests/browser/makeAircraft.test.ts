/** An aircraft made from a page of a handbook, until the first step of its procedure is ticked. */

import type { Locator, Page } from 'playwright-core';
import { starter } from '../../src/parts/starter/words.en';
import { figures } from '../../src/views/aircraftEditor/figureWords.en';
import { words } from '../../src/views/aircraftEditor/words.en';
import { words as library } from '../../src/views/library/words.en';
import { words as sortie } from '../../src/views/sortie/words.en';
import { objections } from './accessible';
import { controls, misfits, resize } from './fitting';
import { describe, expect, test } from './harness';
import {
  beginSortie,
  due,
  EVENING,
  flownToday,
  key,
  openLibrary,
  openPlace,
  openSortie,
  setWind,
  tick,
} from './pilot';
import { EVERY_SCREEN, SCREENS } from './screens';
import { THEMES } from './themes';

const NAME = 'Made-up Heron';

/** What the made-up page says of the aircraft as a whole. */
const BOOK = [
  ['masses.maxTakeoffKg', '1043'],
  ['masses.emptyKg', '680'],
  ['takeoff.rotateKt', '54'],
  ['takeoff.liftOffKt', '57'],
  ['climb.speedKt.0', '70'],
  ['climb.speedKt.1', '78'],
  ['landing.approachKt', '61'],
  ['limits.crosswindKt.dry', '12'],
] as const;

/** Altitude, temperature, take-off run, to 50 ft, landing run, landing distance. */
const ROWS = [
  '0 0 205 400 140 365',
  '0 20 235 452 150 380',
  '0 40 268 512 160 396',
  '2000 0 246 478 150 382',
  '2000 20 281 545 162 398',
  '4000 0 296 580 162 400',
  '4000 20 340 670 174 417',
  '4000 30 362 722 180 426',
].map((row) => row.split(' '));

const sheetOf = (page: Page) => page.getByRole('dialog', { name: words.make });

/** Counts what the pilot does. */
function counting(page: Page) {
  const count = { boxes: 0, taps: 0 };
  return {
    count,
    fill: async (box: Locator, text: string) => {
      count.boxes += 1;
      await box.fill(text);
    },
    tap: async (target: Locator) => {
      count.taps += 1;
      await target.click();
    },
    part: (name: keyof typeof words.parts) =>
      sheetOf(page)
        .getByRole('group', { name: words.whichPart })
        .getByRole('button', { name: words.parts[name] }),
  };
}

describe('an aircraft made from a handbook page of eight rows', () => {
  test('is met by its numbers, and flown with a procedure of its own', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await beginSortie(page);
    const { count, fill, tap, part } = counting(page);
    await openSortie(page);
    await tap(key(page, sortie.makeAircraft));
    const sheet = sheetOf(page);
    const save = sheet.getByRole('button', { name: words.keep, exact: true });
    await sheet.getByRole('button', { name: 'It has no name.' }).waitFor();
    expect(await save.isDisabled()).toBe(true);
    await tap(sheet.getByRole('button', { name: words.classes['piston-single'] }));
    await fill(sheet.getByLabel(words.name, { exact: true }), NAME);
    for (const [name, value] of BOOK)
      await fill(sheet.locator(`[data-figure="${name}"] input`), value);
    // Enough for an aircraft with book figures alone.
    await expect.poll(() => save.isDisabled()).toBe(false);
    expect(count.boxes).toBeLessThanOrEqual(20);

    await tap(part('table'));
    for (const [index, row] of ROWS.entries()) {
      await tap(sheet.getByRole('button', { name: words.addRow }));
      const cells = sheet.locator('tbody tr').nth(index).getByRole('textbox');
      for (const [column, text] of row.entries()) await fill(cells.nth(column), text);
    }
    await sheet.getByText(/^Every row is met within [012][.]\d %[.]$/).waitFor({ timeout: 60_000 });
    await tap(save);
    await tap(sheet.getByRole('button', { name: words.use(NAME) }));
    expect(count.boxes).toBeLessThanOrEqual(60);
    expect(count.taps).toBeLessThanOrEqual(15);

    await setWind(page, '27012G20KT');
    await key(page, /^Use \d\d/)
      .first()
      .click();
    await openPlace(page, 'Steps');
    await expect.poll(() => due(page)).toBe(starter.steps['brakes-parked'].join(' '));
    await tick(page);
    await expect.poll(() => due(page)).toBe(starter.steps['controls-free'].join(' '));
  });

  test('pasted with a slip, has the row named, and is found again in the Library', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await openLibrary(page);
    await key(page, library.makeAircraft).click();
    const sheet = sheetOf(page);
    await sheet.getByLabel(words.name, { exact: true }).fill(NAME);
    for (const [name, value] of BOOK)
      await sheet.locator(`[data-figure="${name}"] input`).fill(value);
    await counting(page).part('table').click();
    const slip = ROWS.map((row, at) => (at === 6 ? row.with(2, '480') : row).join('\t'));
    await sheet
      .getByLabel(words.paste)
      .fill(
        ['Altitude\tOAT\tGround run\tTo 50 ft\tLanding run\tLanding distance', ...slip].join('\n'),
      );
    await sheet.getByRole('button', { name: words.take(8) }).click();
    await sheet.getByText(/^Row 7, take-off run: the book has 480/).waitFor({ timeout: 60_000 });
    await sheet.getByRole('button', { name: words.keep, exact: true }).click();
    await sheet.getByRole('button', { name: words.use(NAME) }).click();
    // It says so in every place from now on.
    await setWind(page, '27005KT');
    await page.getByRole('button', { name: /% off the handbook/ }).waitFor();
    await openLibrary(page);
    await flownToday(page, library.aircraft);
    await key(page, library.doesTo.edit(NAME)).click();
    const again = page.getByRole('dialog', { name: words.edit(NAME) });
    const box = again.locator('[data-figure="takeoff.rotateKt"] input');
    await expect.poll(() => box.inputValue()).toBe('54');
    expect(await again.getByLabel(figures['masses.usualTakeoffKg'].name).count()).toBe(0);
  });
});

test('everything fits every screen, can be hit, and is read out', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await beginSortie(page);
  await openLibrary(page);
  await key(page, library.makeAircraft).click();
  const sheet = sheetOf(page);
  await sheet.getByRole('button', { name: words.classes['twin-jet'] }).click();
  const shows: Readonly<Record<keyof typeof words.parts, () => Promise<void>>> = {
    figures: async () => {
      for (const group of Object.values(words.groups))
        await sheet.locator('summary').filter({ hasText: group }).click();
    },
    table: async () => {
      await sheet.getByRole('button', { name: words.addRow }).click();
    },
    load: async () => {
      await sheet.getByRole('button', { name: words.addLoad }).click();
      await sheet.getByRole('button', { name: words.addStation }).click();
      await sheet.getByRole('button', { name: words.arms.yes, exact: true }).click();
      await sheet.getByRole('button', { name: words.addCorner }).click();
      await sheet.getByRole('img', { name: words.envelopeLabel(4) }).waitFor();
    },
  };
  for (const [name, show] of Object.entries(shows)) {
    await counting(page)
      .part(name as keyof typeof words.parts)
      .click();
    await show();
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
