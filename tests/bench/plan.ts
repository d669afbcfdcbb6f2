/** The plan of a large field: frames while it is panned and zoomed, and the way over it. */

import type { Page } from 'playwright-core';
import { findRouteOut } from '../../src/core/taxi/routeOut';
import { words as rooms } from '../../src/shell/roomWords.en';
import { words as documentWords } from '../../src/views/library/documentWords.en';
import { words as incomingWords } from '../../src/views/library/incomingWords.en';
import { words as taxiWords } from '../../src/views/taxi/words.en';
import { beginSortie, key, openPlace, sortieKey } from '../browser/pilot';
import { bigField } from '../core/taxi/bigField';
import { FREE } from '../core/taxi/drawn';
import { withFreshApp } from './firstAnswer';
import { firstLineOf, quantile, type Row, type Rows } from './row';

const SLOWED = 4;

/** A frame of a 60 Hz screen, ms. */
const FRAME_MS = 1000 / 60;

/** Puts the field where the pilot sees it: kept, chosen, and its plan open. */
async function toPlan(page: Page): Promise<void> {
  const { field } = bigField();
  await beginSortie(page);
  await sortieKey(page).click();
  await page.getByRole('dialog').getByRole('button', { name: rooms.tabs.library }).click();
  await page.getByLabel(documentWords.choose).setInputFiles({
    name: 'big.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...field, code: 'XBIG', name: 'Big' })),
  });
  await key(page, incomingWords.add).click();
  await page.getByText(incomingWords.document(incomingWords.kinds.field ?? '', 'Big')).waitFor();
  await page.reload();
  await sortieKey(page).click();
  await page.getByRole('dialog').getByRole('button', { name: /^XBIG/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await openPlace(page, 'Taxi');
  await page.getByRole('region', { name: new RegExp(taxiWords.plan('Big')) }).waitFor();
}

/** Intervals between frames while `work` runs, ms. */
async function framesDuring(page: Page, work: () => Promise<void>): Promise<number[]> {
  await page.evaluate(() => {
    const times: number[] = [];
    const note = (at: number) => {
      times.push(at);
      if (!('lapstripStopped' in window)) requestAnimationFrame(note);
    };
    Object.assign(window, { lapstripFrames: times });
    Reflect.deleteProperty(window, 'lapstripStopped');
    requestAnimationFrame(note);
  });
  await work();
  return page.evaluate(() => {
    Object.assign(window, { lapstripStopped: true });
    const times = (window as unknown as { lapstripFrames: number[] }).lapstripFrames;
    return times.slice(1).map((at, index) => at - (times[index] ?? at));
  });
}

/** One finger to and fro, two fingers apart and together, and a rest after each. */
async function panAndZoom(page: Page): Promise<number[]> {
  const session = await page.context().newCDPSession(page);
  const box = await page.getByRole('region', { name: /Big/ }).boundingBox();
  if (box === null) throw new Error('no plan');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const touch = (type: string, points: readonly (readonly [number, number])[]) =>
    session.send('Input.dispatchTouchEvent', {
      type: type as 'touchMove',
      touchPoints: points.map(([px, py], id) => ({ x: px, y: py, id })),
    });
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const frames = await framesDuring(page, async () => {
    for (let round = 0; round < 4; round++) {
      await touch('touchStart', [[x, y]]);
      for (let step = 1; step <= 50; step++) {
        await touch('touchMove', [[x + 160 * Math.sin(step / 8), y + 120 * Math.sin(step / 11)]]);
        await page.waitForTimeout(12);
      }
      await touch('touchEnd', []);
      await page.waitForTimeout(250);
      const apart = (by: number) => [[x - by, y] as const, [x + by, y] as const];
      await touch('touchStart', apart(60));
      for (let step = 1; step <= 50; step++) {
        await touch('touchMove', apart(60 + (round % 2 === 0 ? 0.9 : -0.9) * step));
        await page.waitForTimeout(12);
      }
      await touch('touchEnd', []);
      await page.waitForTimeout(250);
    }
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return frames;
}

async function frames(): Promise<Row> {
  const about = {
    what: 'panning and zooming a plan of 500 taxiway lines and 130 stands, 4x slowed processor: frames a second',
    unit: 'a second',
    // A screen's own rate wavers by a frame or two.
    budget: { atLeast: 58 },
  };
  try {
    const took = await withFreshApp(async (page) => {
      await toPlan(page);
      return panAndZoom(page);
    });
    const total = took.reduce((sum, one) => sum + one, 0);
    const late = took.filter((one) => one > 1.5 * FRAME_MS).length;
    return {
      ...about,
      measured: (1000 * took.length) / total,
      note: `${took.length} frames, ${late} of them late, 95th percentile ${quantile(took, 0.95)?.toFixed(1)} ms, longest ${Math.max(...took).toFixed(0)} ms`,
    };
  } catch (error) {
    return { ...about, measured: null, note: firstLineOf(error) };
  }
}

function way(): Row {
  const { field } = bigField();
  const stands = field.taxi.nodes.filter(({ kind }) => kind === 'stand');
  const took = stands.map(({ id }) => {
    const start = performance.now();
    const { route } = findRouteOut({ field, from: id, end: '27', rules: FREE });
    const spent = performance.now() - start;
    if (route === null) throw new Error(`no way from ${id}`);
    return spent;
  });
  return {
    what: 'the way over that plan, from each stand, 95th percentile',
    measured: quantile(took, 0.95),
    unit: 'ms',
    budget: { atMost: 20 },
    note: `${took.length} stands, median ${quantile(took, 0.5)?.toFixed(2)} ms, the first, with the plan read, ${took[0]?.toFixed(1)} ms`,
  };
}

export const rows: Rows = async () => [await frames(), way()];
