/** The log: corrected times, notes, files out and in, and thousands of sorties. */

import type { Page } from 'playwright-core';
import { misfits } from './fitting';
import { describe, expect, test } from './harness';
import { dialog, look, saved } from './logFiles';
import { clockOf, due, EVENING, key, openPlace, read, setWind, tick, toSteps } from './pilot';

const lines = (page: Page) => page.getByRole('main').getByRole('listitem');

/** Ticks two steps and opens the sortie in the log. */
async function toLogged(page: Page): Promise<void> {
  await toSteps(page);
  await tick(page, clockOf(page));
  await tick(page, clockOf(page));
  await openPlace(page, 'Log');
  await lines(page).first().getByRole('button').click();
  await dialog(page).getByText('2 steps done').waitFor();
}

async function writeTime(page: Page, moment: string, time: string): Promise<void> {
  await dialog(page).getByLabel(moment, { exact: true }).fill(time);
  await dialog(page).getByLabel(moment, { exact: true }).press('Enter');
}

const figure = async (page: Page, name: string) =>
  read(dialog(page).locator('dl > div').filter({ hasText: name }).first());

test('times are written over, taken back, and outlive a reload; a note stands beside them', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toLogged(page);
  await writeTime(page, 'Off chocks', '1855');
  await writeTime(page, 'Airborne', '1902');
  await writeTime(page, 'Landed', '19:45');
  await writeTime(page, 'On chocks', '0010');
  // Over midnight: 0010 is that of the next day.
  await expect.poll(() => figure(page, 'Block')).toBe('Block5:15');
  expect(await figure(page, 'In the air')).toBe('In the air0:43');
  await writeTime(page, 'Landed', '25');
  await expect.poll(() => dialog(page).getByText('Write it as 1850').isVisible()).toBe(true);
  await writeTime(page, 'Landed', '1950');
  await expect.poll(() => figure(page, 'In the air')).toBe('In the air0:48');
  await dialog(page).getByRole('textbox', { name: 'A note' }).fill('=1+1 <b>gust</b>');
  await key(page, 'Add the note').click();
  await expect.poll(() => dialog(page).getByText('<b>gust</b>').isVisible()).toBe(true);
  await key(page, 'Take back what was written for Landed').click();
  await expect.poll(() => figure(page, 'In the air')).toBe('In the air0:43');
  await page.reload();
  await expect.poll(() => read(lines(page).first())).toContain('block 5:15, in the air 0:43');
  await expect.poll(() => read(lines(page).first())).toContain('a note');
});

test('what is written faster than the record is stored is written all the same', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toLogged(page);
  await page.evaluate(() => {
    const { addEventListener: listen } = IDBTransaction.prototype;
    IDBTransaction.prototype.addEventListener = function slow(
      this: IDBTransaction,
      type: string,
      heard: EventListenerOrEventListenerObject,
    ) {
      const late = (event: Event) =>
        setTimeout(() => typeof heard === 'function' && heard.call(this, event), 300);
      listen.call(this, type, type === 'complete' ? late : heard);
    };
    for (const [moment, time] of [
      ['airborne', '1902'],
      ['landed', '1945'],
    ]) {
      const input = document.querySelector<HTMLInputElement>(`#time-${moment}`);
      input?.focus();
      input?.setRangeText(time ?? '');
      input?.dispatchEvent(new InputEvent('input', { bubbles: true }));
      input?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    }
  });
  await expect.poll(() => figure(page, 'In the air')).toBe('In the air0:43');
});

test('the chocks are stamped by a key, and the log counts from there', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await tick(page, clockOf(page));
  await openPlace(page, 'Log');
  await key(page, 'Off chocks now').click();
  await expect.poll(() => read(lines(page).first())).toContain('1850Z Off chocks');
  expect(await key(page, 'Off chocks now').count()).toBe(0);
});

test('the table and the record are saved, and the record makes another device know the sortie', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toLogged(page);
  await writeTime(page, 'Airborne', '1902');
  await writeTime(page, 'Landed', '1945');
  await dialog(page).getByRole('textbox', { name: 'A note' }).fill('=1+1, "quoted"');
  await key(page, 'Add the note').click();
  await key(page, 'Close').click();
  const table = await saved(page, 'Save as CSV');
  expect(table.name).toBe('lapstrip-log.csv');
  const [heading = '', line = ''] = table.text.split('\r\n');
  expect(heading.split(',').slice(0, 4)).toEqual(['Date', 'Callsign', 'Aircraft', 'Field']);
  expect(line).toContain('1987-04-05,,Ondrell Sleet 3,XHAR,,19:02,19:45,');
  // RFC 4180 doubles the quotes; the apostrophe keeps a spreadsheet from working it out.
  expect(table.text).toContain('"\'=1+1, ""quoted"""');

  const record = await saved(page, 'Save as JSON');
  const other = await open('phone', { at: EVENING });
  await toSteps(other);
  await tick(other, clockOf(other));
  const flown = await due(other);
  await openPlace(other, 'Log');
  await expect.poll(() => lines(other).count()).toBe(1);
  await look(other, record.text);
  await expect.poll(() => read(dialog(other))).toMatch(/A log: one sortie with \d+ entries/);
  // Nothing is there before it is merged.
  await expect.poll(() => lines(other).count()).toBe(1);
  await key(other, 'Merge it').click();
  await expect.poll(() => read(dialog(other))).toMatch(/Added: \d+ entries in one sortie/);
  await dialog(other).getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => lines(other).count()).toBe(2);
  const brought = lines(other).filter({ hasText: 'in the air 0:43' });
  await expect.poll(() => brought.count()).toBe(1);
  await look(other, record.text);
  await key(other, 'Merge it').click();
  await expect.poll(() => read(dialog(other))).toContain('All of it was here already.');
  await dialog(other).getByRole('button', { name: 'Close' }).click();
  // The sortie in progress continues, and the imported one can be opened and written into.
  await openPlace(other, 'Steps');
  await expect.poll(() => due(other)).toBe(flown);
  await other.reload();
  await openPlace(other, 'Log');
  await expect.poll(() => lines(other).count()).toBe(2);
  await brought.getByRole('button').click();
  await expect.poll(() => dialog(other).getByText('"quoted"').isVisible()).toBe(true);
  await writeTime(other, 'Landed', '2002');
  await expect.poll(() => figure(other, 'In the air')).toBe('In the air1:00');
  await other.reload();
  await expect.poll(() => read(other.getByRole('main'))).toContain('in the air 1:00');
  await openPlace(other, 'Steps');
  await expect
    .poll(() => read(other.getByRole('main')))
    .toContain('Done last, just now: Seat pins');
});

describe('what is no log is refused with a sentence, and nothing is touched', () => {
  const entry = (more: object) =>
    JSON.stringify({
      lapstrip: 'record',
      version: 1,
      entries: [
        { id: 'a', seq: 1, sortie: 's', kind: 'wind', at: { wallMs: 1, sortieMs: 1 }, ...more },
      ],
      documents: [],
    });
  test.for([
    ['cut short', entry({}).slice(0, -9), 'it is cut short'],
    ['of another version', entry({}).replace('"version":1', '"version":9'), 'another version'],
    ['with a reserved name', entry({}).replace('"at"', '"__proto__":{"x":1},"at"'), 'damaged'],
    ['of brackets', '['.repeat(100_000), 'deeper than in any file of Lapstrip'],
    ['of 51 MB', ' '.repeat(51_000_000), 'larger than 50 MB'],
    ['of words', 'see you at the pond', 'Line 1, character 1: this is no JSON'],
  ] as const)('%s', async ([, text, sentence], { open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await tick(page, clockOf(page));
    await openPlace(page, 'Log');
    await expect.poll(() => lines(page).count()).toBe(1);
    await look(page, text);
    await expect.poll(() => read(dialog(page))).toContain(sentence);
    expect(await key(page, 'Merge it').count()).toBe(0);
    await dialog(page).getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => lines(page).count()).toBe(1);
  });
});

test('where the device is full amid a merge, it is said, and the log stays as it was', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await tick(page, clockOf(page));
  await openPlace(page, 'Log');
  const { text } = await saved(page, 'Save as JSON');
  const other = await open('tablet', { at: EVENING });
  await toSteps(other);
  await openPlace(other, 'Log');
  await look(other, text);
  await other.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    let left = 3;
    IDBObjectStore.prototype.put = function full(this: IDBObjectStore, value: unknown) {
      left -= 1;
      if (left === 0) throw new DOMException('full', 'QuotaExceededError');
      return put.call(this, value);
    };
  });
  await key(other, 'Merge it').click();
  await expect
    .poll(() => read(dialog(other)))
    .toContain('The device could not keep it. Nothing was changed.');
  await other.reload();
  await openPlace(other, 'Log');
  await expect.poll(() => other.getByText('No sortie yet.').isVisible()).toBe(true);
});

/** A record of many short sorties, a day apart, as another device may have written it. */
function manySorties(count: number): string {
  const entries = Array.from({ length: count }, (_, at) => {
    const sortie = `sortie-${String(at).padStart(5, '0')}`;
    const moment = (minutes: number) => {
      const ms = Date.UTC(1970, 0, 1) + at * 86_400_000 + minutes * 60_000;
      return { wallMs: ms, sortieMs: ms };
    };
    const stamp = (what: string, seq: number, minutes: number) => ({
      id: `${sortie}-${seq}`,
      seq: at * 10 + seq,
      sortie,
      at: moment(minutes),
      kind: 'stamp',
      what,
    });
    return [stamp('off chocks', 1, 600), stamp('airborne', 2, 610), stamp('landed', 3, 670)];
  });
  return JSON.stringify({ lapstrip: 'record', version: 1, entries: entries.flat(), documents: [] });
}

test('two thousand sorties: the newest stand there, the totals count all, older ones come with a tap', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await openPlace(page, 'Log');
  await look(page, manySorties(2000));
  await key(page, 'Merge it').click();
  await expect.poll(() => read(dialog(page))).toContain('6000 entries in 2000 sorties');
  await dialog(page).getByRole('button', { name: 'Close' }).click();
  const totals = page.getByLabel('All sorties together');
  // Two thousand hours in the air.
  await expect.poll(() => read(totals), { timeout: 20_000 }).toContain('Sorties2 000');
  await expect.poll(() => read(totals)).toContain('In the air2000:00');
  await expect.poll(() => read(totals)).toContain('Landings2 000');
  await expect.poll(() => lines(page).count()).toBe(50);
  await key(page, 'Show 50 older').click();
  await expect.poll(() => lines(page).count()).toBe(100);
  // 1 January 1970 and 1999 days.
  await expect.poll(() => read(lines(page).first())).toContain('23 Jun 1975');
  // A wind is set, and the first sortie here begun: none of the imported ones is in progress.
  await openPlace(page, 'Wind');
  await setWind(page, '28014KT');
  await page.reload();
  await openPlace(page, 'Log');
  await expect.poll(() => read(totals)).toContain('Sorties2 000');
});

test('the log and an opened sortie fit on every screen', async ({ open }) => {
  for (const screen of ['phone', 'tablet'] as const) {
    const page = await open(screen, { at: EVENING });
    await toLogged(page);
    expect(await misfits(page)).toEqual([]);
    await key(page, 'Close').click();
    expect(await misfits(page)).toEqual([]);
  }
});
