/**
 * The page itself never scrolls: what is longer than its place scrolls within it, so that no swipe
 * moves the strip or the keys away.
 */

import type { Page } from 'playwright-core';
import { misfits, pageScroll, resize } from './fitting';
import { expect, test } from './harness';
import { doneKey, key, openPlace, setWind, toSteps, typeAnything } from './pilot';

/** Phones and tablets, upright and on their side, and the narrowest page that must do, CSS px. */
const SIZES = [
  [320, 640],
  [360, 640],
  [390, 844],
  [844, 390],
  [820, 1180],
  [1180, 820],
] as const;

/** 320 CSS px is what a page 1280 px wide has at a zoom of 400 %: WCAG 2.2, 1.4.10 Reflow. */
const NARROWEST_PX = 320;

/** What is moved away, or wider than the page, on each screen. */
async function wrongOn(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const [width, height] of SIZES) {
    await resize(page, { width, height });
    const scroll = await pageScroll(page);
    const fits = width === NARROWEST_PX ? await misfits(page) : [];
    found.push(...[...scroll, ...fits].map((one) => `${name} at ${width} x ${height}: ${one}`));
  }
  await resize(page, { width: 390, height: 844 });
  return found;
}

test('no place scrolls the page on any screen, down to 320 px wide', async ({ open }) => {
  const page = await open('phone', { path: '#/wind' });
  await toSteps(page, '27012G20KT 240V300');
  const found = await wrongOn(page, 'Steps');
  for (const name of ['Wind', 'Taxi', 'Numbers', 'Log']) {
    await openPlace(page, name);
    await page.getByRole('heading', { level: 1, name }).waitFor({ state: 'attached' });
    found.push(...(await wrongOn(page, name)));
  }
  await openPlace(page, 'Wind');
  await typeAnything(page, '31036G48KT 280V340');
  await key(page, 'Set wind').waitFor();
  found.push(...(await wrongOn(page, 'the keypad')));
  await setWind(page, '27012G20KT 240V300');
  await openPlace(page, 'Steps');
  await key(page, 'Big card').click();
  await key(page, 'Close').waitFor();
  found.push(...(await wrongOn(page, 'the Big card')));
  await key(page, 'Close').click();
  await doneKey(page).waitFor();
  expect(found).toEqual([]);
});

test('neither does the page that watches', async ({ device }) => {
  const pilot = await device.start('phone');
  await toSteps(pilot);
  const audience = await device.another({ path: '#/watch' });
  await audience.getByText('Seat pins').first().waitFor();
  expect(await wrongOn(audience, 'watch')).toEqual([]);
});
