/** Every place says the same, and what is erased stays erased. */

import { expect, test } from './harness';
import { EVENING, entry, read } from './pilot';
import { beginAt } from './weather';

test('a wind in use that is erased leaves the entry empty, and what is typed next is all there is', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginAt(page, 'XHAR');
  await entry(page).click();
  await page.keyboard.type('27012KT');
  await page.keyboard.press('Enter');
  await entry(page).click();
  await entry(page).press('ControlOrMeta+a');
  await page.keyboard.press('Backspace');
  await expect.poll(() => entry(page).inputValue()).toBe('');
  await page.keyboard.type('3');
  await expect.poll(() => entry(page).inputValue()).toBe('3');
  // Left without a wind, the one in use stands again.
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Escape');
  await expect.poll(() => entry(page).inputValue()).toBe('27012KT');
});

test('a direction that was not reported is called variable nowhere', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await beginAt(page, 'XHAR');
  await entry(page).click();
  await page.keyboard.type('///12KT');
  await page.keyboard.press('Enter');
  const strip = page.locator('header').first();
  await expect.poll(() => read(strip)).toContain('— 12');
  expect(await read(strip)).not.toContain('variable');
});
