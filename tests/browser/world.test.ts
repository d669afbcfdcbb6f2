/** The world's fields: fetched when the pilot says so, then found by name, and there without a network. */

import { words as search } from '../../src/parts/fieldSearch/words.en';
import { words } from '../../src/parts/fieldSearch/worldWords.en';
import { words as caution } from '../../src/shell/words.en';
import { words as wind } from '../../src/views/wind/words.en';
import { objections } from './accessible';
import { expect, test } from './harness';
import { AIRCRAFT, key, openSortie, read, setWind } from './pilot';

const FETCH = /^Fetch \d\.\d/;

test('from a first start a real field is found and its best runway shown within six taps, and it is there without a network', async ({
  device,
  host,
}) => {
  let page = await device.start('phone');
  let taps = 0;
  const tap = async (name: Parameters<typeof key>[1]) => {
    taps += 1;
    await key(page, name).click();
  };
  await tap(caution.caution.understood);
  await tap(AIRCRAFT);
  taps += 1;
  const box = page.getByRole('searchbox', { name: search.label });
  await box.fill('frankfrut');
  await page.getByText(words.caution, { exact: true }).waitFor();
  await tap(FETCH);
  await tap(/^EDDF/);
  await setWind(page, '26012KT');
  await key(page, wind.use('25L'))
    .or(key(page, wind.use('25R')))
    .or(key(page, wind.use('25C')))
    .first()
    .waitFor();
  expect(taps).toBeLessThanOrEqual(6);
  expect(await objections(page)).toEqual([]);

  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await device.shut();
  await host.stop();
  page = await device.start('phone');
  await expect.poll(() => read(page.locator('header').first())).toContain('EDDF');
  await openSortie(page);
  await page.getByRole('heading', { name: search.nearest('EDDF') }).waitFor();
  await page.getByRole('searchbox', { name: search.label }).fill('keflavik');
  await key(page, /^BIKF/).click();
  await expect.poll(() => read(page.locator('header').first())).toContain('BIKF');
});

test('a fetch that fails says so, and what comes damaged is refused', async ({
  open,
  problems,
}) => {
  const page = await open('phone');
  let answer: 'nothing' | 'damage' = 'nothing';
  await page.route(/world-.*\.bin$/, (route) =>
    answer === 'nothing' ? route.abort() : route.fulfill({ body: 'no such set' }),
  );
  await key(page, caution.caution.understood).click();
  await key(page, search.world).click();
  await key(page, FETCH).click();
  await page.getByRole('alert').filter({ hasText: words.unavailable }).waitFor();
  answer = 'damage';
  await key(page, words.again).click();
  await page.getByRole('alert').filter({ hasText: words.damaged }).waitFor();
  await page.unroute(/world-.*\.bin$/);
  await key(page, words.again).click();
  await page.getByText(words.hint).waitFor();
  // The browser tells of the request that was let fail.
  problems.splice(0, problems.length, ...problems.filter((problem) => !problem.includes('world-')));
});
