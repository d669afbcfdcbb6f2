/**
 * Takes the README's pictures and the install screenshots from the built app: `npm run build && npm
 * run pictures`, or `npm run pictures -- wind` for those whose name contains that.
 *
 * Each is a scene of one worked story on one screen in one theme, at the story's own time, so that
 * it only changes when the app does.
 */

import { mkdir } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from './chromium.mjs';
import { SCENES } from './scenes.mjs';

process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING = 'true';
const { preview } = await import('vite');

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const PICTURES = `${ROOT}public/pictures`;

/** Sizes in CSS px; a phone's are taken at twice that, as its screen shows them. */
const SCREENS = {
  phone: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2 },
  tablet: { viewport: { width: 820, height: 1180 }, deviceScaleFactor: 1 },
  wide: { viewport: { width: 1366, height: 1024 }, deviceScaleFactor: 1 },
};

const wanted = process.argv[2] ?? '';
const nameOf = ({ scene, screen, theme }) => `${scene}-${screen}-${theme}`;
const scenes = SCENES.filter((scene) => nameOf(scene).includes(wanted));

await mkdir(PICTURES, { recursive: true });
const server = await preview({
  root: `${ROOT}src`,
  configFile: `${ROOT}vite.config.ts`,
  logLevel: 'error',
});
const [address] = server.resolvedUrls?.local ?? [];
const browser = await chromium.launch({ executablePath: findChromium(), args: QUIET_FLAGS });
let failed = 0;

for (const scene of scenes) {
  const name = nameOf(scene);
  const context = await browser.newContext({
    ...SCREENS[scene.screen],
    hasTouch: true,
    reducedMotion: 'reduce',
    // Keeps the worker from storing files meanwhile.
    serviceWorkers: 'block',
  });
  try {
    await context.addInitScript((theme) => {
      localStorage.setItem('lapstrip.theme', theme);
      localStorage.setItem('lapstrip.cautionRead', 'yes');
    }, scene.theme);
    const page = await context.newPage();
    page.setDefaultTimeout(5000);
    await page.clock.install({ time: scene.at });
    await page.goto(`${address}${scene.place}`);
    await scene.play(page);
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: `${PICTURES}/${name}.png`, animations: 'disabled' });
    console.log(`${name}.png`);
  } catch (error) {
    failed += 1;
    console.error(`${name}: ${error instanceof Error ? error.message.split('\n')[0] : error}`);
  } finally {
    await context.close();
  }
}

await browser.close();
await server.close();
process.exitCode = failed === 0 ? 0 : 1;
