/** What a key press on Wind costs, on a processor slowed four times. */

import type { Page } from 'playwright-core';
import { beginSortie, typeWind } from '../browser/pilot';
import { FIRST_WIND, withFreshApp } from './firstAnswer';
import { firstLineOf, quantile, type Row, type Rows } from './row';

const SLOWED = 4;

/** Winds as pilots type them, each of several groups or a whole report. */
const TYPED = [
  '27012G20KT 240V300',
  '04018KT',
  'VRB03KT',
  '31025G38KT 280V340',
  'METAR XHAR 051850Z 27012G20KT 9999 FEW030 14/06 Q1009',
];

/** Outlasts everything a press triggers except what waits for a pause in typing, ms. */
const SETTLED_MS = 120;

/**
 * Times every press in the page, from its event to the end of the frame that shows the result: a
 * message sent in a frame's callback arrives after that frame is painted.
 */
const noteFrames = (page: Page) =>
  page.evaluate(() => {
    const notes: number[] = [];
    Object.assign(window, { lapstripFrames: notes });
    const channel = new MessageChannel();
    const waiting: number[] = [];
    channel.port1.onmessage = () => {
      for (const began of waiting.splice(0)) notes.push(performance.now() - began);
    };
    const note = ({ timeStamp }: Event) => {
      requestAnimationFrame(() => {
        waiting.push(timeStamp);
        channel.port2.postMessage(null);
      });
    };
    window.addEventListener('keydown', note, { capture: true });
  });

/** Opens the entry with a first wind in it. */
async function beginPlain(page: Page): Promise<void> {
  await beginSortie(page);
  await typeWind(page, FIRST_WIND);
}

type Begin = (page: Page) => Promise<void>;

/** How long each press took to paint its answer, ms. */
async function measure(page: Page, begin: Begin, typed: readonly string[]): Promise<number[]> {
  await begin(page);
  // Late parts load first: they are no part of what a press costs.
  await page.waitForTimeout(3000);
  await noteFrames(page);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  for (const text of typed) {
    await page.keyboard.press('ControlOrMeta+a');
    await page.waitForTimeout(SETTLED_MS);
    for (const character of text) {
      await page.keyboard.press(character === ' ' ? 'Space' : character);
      await page.waitForTimeout(SETTLED_MS);
    }
  }
  return page.evaluate(() => (window as unknown as { lapstripFrames: number[] }).lapstripFrames);
}

/** Measures key presses in the entry that `begin` opens. */
export async function keyRow(
  where: string,
  begin: Begin,
  typed: readonly string[] = TYPED,
): Promise<Row> {
  const row = {
    what: `key press on ${where}, 4x slowed processor: event to painted answer, 95th percentile`,
    unit: 'ms',
    budget: { atMost: 50 },
  };
  try {
    const took = await withFreshApp((page) => measure(page, begin, typed));
    const note = `${took.length} presses, median ${quantile(took, 0.5)?.toFixed(1)} ms`;
    return { ...row, measured: quantile(took, 0.95), note };
  } catch (error) {
    return { ...row, measured: null, note: firstLineOf(error) };
  }
}

export const rows: Rows = async () => [await keyRow('Wind', beginPlain)];
