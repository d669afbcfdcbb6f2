/** What a pilot does again and again, done as a pilot does it. */

import type { Page } from 'playwright-core';

/** The aircraft and the field that tests fly with unless they say otherwise; both invented. */
export const AIRCRAFT = 'Ondrell Sleet 3';
export const FIELD = 'XHAR';

/** Goes from the first start to the entry where winds are typed. */
export async function beginSortie(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Understood' }).click();
  await page.getByRole('button', { name: AIRCRAFT }).click();
  await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
}

/** Types a wind into the entry at the keyboard, and waits for the key that takes the best end. */
export async function typeWind(page: Page, text: string): Promise<void> {
  const entry = page.getByRole('textbox', { name: 'Wind or report' });
  await entry.click();
  await entry.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .waitFor();
}
