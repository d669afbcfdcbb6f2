/**
 * Why one end stands above another, and what the pilot knows of an end today.
 *
 * Runway 28 of Harrow Sound lies 266° true, 01 lies 356° true (geodesic, by the places of their ends).
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { EVENING, read, setWind } from './pilot';
import { answer, beginAt, endRow, inSortie, paste, WITH_CLIPBOARD } from './weather';

async function openEnd(page: Page, end: string) {
  await endRow(page, end).getByRole('button').nth(1).click();
  return page.getByRole('dialog', { name: `Runway ${end}`, exact: true });
}

const endsInOrder = async (page: Page) =>
  (
    await page
      .getByRole('list', { name: 'Every runway, best first' })
      .getByRole('button')
      .allTextContents()
  )
    .map((text) => /^(?:Use|Selected)\s*(\d\d[LRC]?)$/.exec(text.trim())?.[1])
    .filter((end) => end !== undefined);

describe('the sheet of an end', () => {
  test('names the rule that decides', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginAt(page, 'XHAR');
    // From 280° the headwind on 28 is 12 kt × cos 14° = 11.6, on 01 12 kt × cos 76° = 2.9: both within.
    await setWind(page, '28012KT');
    const sheet = await openEnd(page, '01');
    await expect.poll(() => read(sheet.locator('caption'))).toBe('Why 28 before 01');
    const deciding = sheet.locator('tbody tr').filter({ hasText: 'decides' });
    await expect.poll(() => deciding.count()).toBe(1);
    const row = await read(deciding);
    expect(row).toContain('Most headwind');
    expect(row).toContain('2.9 kt');
    expect(row).toContain('11.6 kt');
  });

  test('closes it for today: best moves, the list says why; opening it again takes that back', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await beginAt(page, 'XHAR');
    await setWind(page, '28012KT');
    await expect.poll(async () => (await endsInOrder(page))[0]).toBe('28');
    const sheet = await openEnd(page, '28');
    await sheet.getByRole('button', { name: 'Close it for today' }).click();
    await sheet.getByRole('button', { name: 'Close', exact: true }).click();
    await expect.poll(() => read(answer(page))).toContain('Use 01');
    await expect.poll(() => read(endRow(page, '28'))).toContain('Closed today');
    expect(await endRow(page, '28').getByRole('button').first().isDisabled()).toBe(true);
    const again = await openEnd(page, '28');
    await again.getByRole('button', { name: 'Closed today; open it' }).click();
    await again.getByRole('button', { name: 'Close', exact: true }).click();
    await expect.poll(() => read(answer(page))).toContain('Use 28');
    expect(await read(endRow(page, '28'))).not.toContain('Closed today');
  });
});

describe('in Sortie', () => {
  test('the field’s preferred ends come first when the pilot prefers them, and weather lets them', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING, ...WITH_CLIPBOARD });
    await beginAt(page, 'XMAR');
    // 05L lies 040° true: into a wind of 5 kt from there, 5 kt tail on the preferred 23R, the most
    // that ICAO Doc 8168 lets a preference ask for.
    await paste(page, 'METAR XMAR 051830Z 04005KT 9999 FEW030 14/04 Q1009');
    await expect.poll(async () => (await endsInOrder(page))[0]).toMatch(/^05/);
    await inSortie(page, (sheet) => sheet.getByRole('button', { name: 'Prefer them' }).click());
    await expect.poll(async () => (await endsInOrder(page))[0]).toBe('23R');
    await expect.poll(() => read(page.getByRole('main'))).toContain('Preferred by the field');
    await paste(page, 'METAR XMAR 051830Z 04009KT 9999 FEW030 14/04 Q1009');
    await expect.poll(async () => (await endsInOrder(page))[0]).toMatch(/^05/);
  });

  test('an own limit for gusts takes every end out, in words', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await beginAt(page, 'XHAR');
    await setWind(page, '27012G24KT');
    await inSortie(page, (sheet) => sheet.getByLabel('Gust above the wind, kt').fill('10'));
    await expect
      .poll(() => read(endRow(page, '28')))
      .toContain('Gust 12 kt above the wind, limit 10');
    await expect
      .poll(() => read(page.getByRole('main')))
      .toContain('No runway is within the limits given');
  });
});
