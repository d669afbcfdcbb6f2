/**
 * A whole report, as a pilot pastes it.
 *
 * Groups mean what WMO-No. 306, FM 15 says: BKN is 5 to 7 eighths, its height in hundreds of feet.
 * Runway 23R of Marram Haven lies 220° true by the places of its ends (geodesic). In 240° at 14 kt,
 * gust 22, swinging 210° to 270°, after FAA-H-8083-25, ch. 11, the gust across it at worst is
 * 22 kt × sin (270° − 220.5°) = 16.7 kt.
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { EVENING, key, openPlace, read, setWind } from './pilot';
import {
  aboveAnswer,
  answer,
  beginAt,
  card,
  cardRow,
  endRow,
  paste,
  said,
  WITH_CLIPBOARD,
} from './weather';

const REPORT =
  'METAR XMAR 051830Z 24014G22KT 210V270 6000 -SHRA FEW010 BKN012 SCT025CB 14/12 Q1009 ' +
  'TEMPO 27030G45KT 2000 SHRA RMK PK WND 25038/1812';

const OPENED = { at: EVENING, ...WITH_CLIPBOARD };

async function pasteReport(page: Page): Promise<void> {
  await beginAt(page, 'XMAR');
  await paste(page, REPORT);
  await key(page, 'Group by group').waitFor();
}

/** Taps on a group in the entry, where the mirror behind it shows that group. */
async function tapOn(page: Page, group: string): Promise<void> {
  const place = await page
    .locator('main [aria-hidden="true"]')
    .filter({ hasText: group })
    .first()
    .evaluate((mirror, wanted) => {
      const walker = document.createTreeWalker(mirror, NodeFilter.SHOW_TEXT);
      for (let text = walker.nextNode(); text !== null; text = walker.nextNode()) {
        const at = text.textContent?.indexOf(wanted) ?? -1;
        if (at < 0) continue;
        const range = document.createRange();
        range.setStart(text, at);
        range.setEnd(text, at + wanted.length);
        const { x, y, width, height } = range.getBoundingClientRect();
        return { x: x + width / 2, y: y + height / 2 };
      }
      throw new Error(`${wanted} is not shown`);
    }, group);
  await page.touchscreen.tap(place.x, place.y);
}

describe('a whole report', () => {
  test('is answered from its observed wind, not from what is expected or was', async ({ open }) => {
    const page = await open('tablet', OPENED);
    await pasteReport(page);
    await expect
      .poll(() => said(page))
      .toMatch(/^From 240° true \(\d{3}° magnetic\) at 14, gusting 22 kt, swinging 210° to 270°$/);
    await expect.poll(() => read(answer(page))).toContain('17 of 24 kt');
    expect(await read(page.getByRole('main'))).not.toMatch(/\b(45|38) kt\b/);
  });

  test('explains the group under the caret', async ({ open }) => {
    const page = await open('tablet', OPENED);
    await pasteReport(page);
    const meaning = page.locator('main [role="status"]');
    await tapOn(page, 'BKN012');
    await expect.poll(() => read(meaning)).toBe('Broken cloud, 5 to 7 eighths, base 1 200 ft');
    await tapOn(page, '-SHRA');
    await expect.poll(() => read(meaning)).toBe('Light showers of rain');
    // WMO-No. 306, FM 15, 15.14: after TEMPO stands what is expected.
    await tapOn(page, '27030G45KT');
    await expect.poll(() => read(meaning)).toMatch(/^Expected.*270° .*at 30, gusting 45 kt/);
  });

  test('is listed group by group, in the order of the report', async ({ open }) => {
    const page = await open('tablet', OPENED);
    await pasteReport(page);
    await key(page, 'Group by group').click();
    const sheet = page.getByRole('dialog', { name: 'The report, group by group' });
    const codes = () => sheet.locator('dt').allTextContents();
    await expect.poll(async () => (await codes()).join(' ')).toBe(REPORT);
    const meanings = await sheet.locator('dd').allTextContents();
    expect(meanings).toHaveLength((await codes()).length);
    expect(meanings.filter((meaning) => meaning === 'Not read')).toEqual([]);
  });

  test('asks whether the runway is wet, and changes nothing until the tap', async ({ open }) => {
    const page = await open('tablet', OPENED);
    await pasteReport(page);
    const question = card(page).getByText('treat the runway as wet?');
    await expect.poll(() => question.isVisible()).toBe(true);
    await expect.poll(() => read(endRow(page, '23R'))).toContain('of 24');
    await key(page, 'Treat as wet').click();
    // airfields-demo/aircraft/sleet.json: 24 kt dry, 18 wet.
    await expect.poll(() => read(endRow(page, '23R'))).toContain('of 18');
    expect(await question.count()).toBe(0);
    expect(await key(page, 'Treat as wet').count()).toBe(0);
    await openPlace(page, 'Numbers');
    await openPlace(page, 'Wind');
    await expect.poll(() => read(endRow(page, '23R'))).toContain('of 18');
  });

  test('gives QNH in both units and the air’s altitudes, each with its reason', async ({
    open,
  }) => {
    const page = await open('tablet', OPENED);
    await pasteReport(page);
    // 1 inHg is 33.8639 hPa (WMO-No. 8): 1009 / 33.8639 = 29.80.
    expect(await cardRow(page, 'QNH')).toBe('QNH1009 hPa 29.80 inHg');
    // The US National Weather Service's formula for pressure altitude, on the field's 187 ft.
    const pressureFt = 187 + 145_366.45 * (1 - (1009 / 1013.25) ** 0.190284);
    // FAA-H-8083-25, ch. 4: some 120 ft a degree away from the standard 15 °C less 2 °C a 1000 ft.
    const dryFt = pressureFt + 118.8 * (14 - (15 - 0.0019812 * pressureFt));
    // WMO-No. 8, Annex 4.B: vapour at the dew point of 12 °C; it weighs 0.622 of air, and 34 180 ft are the whole of density.
    const vapourHpa = 6.112 * Math.exp((17.62 * 12) / (243.12 + 12));
    const densityFt = dryFt + (34_180 * 0.378 * vapourHpa) / 1009;
    const shown = async (name: string) =>
      Number((await cardRow(page, name)).slice(name.length).replace(/[^\d−-]/g, ''));
    expect(Math.abs((await shown('Pressure altitude')) - pressureFt)).toBeLessThan(3);
    expect(Math.abs((await shown('Density altitude')) - densityFt)).toBeLessThan(20);
    for (const [name, input] of [
      ['QNH', 'The report in use.'],
      ['Pressure altitude', '1009 hPa QNH'],
      ['Density altitude', '°C temperature'],
    ] as const) {
      await card(page)
        .locator('dl > div', { has: page.getByText(name, { exact: true }) })
        .getByRole('button')
        .click();
      const why = page.getByRole('dialog', { name, exact: true });
      await expect.poll(() => read(why)).toContain(input);
      await why.getByRole('button', { name: 'Close' }).click();
    }
  });

  test('for another field, or of the day before yesterday, is pointed out', async ({ open }) => {
    const page = await open('tablet', OPENED);
    await beginAt(page, 'XHAR');
    await paste(page, 'METAR XMAR 031850Z 27012KT 9999 FEW020 08/04 Q1011');
    await expect
      .poll(() => aboveAnswer(page))
      .toContain('The report is for XMAR; the field is XHAR.');
    expect(await aboveAnswer(page)).toContain('The report is 2 days old by the sortie’s clock.');
    await paste(page, 'METAR XHAR 051820Z 27012KT 9999 FEW020 08/04 Q1011');
    await expect.poll(() => aboveAnswer(page)).not.toContain('The report is');
  });
});

describe('the winds so far', () => {
  const winds = [
    ['18:00', '29008KT'],
    ['18:25', '28010KT'],
    ['18:44', '27012G20KT 240V300'],
  ] as const;

  test('tell a trend from three on, with what it rests on', async ({ open }) => {
    const page = await open('tablet', { at: new Date('1987-04-05T18:00:00Z') });
    await beginAt(page, 'XHAR');
    const history = page.getByRole('region', { name: 'Winds entered' });
    for (const [index, [time, wind]] of winds.entries()) {
      const before = winds[index - 1]?.[0] ?? time;
      const minutes = (of: string) => 60 * Number(of.slice(0, 2)) + Number(of.slice(3));
      await page.clock.runFor((minutes(time) - minutes(before)) * 60_000);
      await setWind(page, wind);
      if (index === 1) {
        await expect.poll(() => history.getByRole('listitem').count()).toBe(2);
        expect(await read(history)).not.toMatch(/Backed|rose|Steady/);
      }
    }
    // From 290° to 270° anticlockwise is backing by 20°; the steady wind rose from 8 kt to 12.
    await expect.poll(() => read(history)).toContain('Backed 20° and rose 4 kt in 44 min');
    expect(await read(history)).toContain(
      'From 3 winds, carried on in a straight line: no forecast.',
    );
    // The sun stands in the west that evening, ahead of 28 (tests/reference/sun.test.ts).
    await expect.poll(() => read(answer(page))).toMatch(/Low sun \d+° (left|right), until \d{4}Z/);
  });
});

test('a wind from the tower changes the wind alone, and of typed and reported air the newer counts', async ({
  open,
}) => {
  const page = await open('phone', OPENED);
  await beginAt(page, 'XTUM');
  await paste(page, 'METAR XTUM 051850Z 31008KT CAVOK 38/12 Q1012');
  await card(page).waitFor();
  await setWind(page, '33009KT');
  await card(page).getByText('All but the wind is from the report of 1850Z.').waitFor();
  expect(await cardRow(page, 'Temperature')).toContain('38 °C');
  expect(await cardRow(page, 'QNH')).toContain('1012 hPa');
  // However many lines an end falls short in, no row reaches into the next.
  const reaching = await page
    .getByRole('list', { name: 'Every runway, best first' })
    .getByRole('listitem')
    .evaluateAll((rows) => rows.filter((row) => row.scrollHeight > row.clientHeight + 1).length);
  expect(reaching).toBe(0);

  const temperature = () =>
    read(page.locator('dl > div', { has: page.locator('dt:text-is("Temperature")') }).first());
  await openPlace(page, 'Numbers');
  await expect.poll(temperature).toContain('38 °C');
  await page.getByLabel('Temperature, °C').fill('25');
  await expect.poll(temperature).toContain('25 °C');
  await openPlace(page, 'Wind');
  await paste(page, 'METAR XTUM 051900Z 31008KT CAVOK 37/12 Q1012');
  await openPlace(page, 'Numbers');
  await expect.poll(temperature).toContain('37 °C');
  await key(page, 'Use 25 °C').click();
  await expect.poll(temperature).toContain('25 °C');
});
