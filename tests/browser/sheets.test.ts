/** Every sheet has a height of its own, stays in the window and shows all of its text; what a device covers is kept free. */

import type { Page } from 'playwright-core';
import { type Covered, cover, misfits, resize, scrolls, sheetFaults, underCover } from './fitting';
import { expect, test } from './harness';
import {
  AIRCRAFT,
  beginSortie,
  clockKey,
  clockOf,
  closeSheet,
  EVENING,
  FIELD,
  flownToday,
  goOnFrom,
  key,
  openPlace,
  pressDeliberately,
  setWind,
  sortieKey,
  tick,
  tickAll,
  toSteps,
  typeAnything,
} from './pilot';

/** A screen, and what a phone covers of it; round figures, from memory of such devices. */
interface Edges {
  readonly width: number;
  readonly height: number;
  readonly covered: Covered;
}

const NOTHING: Covered = { top: 0, right: 0, bottom: 0, left: 0 };
const UPRIGHT: Edges = {
  width: 390,
  height: 844,
  covered: { top: 47, right: 0, bottom: 34, left: 0 },
};
const ON_ITS_SIDE: Edges = {
  width: 844,
  height: 390,
  covered: { top: 0, right: 47, bottom: 21, left: 47 },
};
const SCREENS: readonly Edges[] = [
  { width: 320, height: 640, covered: NOTHING },
  { width: 820, height: 1180, covered: NOTHING },
  UPRIGHT,
  ON_ITS_SIDE,
];

async function faultsOf(page: Page, name: string): Promise<string[]> {
  const found: string[] = [];
  for (const { width, height, covered } of SCREENS) {
    await cover(page, covered);
    await resize(page, { width, height });
    const wrong = [...(await sheetFaults(page)), ...(await underCover(page, covered))];
    found.push(...wrong.map((one) => `${name} at ${width} x ${height}: ${one}`));
  }
  await cover(page, NOTHING);
  await resize(page, { width: 820, height: 1180 });
  return found;
}

/** Opens a sheet by a key, looks at it and closes it. */
async function lookAt(page: Page, name: string | RegExp): Promise<string[]> {
  const open = page.getByRole('dialog');
  const before = await open.count();
  await key(page, name).last().click();
  await expect.poll(() => open.count()).toBe(before + 1);
  const found = await faultsOf(page, String(name));
  await closeSheet(page);
  return found;
}

test('every sheet has a height, stays in the window and clear of what the device covers', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await key(page, 'Understood').waitFor();
  const found = await faultsOf(page, 'the caution');
  await toSteps(page);
  for (const name of ['Cannot', /^Taxi, \d/, 'Emergencies']) {
    found.push(...(await lookAt(page, name)));
  }
  await tick(page);
  await openPlace(page, 'Wind');
  for (const name of [/° mag$/, /^28 before/]) found.push(...(await lookAt(page, name)));
  await openPlace(page, 'Log');
  found.push(...(await lookAt(page, new RegExp(`${FIELD}|${AIRCRAFT}`))));
  for (const [room, names] of [
    ['Device', ['Keys and sticks']],
    ['About', []],
    ['Sortie', ['Load sheet']],
    ['Library', ['Share XHAR', /^Print/, 'Draw a field', 'Edit XHAR', /^Edit Sleet/]],
  ] as const) {
    if (!(await page.getByRole('dialog').isVisible())) await sortieKey(page).click();
    await key(page, room).click();
    await page.getByRole('dialog').getByRole('heading', { level: 3 }).first().waitFor();
    found.push(...(await faultsOf(page, room)));
    if (room === 'Library')
      for (const kind of ['Fields', 'Procedures']) await flownToday(page, kind);
    for (const name of names) found.push(...(await lookAt(page, name)));
  }
  const nothing = { name: 'own.json', mimeType: 'application/json', buffer: Buffer.from('{}') };
  await page.getByLabel('Look at a file').setInputFiles(nothing);
  await page.getByRole('heading', { name: 'What came' }).waitFor();
  found.push(...(await faultsOf(page, 'What came')));
  await closeSheet(page);
  await closeSheet(page);
  await clockKey(page).click();
  found.push(...(await faultsOf(page, 'clock')));
  expect(found).toEqual([]);
});

test('no key lies under what a telephone covers at its edges: keypad, steps, Big card, roll', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('phone', { at: EVENING, path: '#/wind' });
  const found: string[] = [];
  const look = async (name: string) => {
    for (const { width, height, covered } of [UPRIGHT, ON_ITS_SIDE]) {
      await cover(page, covered);
      await resize(page, { width, height });
      const wrong = [...(await underCover(page, covered)), ...(await misfits(page))];
      if (name !== 'Wind' && (await scrolls(page, 'main'))) wrong.push('scrolls');
      found.push(...wrong.map((one) => `${name} at ${width} x ${height}: ${one}`));
    }
    await resize(page, UPRIGHT);
  };
  await beginSortie(page);
  await typeAnything(page, '27012G20KT');
  await key(page, 'Set wind').waitFor();
  await look('keypad');
  await setWind(page, '27012G20KT');
  await key(page, 'Use 28').first().click();
  for (const name of ['Taxi', 'Steps']) {
    await openPlace(page, name);
    await key(page, 'Big card').first().waitFor();
    await look(name);
  }
  await key(page, 'Big card').click();
  await page.locator('[data-fitted]').waitFor();
  await look('Big card');
  await key(page, 'Close').click();
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  await tickAll(page);
  await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
  await key(page, 'Airborne').waitFor();
  await look('roll');
  expect(found).toEqual([]);
});
