/**
 * The cost of a whole report: its stage of the day, a megabyte paste, a key press with it all
 * shown.
 */

import type { Page } from 'playwright-core';
import * as v from 'valibot';
import fieldDocument from '../../airfields-demo/fields/XHAR.json';
import { loadPart } from '../../src/core';
import { fieldSchema } from '../../src/core/airfield/field.schema';
import { beginSortie, typeAnything, typeWind } from '../browser/pilot';
import { FIRST_WIND, withFreshApp } from './firstAnswer';
import { keyRow } from './keys';
import { firstLineOf, quantile, type Row, type Rows } from './row';

const report = (minute: number, speedKt: number) =>
  `METAR XHAR 0518${minute}Z 270${speedKt}G${speedKt + 8}KT 240V300 6000 -SHRA FEW010 BKN012 SCT025CB ` +
  'R28/1200U 08/04 Q1011 REDZ WS R28 TEMPO 27030G45KT 2000 SHRA RMK PK WND 25038/1812';

async function stageRow(): Promise<Row> {
  const field = v.parse(fieldSchema, fieldDocument);
  const { readReport, weatherStage } = await loadPart.reports();
  let asked = 0;
  const samples = Array.from({ length: 300 }, (_, i) => {
    // Never the same text twice, so that no cache can help.
    const text = report(10 + (i % 50), 10 + (i % 30));
    const start = performance.now();
    asked += weatherStage(readReport(text), { field, surface: 'dry' }).questions.length;
    return performance.now() - start;
  });
  return {
    what: 'a whole report read, and what it means for the day, 95th percentile',
    measured: quantile(samples, 0.95),
    unit: 'ms',
    budget: { atMost: 2 },
    note: `median ${quantile(samples, 0.5)?.toFixed(3)} ms, ${asked / samples.length} questions each`,
  };
}

/** A megabyte of each kind that is dearest to read, hold or lay out. */
const MEGABYTES: Readonly<Record<string, string>> = {
  reports: `${report(30, 12)}=\n`.repeat(6000),
  'one word': 'A'.repeat(1_000_000),
  'short lines': 'hello there\n'.repeat(85_000),
  'right-to-left': 'مرحبا بالعالم '.repeat(70_000),
};

/** The longest task after each paste, ms; 0 if none exceeded 50. */
async function pasteAll(page: Page): Promise<[string, number][]> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await beginSortie(page);
  await typeWind(page, FIRST_WIND);
  await page.keyboard.press('Enter');
  await page.waitForTimeout(3000);
  await page.evaluate(() => {
    const tasks: number[] = [];
    Object.assign(window, { lapstripTasks: tasks });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ entryTypes: ['longtask'] });
  });
  const longest: [string, number][] = [];
  for (const [kind, text] of Object.entries(MEGABYTES)) {
    await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
    await page.waitForTimeout(1000);
    await page.evaluate(() => {
      (window as unknown as { lapstripTasks: number[] }).lapstripTasks.length = 0;
    });
    await page.getByRole('button', { name: 'Paste' }).click();
    await page.getByText('The text is very long').waitFor();
    await page.waitForTimeout(1500);
    const tasks = await page.evaluate(
      () => (window as unknown as { lapstripTasks: number[] }).lapstripTasks,
    );
    longest.push([kind, Math.max(0, ...tasks)]);
  }
  return longest;
}

async function pasteRow(): Promise<Row> {
  const row = {
    what: 'a megabyte pasted: longest task of the page',
    unit: 'ms',
    // Browsers don't report shorter tasks, so 0 is a pass.
    budget: { atMost: 50 },
  };
  try {
    const longest = await withFreshApp(pasteAll);
    return {
      ...row,
      measured: Math.max(...longest.map(([, ms]) => ms)),
      note: longest.map(([kind, ms]) => `${kind} ${ms}`).join(', '),
    };
  } catch (error) {
    return { ...row, measured: null, note: firstLineOf(error) };
  }
}

/** Several winds and a whole report, so that history, trend and weather are all on screen. */
async function beginWithAll(page: Page): Promise<void> {
  await beginSortie(page);
  for (const wind of ['29008KT', '28010KT', report(44, 12)]) {
    await typeAnything(page, wind);
    await page.keyboard.press('Enter');
    await page.waitForTimeout(1500);
  }
  await page.getByRole('button', { name: 'Group by group' }).waitFor();
  await page.getByRole('textbox', { name: 'Wind or report' }).click();
}

export const rows: Rows = async () => [
  await stageRow(),
  await pasteRow(),
  await keyRow('Wind with a report in use', beginWithAll),
];
