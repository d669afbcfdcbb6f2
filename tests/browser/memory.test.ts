/** What is held back again and again is said where its phase begins, and can be done earlier. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { dialog, look, saved } from './logFiles';
import {
  clockOf,
  due,
  EVENING,
  key,
  openPlace,
  pressDeliberately,
  read,
  sortieKey,
  tick,
  toSteps,
} from './pilot';

const OXYGEN = 'Oxygen flowing, hose clipped';

/** Flies the beginning of a sortie, holds the oxygen back or does it, and ends the sortie. */
async function fly(page: Page, hold: boolean): Promise<void> {
  while ((await due(page)) !== OXYGEN) await tick(page);
  if (hold) await pressDeliberately(page, key(page, 'Later'), clockOf(page));
  else await tick(page);
  await expect.poll(() => due(page)).not.toBe(OXYGEN);
  await tick(page);
  await sortieKey(page).tap();
  await page.getByRole('dialog').getByRole('button', { name: 'End the sortie' }).tap();
  await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
}

const said = (page: Page) => read(page.getByRole('list', { name: 'Just before' }));

describe('the memory of the steps', () => {
  test('says what is held back most often, where its phase begins', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await fly(page, true);
    // Once may be chance.
    expect(await said(page)).not.toContain('Oxygen');
    await fly(page, false);
    await fly(page, true);
    await expect.poll(() => said(page)).toContain('Oxygen: put off in 2 of your last 3');
    await tick(page);
    await expect.poll(() => said(page)).not.toContain('your last');
  });

  test('counts what was flown on another device, and once, though its log was brought twice', async ({
    open,
  }) => {
    const there = await open('phone', { at: EVENING });
    await toSteps(there);
    await fly(there, true);
    await fly(there, true);
    await openPlace(there, 'Log');
    const { text } = await saved(there, 'Save as JSON');
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await fly(page, false);
    expect(await said(page)).not.toContain('Oxygen');
    for (const outcome of ['Added:', 'All of it was here already.']) {
      await openPlace(page, 'Log');
      await look(page, text);
      await key(page, 'Merge it').click();
      await expect.poll(() => read(dialog(page))).toContain(outcome);
      await dialog(page).getByRole('button', { name: 'Close' }).click();
      await openPlace(page, 'Steps');
      await expect.poll(() => said(page)).toContain('Oxygen: put off in 2 of your last 3');
    }
    await page.reload();
    await expect.poll(() => said(page)).toContain('Oxygen: put off in 2 of your last 3');
  });

  test('lets it be done earlier with a tap, in every sortie from then on', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await fly(page, true);
    await fly(page, true);
    await key(page, 'Do it earlier: Oxygen').tap();
    await key(page, 'before Stick and pedals (Ramp)').tap();
    await expect.poll(() => said(page)).not.toContain('your last');
    const order = [await tick(page), await tick(page)];
    await expect.poll(() => due(page)).toBe(OXYGEN);
    expect(order).toHaveLength(2);
    await page.reload();
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page)).toBe(OXYGEN);
    await fly(page, false);
    await tick(page);
    await tick(page);
    await expect.poll(() => due(page)).toBe(OXYGEN);

    // The list of the phase puts it back.
    await page.getByRole('button', { name: /^Ramp, \d/ }).tap();
    await page
      .getByRole('dialog')
      .getByRole('listitem')
      .filter({ hasText: 'Oxygen' })
      .getByRole('button', { name: 'Put it back' })
      .tap();
    await key(page, 'Close').tap();
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');
  });

  test('asks once more for what was not needed, when the evening gets dark', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    while (!(await due(page)).startsWith('Brief')) await tick(page);
    await tick(page);
    await expect.poll(() => due(page)).toContain('Taxi call');
    await page.getByRole('button', { name: /^Ramp, \d/ }).tap();
    const lamps = page.getByRole('dialog').getByRole('listitem').filter({ hasText: 'Position' });
    await expect.poll(() => read(lamps)).toMatch(/not needed: sun up, decided 185\dZ/);
    await key(page, 'Close').tap();
    // Sunset of 5 April 1987 at 62.95° N 10.55° W is 1937Z (NOAA solar equations, arithmetic).
    await page.clock.runFor(60 * 60_000);
    await expect.poll(() => page.getByText('Needed now: sun down').isVisible()).toBe(true);
    await expect.poll(() => due(page)).toBe('Position lights steady');
  });
});
