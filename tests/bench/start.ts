/** How long the app takes to start: new on a slow network, then offline from the worker. */

import { type Browser, chromium, type Page } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from '../../tools/chromium.mjs';
import { SCREENS } from '../browser/screens';
import { Host } from '../browser/server';
import { firstLineOf, quantile, type Row, type Rows } from './row';

/** Slow 4G and a processor slowed four times, as in Lighthouse 12's mobile preset. */
const SLOW_4G = {
  offline: false,
  latency: 150,
  downloadThroughput: (1638.4 * 1024) / 8,
  uploadThroughput: (750 * 1024) / 8,
};
const SLOWED = 4;

const COLD_STARTS = 5;
const WARM_STARTS = 15;

/** First paint of Wind's entry or its list of fields, ms after the page was requested. */
const noteReady = () => {
  const channel = new MessageChannel();
  channel.port1.onmessage = () => Object.assign(window, { lapstripReadyMs: performance.now() });
  const look = () => {
    if (document.querySelector('main button, main input') === null) return;
    watcher.disconnect();
    requestAnimationFrame(() => channel.port2.postMessage(null));
  };
  const watcher = new MutationObserver(look);
  watcher.observe(document, { subtree: true, childList: true });
};

async function readyMs(page: Page): Promise<number> {
  const ready = await page.waitForFunction(
    () => (window as unknown as { lapstripReadyMs?: number }).lapstripReadyMs,
  );
  return (await ready.jsonValue()) ?? Number.NaN;
}

/** One start with nothing stored, in its own profile. */
async function coldStart(browser: Browser, url: string): Promise<number> {
  const context = await browser.newContext({ ...SCREENS.phone, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.addInitScript(noteReady);
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', SLOW_4G);
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
    await page.goto(url);
    return await readyMs(page);
  } finally {
    await context.close();
  }
}

/** Starts with everything stored and the host gone, each in its own window. */
async function warmStarts(browser: Browser, host: Host): Promise<number[]> {
  const context = await browser.newContext(SCREENS.tablet);
  try {
    const first = await context.newPage();
    await first.goto(host.url);
    await first.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await host.stop();
    const took: number[] = [];
    for (let i = 0; i < WARM_STARTS; i++) {
      const page = await context.newPage();
      await page.addInitScript(noteReady);
      await page.goto(`${host.url}#/wind`);
      took.push(await readyMs(page));
      await page.close();
    }
    return took;
  } finally {
    await context.close();
  }
}

async function measured(row: Omit<Row, 'measured'>, starts: () => Promise<number[]>): Promise<Row> {
  try {
    const took = await starts();
    const slowest = Math.max(...took).toFixed(0);
    const note = `${took.length} starts, slowest ${slowest} ms`;
    return { ...row, measured: quantile(took, 0.5), note };
  } catch (error) {
    return { ...row, measured: null, note: firstLineOf(error) };
  }
}

export const rows: Rows = async () => {
  const host = new Host();
  await host.start();
  const browser = await chromium.launch({ executablePath: findChromium(), args: QUIET_FLAGS });
  try {
    const cold = await measured(
      {
        what: 'cold start, slow 4G and 4x slowed processor as Lighthouse has them: to Wind ready, median',
        unit: 'ms',
        budget: { atMost: 1600 },
      },
      async () => {
        const took: number[] = [];
        for (let i = 0; i < COLD_STARTS; i++) took.push(await coldStart(browser, host.url));
        return took;
      },
    );
    const warm = await measured(
      {
        what: 'warm start from the worker, offline: to Wind ready, median',
        unit: 'ms',
        budget: { atMost: 500 },
      },
      () => warmStarts(browser, host),
    );
    return [cold, warm];
  } finally {
    await browser.close();
    await host.stop();
  }
};
