/** One verdict: what speaks against the runway in use is seen from everywhere, and stops before it. */

import type { Page } from 'playwright-core';
import { words } from '../../src/parts/verdict/words.en';
import { describe, expect, test } from './harness';
import {
  clockOf,
  closeSheet,
  comes,
  due,
  EVENING,
  goOnFrom,
  key,
  openPlace,
  openSortie,
  pressDeliberately,
  read,
  setWind,
  sortieKey,
  tick,
  tickAll,
  toSteps,
} from './pilot';

/** The line under the strip. */
const line = (page: Page) => page.getByRole('button', { description: words.opens });

async function beginAt(page: Page, field: string): Promise<void> {
  await page.getByRole('button', { name: 'Understood' }).click();
  await key(page, 'Ondrell Sleet 3').click();
  await key(page, new RegExp(`^${field}`)).click();
}

describe('a wind beyond a limit of the runway in use', () => {
  test('is seen from every place once it is set, and None looks like no answer', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginAt(page, 'XMAR');
    await setWind(page, '23012KT');
    await key(page, /^Use 23R/)
      .first()
      .click();
    await setWind(page, '30018G28');
    for (const place of ['Taxi', 'Steps', 'Numbers', 'Log', 'Wind']) {
      await openPlace(page, place);
      await expect.poll(() => read(line(page))).toMatch(/^Crosswind 2\d, limit 24/);
    }
    const none = page.getByText('None', { exact: true }).locator('..');
    const fill = (css: string) =>
      none.evaluate((box, name) => getComputedStyle(box)[name as 'color'], css);
    expect(await fill('background-color')).toBe('rgba(0, 0, 0, 0)');
    await setWind(page, '06015');
    await expect.poll(() => read(line(page))).toMatch(/^Tailwind 1\d, limit 10/);
    await line(page).click();
    await page.getByRole('dialog', { name: words.title('23R') }).waitFor();
    await expect
      .poll(() => read(page.getByRole('dialog')))
      .toContain('Another runway, or wait for the wind.');
  });
});

test('too short stops at the runway check until the pilot goes on, and again when it gets worse', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginAt(page, 'XTUM');
  await setWind(page, 'METAR XTUM 051850Z 31008KT CAVOK 38/12 Q1012');
  await key(page, /^Use 32/)
    .first()
    .click();
  await sortieKey(page).click();
  await key(page, /^Load/).first().click();
  await key(page, 'All the mail').click();
  await key(page, 'Close').last().click();
  await key(page, 'Close').last().click();
  await expect.poll(() => read(line(page))).toMatch(/^Too short|^Over maximum|^Cannot/);
  await openPlace(page, 'Steps');
  const wait = clockOf(page);
  await tickAll(page, wait);
  await expect.poll(() => read(page.getByRole('alert'))).toContain(words.stops);
  await comes(key(page, /^Continue outside limits/), wait);
  await pressDeliberately(page, key(page, /^Continue outside limits/), wait, words.hold);
  await expect.poll(() => read(line(page))).toContain(`${words.stops}: `);
  await tickAll(page, wait);
  await expect.poll(() => key(page, 'Brakes released').isVisible()).toBe(true);
  await openPlace(page, 'Wind');
  await setWind(page, 'METAR XTUM 051855Z 31004KT CAVOK 40/12 Q1012');
  await expect.poll(() => read(line(page))).toMatch(/^(Too short|Cannot)/);
  await openPlace(page, 'Steps');
  // What the report changed is done again first.
  await comes(page.getByRole('button', { name: /^(Done|Said|Continue outside limits)/ }), wait);
  if ((await key(page, /^Continue outside limits/).count()) === 0) await tickAll(page, wait);
  await comes(key(page, /^Continue outside limits/), wait);
});

test('a changed load asks for the fuel again, wet is seen everywhere, and both end with the sortie', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page, '27012KT');
  await goOnFrom(page, 'Ramp', 'Fuel');
  await tick(page);
  await expect.poll(() => due(page)).not.toContain('Fuel');
  await openSortie(page);
  await key(page, /^Load/).first().click();
  await key(page, 'Circuits').click();
  await key(page, 'Close').last().click();
  await page.getByRole('dialog').getByRole('button', { name: 'Wet', exact: true }).click();
  await closeSheet(page);
  await expect.poll(() => due(page)).toContain('Fuel 1 600 kg');
  for (const place of ['Wind', 'Numbers', 'Taxi', 'Steps']) {
    await openPlace(page, place);
    await expect.poll(() => read(line(page))).toMatch(/Aquaplaning from 108 kt|Runway wet/);
  }
  await key(page, 'Cannot').click();
  await key(page, 'Not simulated').click();
  await openSortie(page);
  await key(page, /^End the sortie/).click();
  await openPlace(page, 'Steps');
  await page.getByRole('button', { name: /^Ramp, \d/ }).click();
  const fuel = page.getByRole('dialog').getByRole('listitem').filter({ hasText: 'Fuel' }).first();
  await expect.poll(() => read(fuel)).toContain('not simulated');
  await closeSheet(page);
  await expect.poll(() => read(page.locator('header').first())).toContain('none');
  expect(await page.getByText('Runway wet').count()).toBe(0);
});
