/** The pilot's choice of units: it changes every place at once, and stays with the device. */

import type { Page } from 'playwright-core';
import { words as units } from '../../src/views/device/unitWords.en';
import { words as load } from '../../src/views/load/words.en';
import { words as numbers } from '../../src/views/numbers/words.en';
import { describe, expect, test } from './harness';
import { closeSheet, EVENING, key, openDevice, openPlace, toSteps } from './pilot';

const REPORT = 'METAR XHAR 051850Z 27012G20KT 9999 FEW030 14/06 Q1009';

/** Metres, kilograms and hectopascals that can be read in what is on the screen. */
const metric = async (
  page: Page,
  within: 'main' | 'dialog' = 'main',
): Promise<readonly string[]> => {
  const text = (await page.getByRole(within).last().textContent()) ?? '';
  // The report itself keeps its words.
  return text.match(/\d\s?(?:m|kg|hPa)(?![\w/])/g) ?? [];
};

async function choose(page: Page): Promise<void> {
  await openDevice(page);
  for (const name of [units.lengths.ft, units.pressures.inHg, units.masses.lb])
    await key(page, name).click();
  await key(page, units.localTime).click();
  await closeSheet(page);
}

describe('units', () => {
  test('change in every place at once, and outlive a reload', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page, REPORT);
    await openPlace(page, 'Wind');
    // TORA of 28 is 1 400 m: airfields-demo/fields/XHAR.json; 1 400 / 0.3048 = 4 593.2.
    await page.getByText('1 400 m').first().waitFor();
    await choose(page);
    await page.getByText('4 593 ft').first().waitFor();
    // Q1009 is 29.80 inHg: 1 009 / 33.8639 = 29.796.
    await page.getByText('29.80 inHg').first().waitFor();
    await page.reload();
    await page.getByText('4 593 ft').first().waitFor();

    await openPlace(page, 'Taxi');
    await expect.poll(() => page.getByRole('main').textContent()).toMatch(/\d\sft/);
    await expect.poll(() => metric(page)).toEqual([]);

    await openPlace(page, 'Numbers');
    await page.getByRole('heading', { name: 'Take-off on 28' }).waitFor();
    await expect.poll(() => metric(page)).toEqual([]);
    const qnh = page.getByLabel(numbers.qnh('inHg'));
    await qnh.fill('29.92');
    await qnh.blur();
    await expect.poll(() => qnh.inputValue()).toBe('29.92');
    await qnh.fill('1013');
    await page.getByText(numbers.between('25.11', '32.04', 'inHg')).waitFor();
    await qnh.fill('');

    await key(page, numbers.openLoad).click();
    await page.getByLabel(load.fuelIn('lb')).waitFor();
    // Only arms stay in the metres of the aircraft's document.
    await expect
      .poll(async () => (await metric(page, 'dialog')).filter((one) => !one.endsWith('m')))
      .toEqual([]);
    await closeSheet(page);
  });

  test('every number beside the run says where it comes from', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page, REPORT);
    await openPlace(page, 'Numbers');
    const asked = async (name: string | RegExp, formula: string) => {
      await key(page, name).first().click();
      await page.getByRole('dialog').getByText(formula).waitFor();
      await closeSheet(page);
    };
    await asked(/^headwind \d+ kt$/, 'at the angle in the swing farthest');
    await asked(/^TORA 1\s400\sm$/, 'take-off run available, as declared');
    await asked(/^margin /, 'available − where the roll begins');
    await asked(/^1\s340$/, 'as declared');
  });
});
