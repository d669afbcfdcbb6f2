/** Opens the built app as new and gives it its first wind. */

import { type Browser, chromium, type Page } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from '../../tools/chromium.mjs';
import { SCREENS } from '../browser/screens';
import { BELOW, Host } from '../browser/server';

const WIND = '27012G20KT';
const PATIENCE_MS = 15_000;

/** Opens the app in a browser of its own, with nothing stored, for as long as `use` takes. */
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

/** Gets the caution of the first start out of the way and puts the cursor where winds are typed. */
export async function readyForWind(page: Page): Promise<void> {
  const entry = page.getByRole('textbox', { name: /wind/i }).first();
  const understood = page.getByRole('dialog').getByRole('button').last();
  await entry.or(understood).first().waitFor();
  if (await understood.isVisible()) await understood.click();
  await entry.click();
}

/** Types a wind, and waits for the key that takes the best end. */
export async function answer(page: Page): Promise<void> {
  await page.keyboard.type(WIND);
  await page.getByRole('button', { name: /^Use \d\d/ }).waitFor();
}

/** The files, by their place in dist, that had arrived when the first answer stood on the screen. */
export function arrivedBeforeFirstAnswer(): Promise<string[]> {
  return withFreshApp(async (page) => {
    await readyForWind(page);
    // Noted in the page, in the frame that shows the answer, before what comes after it is asked for.
    await page.evaluate(() => {
      const arrived = () => performance.getEntriesByType('resource').map(({ name }) => name);
      const look = () => {
        const shown = [...document.querySelectorAll('button')].some((key) =>
          /^Use \d\d/.test(key.textContent ?? ''),
        );
        if (shown) Object.assign(window, { lapstripArrived: arrived() });
        else requestAnimationFrame(look);
      };
      look();
    });
    await answer(page);
    const urls = await page.evaluate(
      () => (window as unknown as { lapstripArrived?: string[] }).lapstripArrived ?? [],
    );
    const files = urls.map((url) => new URL(url).pathname.slice(BELOW.length));
    return ['index.html', ...new Set(files)];
  });
}
