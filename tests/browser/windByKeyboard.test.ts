/** Wind by keyboard and screen reader: what is said, and the order in which keys are reached. */

import type { Page } from 'playwright-core';
import { expect, test } from './harness';
import { closeSheet, EVENING, entry, key, read, setWind } from './pilot';
import { answer, beginAt, card, paste, said, WITH_CLIPBOARD } from './weather';

/** The name of the focused element. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    return (at?.getAttribute('aria-label') ?? at?.textContent ?? '').replace(/\s+/g, ' ').trim();
  });

/** What Tab reaches in turn, until it reaches `last`. */
async function tabTo(page: Page, last: RegExp): Promise<string[]> {
  const visited: string[] = [];
  while (visited.length < 60) {
    await page.keyboard.press('Tab');
    visited.push(await focused(page));
    if (last.test(visited.at(-1) ?? '')) return visited;
  }
  throw new Error(`never reached ${last}: ${visited.join(' | ')}`);
}

/** The positions of the expected items among those visited; they must come in this order. */
function expectOrder(visited: readonly string[], wanted: readonly RegExp[]): void {
  const places = wanted.map((name) => visited.findIndex((one) => name.test(one)));
  expect(places, visited.join(' | ')).not.toContain(-1);
  expect(
    [...places].sort((a, b) => a - b),
    visited.join(' | '),
  ).toEqual(places);
}

test('what was read and the answer are said as they change', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await beginAt(page, 'XHAR');
  await setWind(page, '28012KT');
  await expect.poll(() => said(page)).toContain('From 280° true');
  expect(await answer(page).getAttribute('aria-live')).toBe('polite');
  await expect.poll(() => read(answer(page))).toMatch(/^Best runway\s*28/);
  await entry(page).press('ControlOrMeta+a');
  await page.keyboard.type('01012KT');
  await expect.poll(() => read(answer(page))).toMatch(/^Best runway\s*01/);
  await expect.poll(() => said(page)).toContain('From 010° true');
});

test('Tab goes from the entry over its keys to the answer, then to the keypad', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await beginAt(page, 'XHAR');
  await setWind(page, '28012KT');
  await expect.poll(() => read(answer(page))).toContain('° mag');
  await entry(page).click();
  await key(page, 'Set wind').waitFor();
  const visited = await tabTo(page, /^Set wind$/);
  expectOrder(visited, [/north/, /mag$/, /^Use 28/, /^7$/, /^Set wind/]);
});

test('without the keypad Tab goes on to every end, then to the weather', async ({ open }) => {
  const page = await open('tablet', { at: EVENING, ...WITH_CLIPBOARD });
  await beginAt(page, 'XHAR');
  await paste(page, 'METAR XHAR 051830Z 28012KT 9999 FEW030 14/04 Q1009');
  await card(page).getByText('Density altitude').waitFor();
  await expect.poll(() => read(answer(page))).toContain('° mag');
  await key(page, 'Paste').focus();
  const visited = await tabTo(page, /^Group by group$/);
  expectOrder(visited, [/mag$/, /^Use 28/, /^28 before/, /^1009 hPa$/, /^Group by group/]);
  // Enter opens the focused item, Escape closes it, and the focus is back where it was.
  await page.keyboard.press('Enter');
  const sheet = page.getByRole('dialog', { name: 'The report, group by group' });
  await sheet.waitFor();
  await closeSheet(page);
  await expect.poll(() => sheet.count()).toBe(0);
  await expect.poll(() => focused(page)).toBe('Group by group');
});
