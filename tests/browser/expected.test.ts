/**
 * What is forecast, beside the wind that blows, and the wind of another field.
 *
 * The Sleet's crosswind limit is 24 kt dry. Runway 23R of Marram Haven lies 220.5° true by the
 * places of its ends (geodesic): of 38 kt from 280°, 38 kt × sin (280° − 220.5°) = 32.7 kt blow
 * across it.
 */

import { describe, expect, test } from './harness';
import { EVENING, entry, key, read, setWind } from './pilot';
import { aboveAnswer, answer, beginAt, inSortie, paste, said, WITH_CLIPBOARD } from './weather';

const OPENED = { at: EVENING, ...WITH_CLIPBOARD };
const METAR = 'METAR XMAR 051830Z 23010KT 9999 FEW030 14/09 Q1009';

test('a trend beyond the limit is said on Wind, and what a forecast pasted with it expects is listed', async ({
  open,
}) => {
  const page = await open('phone', OPENED);
  await beginAt(page, 'XMAR');
  const taf = 'TAF XMAR 051700Z 0518/0618 24012KT PROB30 TEMPO 0522/0602 28025G38KT';
  await paste(page, `${METAR} TEMPO 28025G38KT=\n${taf}=`);
  await key(page, 'Use 23R').first().click();
  await expect
    .poll(() => aboveAnswer(page))
    .toContain('Within this report: 280° 25 gust 38, crosswind 33, limit 24, until 2030Z');
  await expect.poll(() => read(answer(page))).toContain('Headwind10 kt');
  const expected = page.getByRole('region', { name: 'Expected' });
  await expect.poll(() => read(expected)).toContain('Forecast for XMAR, 1800Z to 061800Z');
  expect(await read(expected)).toContain(
    'At times, 30 %, 2200Z to 060200Z280° 25 gust 38, crosswind 33, limit 24',
  );
});

describe('without a report', () => {
  test('a forecast gives the wind for now, said as forecast', async ({ open }) => {
    const page = await open('phone', OPENED);
    await beginAt(page, 'XMAR');
    await paste(page, 'TAF XMAR 051700Z 0518/0618 24012KT 9999');
    await expect
      .poll(() => said(page))
      .toMatch(/^Forecast, not observed\. From 240° true .* at 12 kt$/);
    await key(page, 'Use 23R').first().waitFor();
    await page.locator('header').first().getByText('Wind, forecast').waitFor();
    await setWind(page, '05008KT');
    await expect.poll(() => said(page)).toMatch(/^From 050° true/);
  });
});

test('a wind typed at another field is shown as its own, and counts once it is taken over', async ({
  open,
}) => {
  const page = await open('phone', OPENED);
  await beginAt(page, 'XHAR');
  await setWind(page, '27012KT');
  await page.clock.runFor(12 * 60_000);
  await inSortie(page, async (sheet) => {
    await sheet.getByRole('button', { name: /^XMAR/ }).click();
  });
  await page.getByText('Typed at XHAR, 12 min ago: 270° 12').waitFor();
  expect(await entry(page).inputValue()).toBe('');
  await key(page, 'Use it here').click();
  await expect.poll(() => said(page)).toMatch(/^From 270° true/);
  await page.locator('header').first().getByText('Wind, 12 min old').waitFor();
  expect(await page.getByText('Typed at XHAR').count()).toBe(0);
  await page.getByText('The wind of the other field is in use here.').waitFor();
});
