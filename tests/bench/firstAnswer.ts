/** Opens the built app with nothing stored and gives it its first wind. */

import { type Browser, chromium, type Page } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from '../../tools/chromium.mjs';
import { beginSortie, typeWind } from '../browser/pilot';
import { SCREENS } from '../browser/screens';
import { BELOW, Host } from '../browser/server';

export const FIRST_WIND = '27012G20KT';

const PATIENCE_MS = 15_000;

/** Opens the app in its own browser, with nothing stored, while `use` runs. */
export async function withFreshApp<T>(use: (page: Page) => Promise<T>): Promise<T> {
  const host = new Host();
  await host.start();
  let browser: Browser | null = null;
  try {
    browser = await chromium.launch({ executablePath: findChromium(), args: QUIET_FLAGS });
    const page = await browser.newPage(SCREENS.tablet);
    page.setDefaultTimeout(PATIENCE_MS);
    await page.goto(`${host.url}#/wind`);
    return await use(page);
  } finally {
    await browser?.close();
    await host.stop();
  }
}

/** Paths in dist of the files that had arrived when the first answer appeared. */
export function arrivedBeforeFirstAnswer(): Promise<string[]> {
  return withFreshApp(async (page) => {
    await beginSortie(page);
    // Recorded in the page itself, before anything the answer requested can arrive.
    await page.evaluate(() => {
      const watcher = new MutationObserver(() => {
        const keys = [...document.querySelectorAll('button')];
        if (!keys.some((key) => /^Use \d\d/.test(key.textContent ?? ''))) return;
        watcher.disconnect();
        const arrived = performance.getEntriesByType('resource').map(({ name }) => name);
        Object.assign(window, { lapstripArrived: arrived });
      });
      watcher.observe(document.body, { subtree: true, childList: true, characterData: true });
    });
    await typeWind(page, FIRST_WIND);
    const urls = await page.evaluate(
      () => (window as unknown as { lapstripArrived?: string[] }).lapstripArrived ?? [],
    );
    const files = urls.map((url) => new URL(url).pathname.slice(BELOW.length));
    return ['index.html', ...new Set(files)];
  });
}
