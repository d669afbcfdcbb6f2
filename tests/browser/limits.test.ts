/** What the pilot sets in Sortie: north, own limits, surface, variation. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { beginSortie, EVENING, key, openPlace, read, setWind, sortieKey } from './pilot';

const sheet = (page: Page) => page.getByRole('dialog', { name: 'Sortie' });

/** Opens Sortie, does something there and closes it. */
async function inSortie(page: Page, work: () => Promise<unknown>): Promise<void> {
  await sortieKey(page).click();
  await sheet(page).waitFor();
  await work();
  await sheet(page).getByRole('button', { name: 'Close' }).click();
}

/** The row of an end in the list of all. */
const end = (page: Page, name: string) =>
  page
    .getByRole('list', { name: 'Every runway, best first' })
    .getByRole('listitem')
    .filter({ has: page.getByRole('button', { name: new RegExp(`^(Use|Selected) ${name}`) }) });

describe('in Sortie', () => {
  test('a wind typed as magnetic is turned by the variation', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await inSortie(page, () => sheet(page).getByRole('button', { name: 'Magnetic' }).click());
    await setWind(page, '28012KT');
    // 280° magnetic less 14° W is 266° true, along runway 28.
    await expect
      .poll(() => read(page.getByRole('main')))
      .toContain('From 266° true (280° magnetic)');
    await expect.poll(() => read(end(page, '28'))).toContain('headwind 12');
  });

  test('an own crosswind limit below the aircraft’s makes ends fail in words', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    // Across 28 the gust is 22 kt × sin (290° − 266°) = 8.9 kt.
    await setWind(page, '29014G22KT');
    await expect.poll(() => read(end(page, '28'))).toContain('of 24');
    await inSortie(page, () => sheet(page).getByLabel('Crosswind, kt').fill('8'));
    await expect.poll(() => read(end(page, '28'))).toContain('Crosswind gust 9, limit 8');
    await expect
      .poll(() => read(page.getByRole('main')))
      .toContain('No runway is within the limits given');
    await openPlace(page, 'Numbers');
    await expect
      .poll(() =>
        read(page.locator('div', { has: page.locator('dt:text-is("Crosswind")') }).last()),
      )
      .toContain('8 kt');
  });

  test('a limit that is no limit is told, kept as typed, and changes nothing', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '29014G22KT');
    await inSortie(page, async () => {
      await sheet(page).getByLabel('Crosswind, kt').fill('eight');
      await expect.poll(() => sheet(page).getByText('A limit is a number').isVisible()).toBe(true);
      expect(await sheet(page).getByLabel('Crosswind, kt').inputValue()).toBe('eight');
    });
    await expect.poll(() => read(end(page, '28'))).toContain('of 24');
  });

  test('a wet surface brings the aircraft’s limit for it, and the steps for it', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '29014G22KT');
    await inSortie(page, () =>
      sheet(page).getByRole('button', { name: 'Wet', exact: true }).click(),
    );
    // airfields-demo/aircraft/sleet.json: 24 kt dry, 18 wet.
    await expect.poll(() => read(end(page, '28'))).toContain('of 18');
    await openPlace(page, 'Steps');
    await page.getByRole('button', { name: /^Ramp, / }).click();
    const row = page.getByRole('listitem').filter({ hasText: 'Windscreen air' });
    await expect.poll(() => read(row)).not.toContain('not needed');
  });

  test('a variation of the pilot’s own takes the place of the model’s', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '27012KT');
    await inSortie(page, () =>
      sheet(page)
        .getByLabel(/^Variation/)
        .fill('-10'),
    );
    await expect
      .poll(() => read(page.getByRole('main')))
      .toContain('From 270° true (280° magnetic)');
    await openPlace(page, 'Numbers');
    const variation = page.getByRole('button', { name: '10.0° W' });
    await variation.click();
    await expect.poll(() => read(page.getByRole('dialog'))).toContain('You, in Sortie.');
    await key(page, 'Close').click();
    await inSortie(page, () =>
      sheet(page)
        .getByLabel(/^Variation/)
        .fill(''),
    );
    await expect.poll(() => read(page.getByRole('main'))).toContain('14.0° W');
  });

  test('another field is taken with its ends, and can be taken back', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginSortie(page);
    await setWind(page, '27012KT');
    await key(page, 'Use 28').first().click();
    await inSortie(page, () => sheet(page).getByRole('button', { name: /^XMAR/ }).click());
    await expect.poll(() => read(key(page, /^Runway/).first())).toContain('none');
    await expect.poll(() => end(page, '28').count()).toBe(0);
    await key(page, 'Undo').click();
    await expect.poll(() => read(key(page, /^Runway/).first())).toContain('28');
    await expect.poll(() => read(key(page, /^Field/))).toContain('XHAR');
  });
});
