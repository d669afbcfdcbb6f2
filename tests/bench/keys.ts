/** How long a key press on Wind takes, on a processor slowed down four times. */

import type { CDPSession, Page } from 'playwright-core';
import { beginSortie, typeWind } from '../browser/pilot';
import { FIRST_WIND, withFreshApp } from './firstAnswer';
import { quantile, type Row, type Rows } from './row';

const SLOWED = 4;

/** Winds as they are typed at the keyboard, each of them several groups or a whole report. */
const TYPED = [
  '27012G20KT 240V300',
  '04018KT',
  'VRB03KT',
  '31025G38KT 280V340',
  'METAR XHAR 051850Z 27012G20KT 9999 FEW030 14/06 Q1009',
];

/** Long enough for all that a press sets going to be over, but for what waits for a pause in typing, ms. */
const SETTLED_MS = 120;

/** A pause after which that is over too, ms. */
const PAUSED_MS = 700;

async function scriptMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return 1000 * (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? Number.NaN);
}

/**
 * Lets the page note, for every press, the time from the event to the end of the frame that shows
 * what it did: a message sent in that frame's callback is handled after the frame was painted.
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

/** Comes to the entry with a first wind in it. */
async function beginPlain(page: Page): Promise<void> {
  await beginSortie(page);
  await typeWind(page, FIRST_WIND);
}

type Begin = (page: Page) => Promise<void>;

async function measure(
  page: Page,
  begin: Begin,
  typed: readonly string[],
): Promise<{ script: number[]; pause: number[]; frames: number[] }> {
  await begin(page);
  // All that loads after the first answer is to have loaded: it is not what a press costs.
  await page.waitForTimeout(3000);
  await noteFrames(page);
  const session = await page.context().newCDPSession(page);
  // The page's own processor time, so that what else the machine is doing is not counted in.
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });

  const script: number[] = [];
  const pause: number[] = [];
  for (const text of typed) {
    await page.keyboard.press('ControlOrMeta+a');
    await page.waitForTimeout(SETTLED_MS);
    for (const character of text) {
      const before = await scriptMs(session);
      await page.keyboard.press(character === ' ' ? 'Space' : character);
      await page.waitForTimeout(SETTLED_MS);
      script.push((await scriptMs(session)) - before);
    }
    const before = await scriptMs(session);
    await page.waitForTimeout(PAUSED_MS);
    pause.push((await scriptMs(session)) - before);
  }
  const frames = await page.evaluate(
    () => (window as unknown as { lapstripFrames: number[] }).lapstripFrames,
  );
  return { script, pause, frames };
}

/** What a key press costs once the entry was come to, with whatever else is on the screen. */
export async function keyRows(
  where: string,
  begin: Begin,
  typed: readonly string[] = TYPED,
): Promise<readonly Row[]> {
  const script = {
    what: `key press on ${where}, 4x slowed processor: script, 95th percentile`,
    unit: 'ms',
    budget: { atMost: 8 },
  };
  const painted = {
    what: 'the same, event to painted answer, 95th percentile',
    unit: 'ms',
    budget: { atMost: 50 },
  };
  const row = (about: Omit<Row, 'measured'>, samples: readonly number[]): Row => ({
    ...about,
    measured: quantile(samples, 0.95),
    note: `${samples.length} presses, median ${quantile(samples, 0.5)?.toFixed(1)} ms`,
  });
  try {
    const measured = await withFreshApp((page) => measure(page, begin, typed));
    const after = Math.max(...measured.pause).toFixed(1);
    const pressed = row(script, measured.script);
    return [
      { ...pressed, note: `${pressed.note}, once typing pauses at most ${after} ms more` },
      row(painted, measured.frames),
    ];
  } catch (error) {
    const note = error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
    return [script, painted].map((about) => ({ ...about, measured: null, note }));
  }
}

/** The rows of the table that a pilot feels under the finger. */
export const rows: Rows = () => keyRows('Wind', beginPlain);
