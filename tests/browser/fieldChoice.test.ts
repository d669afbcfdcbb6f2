/** Choosing a field: one search in Sortie and at the first start, by touch and by keyboard. */

import { words as search } from '../../src/parts/fieldSearch/words.en';
import { words as caution } from '../../src/shell/words.en';
import { words as wind } from '../../src/views/wind/words.en';
import { objections } from './accessible';
import { expect, test } from './harness';
import { AIRCRAFT, beginSortie, EVENING, key, openSortie, read, setWind } from './pilot';

test('at the first start a field is found by a name with a slip, and its best runway is shown within six taps', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  let taps = 0;
  const tap = async (name: Parameters<typeof key>[1]) => {
    taps += 1;
    await key(page, name).click();
  };
  await tap(caution.caution.understood);
  await tap(AIRCRAFT);
  taps += 1;
  await page.getByRole('searchbox', { name: search.label }).fill('marrma');
  await expect.poll(() => page.getByRole('button', { name: /^X/ }).count()).toBe(1);
  await tap(/^XMAR/);
  await setWind(page, '23012KT');
  await key(page, wind.use('23R')).first().waitFor();
  expect(taps).toBeLessThanOrEqual(6);
});

test('in Sortie by keyboard: the arrows lead from the box to what is found, and Enter takes it', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await openSortie(page);
  const box = page.getByRole('searchbox', { name: search.label });
  await box.focus();
  await page.keyboard.type('no such field');
  await page.getByText(search.none).waitFor();
  await box.fill('tumbrel');
  await page
    .getByRole('status')
    .filter({ hasText: search.found(1) })
    .waitFor({ state: 'attached' });
  await box.fill('');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  const second = await read(page.locator(':focus'));
  await page.keyboard.press('Enter');
  await expect.poll(() => read(page.locator('header').first())).toContain(second.slice(0, 4));
  expect(await objections(page)).toEqual([]);
});
