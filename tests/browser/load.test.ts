/** The load sheet: presets, fuel by slider and by typing, stations, limits, and the envelope. */

import type { Page } from 'playwright-core';
import { objections } from './accessible';
import { controls, misfits, resize, SIZES } from './fitting';
import { describe, expect, test } from './harness';
import { AIRCRAFT, beginSortie, closeSheet, EVENING, FIELD, key, read, sortieKey } from './pilot';
import { THEMES, wear } from './themes';

const TOURER = 'Pask Tussock';

const sheet = (page: Page) => page.getByRole('dialog', { name: /^Load,/ });

/** The mass that stands there, as it is read. */
const mass = (page: Page, name: 'Take-off' | 'Landing') =>
  read(sheet(page).locator('dl').first().locator('div').filter({ hasText: name }));

const takeoff = async (page: Page) => /[\d ]+ kg/.exec(await mass(page, 'Take-off'))?.[0];

const verdict = (page: Page) => read(sheet(page).getByRole('status'));

const fuel = (page: Page) => sheet(page).getByRole('slider', { name: 'Fuel' });

const openSortie = (page: Page) => sortieKey(page).click();

async function openLoad(page: Page): Promise<void> {
  await openSortie(page);
  await key(page, 'Load sheet').click();
  await sheet(page).waitFor();
}

async function withTourer(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Understood' }).click();
  await page.getByRole('button', { name: TOURER }).click();
  await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
  await openLoad(page);
}

/** A choice of a station, by the station's name. */
const choice = (page: Page, station: string, name: string) =>
  sheet(page).getByRole('region', { name: station }).getByRole('button', { name, exact: true });

// Figures of airfields-demo/aircraft/sleet.json and tussock.json, added up by hand.
describe('the load of the jet', () => {
  test('is its usual one, until a preset or a choice is taken', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await openLoad(page);
    expect(await takeoff(page)).toBe('9 200 kg');
    expect(await mass(page, 'Landing')).toContain('7 300 kg of 8 200 kg');
    expect(await verdict(page)).toBe('Within the limits given: masses, tanks, stations.');
    await expect
      .poll(() =>
        sheet(page)
          .getByRole('button', { name: 'Usual', exact: true })
          .getAttribute('aria-pressed'),
      )
      .toBe('true');
    // 6 350 + 110 + 2 × 260 + 220 + 2 900.
    await key(page, 'All the mail').click();
    await expect.poll(() => takeoff(page)).toBe('10 100 kg');
    expect(
      await sheet(page)
        .getByRole('button', { name: 'Usual', exact: true })
        .getAttribute('aria-pressed'),
    ).toBe('false');
    await choice(page, 'Belly', 'None').click();
    await expect.poll(() => takeoff(page)).toBe('9 880 kg');
    await expect.poll(() => read(sheet(page))).toContain('gives no arms');
  });

  test('is told in a sentence where it is over, the number kept', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await beginSortie(page);
    await openLoad(page);
    await key(page, 'All the mail').click();
    await sheet(page).getByLabel('Fuel, kg').fill('3300');
    await expect.poll(() => verdict(page)).toContain('The take-off mass is 100 kg over its limit.');
    expect(await verdict(page)).toContain('The fuel is 100 kg more than the tanks hold.');
    expect(await sheet(page).getByLabel('Fuel, kg').inputValue()).toBe('3300');
    await key(page, 'Close').last().click();
    await expect
      .poll(() => read(page.getByRole('dialog', { name: 'Sortie' })))
      .toContain('The load is not within the limits given.');
  });

  test('without fuel has no masses, and with what is no number keeps the last', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await beginSortie(page);
    await openLoad(page);
    for (const text of ['', '0']) {
      await sheet(page).getByLabel('Fuel, kg').fill(text);
      await expect.poll(() => verdict(page)).toContain('There is no fuel aboard');
      expect(await mass(page, 'Take-off')).not.toMatch(/\d kg of/);
    }
    await sheet(page).getByLabel('Fuel, kg').fill('1000');
    await expect.poll(() => takeoff(page)).toBe('7 780 kg');
    for (const text of ['lots', '-5', '1e9', '100000']) {
      await sheet(page).getByLabel('Fuel, kg').fill(text);
      await expect.poll(() => sheet(page).getByText('A mass is a number').isVisible()).toBe(true);
      expect(await sheet(page).getByLabel('Fuel, kg').inputValue()).toBe(text);
      expect(await takeoff(page)).toBe('7 780 kg');
    }
  });

  test('outlives a reload, is undone, and goes with the aircraft', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await openLoad(page);
    await key(page, 'Circuits').click();
    await expect.poll(() => takeoff(page)).toBe('8 060 kg');
    await page.reload();
    await openLoad(page);
    expect(await takeoff(page)).toBe('8 060 kg');
    await key(page, 'Ferry').click();
    await expect.poll(() => takeoff(page)).toBe('9 780 kg');
    await sheet(page).getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => takeoff(page)).toBe('8 060 kg');
    await closeSheet(page);
    await page.getByRole('button', { name: TOURER }).click();
    await page.getByRole('button', { name: AIRCRAFT }).click();
    await expect.poll(() => page.getByText('Takes off at 9 200 kg.').isVisible()).toBe(true);
  });
});

describe('the slider', () => {
  test('is moved by keys, and all its moves are taken back as one', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await withTourer(page);
    await fuel(page).focus();
    for (let i = 0; i < 10; i += 1) await page.keyboard.press('ArrowRight');
    await expect.poll(() => sheet(page).getByLabel('Fuel, kg').inputValue()).toBe('90');
    expect(await takeoff(page)).toBe('1 050 kg');
    expect(await fuel(page).getAttribute('aria-valuetext')).toMatch(/^90\skg$/);
    await page.keyboard.press('End');
    await expect.poll(() => takeoff(page)).toBe('1 070 kg');
    await sheet(page).getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => takeoff(page)).toBe('1 040 kg');
  });

  test('is followed by the masses while it is dragged', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await withTourer(page);
    const box = await fuel(page).boundingBox();
    if (box === null) throw new Error('no slider');
    const y = box.y + box.height / 2;
    // The thumb stands at 80 of 110.
    await page.mouse.move(box.x + box.width * 0.71, y);
    await page.mouse.down();
    await page.mouse.move(box.x + 2, y, { steps: 4 });
    await expect.poll(() => verdict(page)).toContain('There is no fuel aboard');
    await page.mouse.move(box.x + box.width, y, { steps: 4 });
    await expect.poll(() => takeoff(page)).toBe('1 070 kg');
    await page.mouse.up();
    await page.reload();
    await openLoad(page);
    expect(await takeoff(page)).toBe('1 070 kg');
  });
});

describe('the centre of gravity', () => {
  test('is drawn in its envelope, and said beside it', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await withTourer(page);
    const plot = sheet(page).getByRole('img', { name: /^Envelope/ });
    // 2 157.3 kg·m over 1 040 kg, and 2 067.3 over 1 000.
    const name = (await plot.getAttribute('aria-label'))?.replace(/\s/g, ' ');
    expect(name).toContain('Within the envelope from take-off to landing.');
    expect(name).toContain('Take-off: 2.074 m at 1 040 kg. Landing: 2.067 m at 1 000 kg.');
    await key(page, 'Four up').click();
    await sheet(page).getByLabel('Baggage, kg').fill('54');
    await sheet(page).getByLabel('Fuel, kg').fill('40');
    await expect
      .poll(() => verdict(page))
      .toBe('The centre of gravity is too far aft at take-off.');
    await choice(page, 'Rear seats', '1').click();
    await expect.poll(() => verdict(page)).toContain('Within the limits given');
  });

  test('opens where it comes from over the load sheet, which is there again afterwards', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await withTourer(page);
    const arm = sheet(page).getByRole('button', { name: /^2\.074/ });
    await arm.click();
    const why = page.getByRole('dialog', { name: 'Take-off' });
    await expect.poll(() => read(why)).toContain('sum of every mass × its arm');
    await closeSheet(page);
    await expect.poll(() => why.count()).toBe(0);
    await expect.poll(() => arm.evaluate((one) => one === document.activeElement)).toBe(true);
    await closeSheet(page);
    await expect.poll(() => sheet(page).count()).toBe(0);
    await expect.poll(() => page.getByRole('dialog', { name: 'Sortie' }).isVisible()).toBe(true);
  });

  test('is told of the baggage that is more than may be there, beside it', async ({ open }) => {
    const page = await open('small phone', { at: EVENING });
    await withTourer(page);
    await sheet(page).getByLabel('Baggage, kg').fill('60');
    await expect.poll(() => verdict(page)).toBe('Baggage: 6 kg more than may be there.');
    await expect.poll(() => sheet(page).getByText('Baggage: 6 kg more').count()).toBe(2);
  });
});

test('the load sheet fits, a finger finds its keys, and axe has nothing to say', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await withTourer(page);
  const found: string[] = [];
  for (const load of ['Usual', 'Four up']) {
    await sheet(page).getByRole('button', { name: load, exact: true }).click();
    if (load === 'Four up') await sheet(page).getByLabel('Baggage, kg').fill('80');
    for (const [width, height] of SIZES) {
      await resize(page, { width, height });
      const where = `${load} at ${width} x ${height}`;
      for (const theme of THEMES) {
        await wear(page, theme);
        found.push(...(await misfits(page)).map((misfit) => `${where} by ${theme}: ${misfit}`));
        found.push(
          ...(await controls(page))
            .filter((control) => Math.min(control.width, control.height) + 1 < 44)
            .map((control) => `${where}: ${control.name} ${control.width} x ${control.height}`),
        );
      }
    }
    found.push(...(await objections(page)).map((objection) => `${load}, ${objection}`));
  }
  expect(found).toEqual([]);
});
