/** Today's numbers: from mass, air and wind, each with its reason, and what they change. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import {
  closeSheet,
  EVENING,
  goOnFrom,
  key,
  openPlace,
  setWind,
  sortieKey,
  toSteps,
} from './pilot';

const REPORT = 'METAR XHAR 051850Z 27012G20KT 9999 FEW030 14/06 Q1009';

/** The number after a name in a list. */
const numberBehind = (page: Page, name: string) =>
  page
    .locator('dl > div')
    .filter({ has: page.locator('dt', { hasText: new RegExp(`^${name}$`) }) })
    .getByRole('button')
    .first();

const metres = async (page: Page, name: string) =>
  Number(((await numberBehind(page, name).textContent()) ?? '').replace(/\D/g, ''));

async function toNumbers(page: Page): Promise<void> {
  await toSteps(page, REPORT);
  await openPlace(page, 'Numbers');
  await page.getByRole('heading', { name: 'Take-off on 28' }).waitFor();
}

describe('Numbers', () => {
  test('stands on today’s mass, air and wind, and says so', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    // 4 hPa below standard are some 110 ft, and the field lies some 50 ft above the sea: airfields-demo/fields/XHAR.json.
    expect(await numberBehind(page, 'Temperature').textContent()).toBe('14\u00a0°C');
    expect(await metres(page, 'Pressure altitude')).toBeGreaterThan(120);
    expect(await metres(page, 'Pressure altitude')).toBeLessThan(220);
    await expect.poll(() => page.getByText('headwind 12 kt').isVisible()).toBe(true);
    // Half of the headwind is planned with, so more is needed than expected.
    const pair = page
      .locator('dl > div')
      .filter({ hasText: /^Take-off run/ })
      .getByRole('button');
    const [planned = 0, expected = 0] = (await pair.allTextContents()).map((text) =>
      Number(text.replace(/\D/g, '')),
    );
    expect(planned).toBeGreaterThan(expected);
    // TORA of 28 is 1 400 m: airfields-demo/fields/XHAR.json.
    expect(planned + (await metres(page, 'TORA margin'))).toBeGreaterThanOrEqual(1399);
    expect(planned + (await metres(page, 'TORA margin'))).toBeLessThanOrEqual(1401);
  });

  test('a heading keeps its distance from the scale above it', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const heading = page.getByRole('heading', { name: 'Lengths and speeds' }).first();
    const gap = await heading.evaluate((one) => {
      const above = one.closest('section')?.querySelectorAll('span') ?? [];
      const top = one.getBoundingClientRect().top;
      const bottoms = [...above]
        .map((text) => text.getBoundingClientRect().bottom)
        .filter((bottom) => bottom <= top + 4);
      return top - Math.max(...bottoms);
    });
    // As much as between the heading's own lines.
    expect(gap).toBeGreaterThan(12);
  });

  test('every number opens its reason', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toNumbers(page);
    await numberBehind(page, 'TORA margin').click();
    const sheet = page.getByRole('dialog');
    await sheet.getByText('available − where the roll begins − what is needed').waitFor();
    await expect.poll(() => sheet.getByText('1 400 m', { exact: true }).isVisible()).toBe(true);
  });

  test('a hot day lengthens the run, and puts an end that is too short outside the limits', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const before = await metres(page, 'Run, planned');
    await page.getByLabel('Temperature, °C').fill('38');
    await expect.poll(() => metres(page, 'Run, planned')).toBeGreaterThan(before + 100);
    await openPlace(page, 'Wind');
    // 01/19 is 1 340 m: airfields-demo/fields/XHAR.json.
    const of19 = page.getByRole('listitem').filter({ has: key(page, 'Use 19') });
    await expect.poll(() => of19.textContent()).toMatch(/TODA: needs 1\s\d{3}\sm, has 1\s340\sm/);
  });

  test('what is planned says its factor, and goes by another that is chosen', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const assumed = page.getByText(/^Planned with: /).first();
    // 14 CFR 25.113; airfields-demo/aircraft/sleet.json gives no other.
    await expect.poll(() => assumed.textContent()).toContain('book factor 1.15, half the headwind');
    const before = await metres(page, 'Run, planned');
    await key(page, 'None').click();
    await expect.poll(() => assumed.textContent()).toContain('no factor');
    await expect
      .poll(async () => Math.abs((await metres(page, 'Run, planned')) - before / 1.15))
      .toBeLessThanOrEqual(1);
  });

  test('a parachute that cannot be used is not counted on, until it is again', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const last = () => metres(page, 'Max abort speed');
    const counted = await last();
    await key(page, 'Count on the parachute').click();
    await expect.poll(last).toBeLessThan(counted);
    await key(page, 'Count on the parachute').click();
    await expect.poll(last).toBe(counted);
  });

  test('a parachute that a step or the options say is not there is not counted on', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const last = () => metres(page, 'Max abort speed');
    const counted = await last();
    await sortieKey(page).click();
    const option = page.getByRole('dialog').getByRole('button', { name: 'Brake chute packed' });
    await option.click();
    await closeSheet(page);
    await expect.poll(last).toBeLessThan(counted);
    await expect
      .poll(() => page.getByText('by the equipment in Sortie there is none').count())
      .toBe(1);
    await sortieKey(page).click();
    await option.click();
    await closeSheet(page);
    await expect.poll(last).toBe(counted);

    await openPlace(page, 'Steps');
    await goOnFrom(page, 'Ramp', 'Chute');
    await key(page, 'Cannot').click();
    await page.getByRole('dialog').getByRole('button', { name: 'Does not work' }).click();
    await openPlace(page, 'Numbers');
    await expect.poll(last).toBeLessThan(counted);
    await expect.poll(() => page.getByText('a step says that it cannot be used').count()).toBe(1);
  });

  test('an impossible entry keeps what was typed, with a sentence, and the numbers as they were', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const before = await metres(page, 'Run, planned');
    await page.getByLabel('QNH, hPa').fill('29');
    await page.getByText('850 to 1085 hPa').waitFor();
    expect(await page.getByLabel('QNH, hPa').inputValue()).toBe('29');
    expect(await metres(page, 'Run, planned')).toBe(before);
  });

  test('tables are worked out when they are opened, and today is framed', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    await page.getByText('Crosswind by angle and speed').click();
    const table = page.getByRole('table').first();
    // sin 30° is a half: FAA-H-8083-25, ch. 11.
    const row = table
      .getByRole('row')
      .filter({ has: page.getByRole('rowheader', { name: '30°' }) });
    expect(await row.getByRole('cell').allTextContents()).toEqual(
      [5, 10, 15, 20, 25, 30, 35, 40].map((kt) => String(Math.round(kt / 2))),
    );
    await expect.poll(() => table.getByLabel(/today$/).count()).toBe(1);
  });

  test('for a landing the landing stands first', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    await openPlace(page, 'Wind');
    await key(page, /^Judged for take-off|^For take-off/)
      .first()
      .click();
    await openPlace(page, 'Numbers');
    const inOrder = async () => {
      const titles = await page.getByRole('heading', { level: 2 }).allTextContents();
      return titles.flatMap((title) => /^(Landing|Take-off)/.exec(title)?.[1] ?? []);
    };
    await expect.poll(inOrder).toEqual(['Landing', 'Take-off']);
  });

  test('a wind that changes changes the numbers', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toNumbers(page);
    const before = await metres(page, 'Run, planned');
    await openPlace(page, 'Wind');
    await setWind(page, '28002KT');
    await openPlace(page, 'Numbers');
    await expect.poll(() => metres(page, 'Run, planned')).toBeGreaterThan(before);
  });
});
