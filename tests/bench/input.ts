/** How long a key or a stick takes to change the step, on a processor slowed four times. */

import type { Page } from 'playwright-core';
import { plugIn, STICK, syntheticPads } from '../browser/hands';
import { doneKey, toSteps } from '../browser/pilot';
import { withFreshApp } from './firstAnswer';
import { firstLineOf, quantile, type Row, type Rows } from './row';

const SLOWED = 4;

/** How long a step is due before each press, ms; ticks within half a second are ignored. */
const SETTLED_MS = 700;

/** A critical step must be held this long, ms; the clock starts only then. */
const HOLD_MS = 700;

const PRESSES = 24;

/** Notes when a frame with the next step due has been painted. */
const notePaints = (page: Page) =>
  page.evaluate(() => {
    const painted: number[] = [];
    Object.assign(window, { lapstripPainted: painted });
    const channel = new MessageChannel();
    channel.port1.onmessage = () => painted.push(performance.now());
    const due = () => document.querySelector('main strong')?.textContent ?? '';
    let before = due();
    new MutationObserver(() => {
      if (due() === before) return;
      before = due();
      requestAnimationFrame(() => channel.port2.postMessage(null));
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });

/** Presses a control once; returns the ms until the changed step is painted. */
type PressOnce = (page: Page, heldMs: number) => Promise<number>;

/** Timed from the key's event. */
const byKey: PressOnce = async (page, heldMs) => {
  await page.evaluate(() => {
    addEventListener(
      'keydown',
      ({ timeStamp }) => Object.assign(window, { lapstripPressed: timeStamp }),
      { capture: true, once: true },
    );
  });
  await page.keyboard.down('PageDown');
  await page.waitForTimeout(heldMs);
  await page.keyboard.up('PageDown');
  return page.evaluate(() => (window as unknown as { lapstripPressed: number }).lapstripPressed);
};

/** Timed from when the button reads as pressed, so its 30 ms of debouncing count. */
const byButton: PressOnce = async (page, heldMs) => {
  const at = await page.evaluate(() => {
    const [pad] = window.pads;
    if (pad) pad.buttons[0] = 1;
    return performance.now();
  });
  await page.waitForTimeout(heldMs);
  await page.evaluate(() => {
    const [pad] = window.pads;
    if (pad) pad.buttons[0] = 0;
  });
  return at;
};

async function measure(page: Page, press: PressOnce): Promise<number[]> {
  await page.evaluate(syntheticPads);
  await toSteps(page);
  await page.evaluate((pad) => {
    const bound = (control: string) => ({ control, manner: 'press', action: 'done' });
    localStorage.setItem(
      'lapstrip.keys',
      JSON.stringify([bound('key:PageDown'), bound(`pad:b0:0:${pad}`)]),
    );
  }, STICK);
  await page.addInitScript(syntheticPads);
  await page.reload();
  await doneKey(page).waitFor();
  await page.waitForTimeout(4000);
  await plugIn(page);
  await notePaints(page);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const took: number[] = [];
  for (let i = 0; i < PRESSES; i++) {
    await page.waitForTimeout(SETTLED_MS);
    const critical = (await doneKey(page).textContent())?.includes('Hold') ?? false;
    const from = await press(page, critical ? HOLD_MS + 400 : 100);
    await page.waitForTimeout(500);
    const [painted] = await page.evaluate(() =>
      (window as unknown as { lapstripPainted: number[] }).lapstripPainted.splice(0),
    );
    if (painted === undefined) throw new Error('a press changed nothing');
    took.push(painted - from - (critical ? HOLD_MS : 0));
  }
  return took;
}

async function row(what: string, press: PressOnce, budgetMs: number): Promise<Row> {
  const about = { what, unit: 'ms', budget: { atMost: budgetMs } };
  try {
    const took = await withFreshApp((page) => measure(page, press));
    const median = quantile(took, 0.5)?.toFixed(1);
    return {
      ...about,
      measured: quantile(took, 0.95),
      note: `${took.length} presses, median ${median} ms`,
    };
  } catch (error) {
    return { ...about, measured: null, note: firstLineOf(error) };
  }
}

export const rows: Rows = async () => [
  await row(
    'a key that is bound, 4x slowed processor: event to changed step painted, 95th percentile',
    byKey,
    50,
  ),
  await row(
    'a button of a pad, the same, with its 30 ms against chatter and the frame it is read in',
    byButton,
    100,
  ),
];
