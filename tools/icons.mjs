/**
 * Draws the icons from public/icons/mark.svg: `npm run icons`.
 *
 * A maskable icon may be cut to any shape that keeps the safe zone, a circle of four fifths of its
 * width (W3C Web Application Manifest, "Icon masks and safe zone"), so its mark is drawn smaller
 * until the corners lie inside.
 */

import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from './chromium.mjs';

const ICONS = new URL('../public/icons/', import.meta.url);

/** The mark's farthest corners lie 250 from the middle of 512; the safe zone ends at 0.4 of 512. */
const WITHIN_SAFE_ZONE = (0.4 * 512) / 250;

const DRAWN = [
  { name: '192', size: 192, scale: 1 },
  { name: '512', size: 512, scale: 1 },
  { name: 'maskable-512', size: 512, scale: WITHIN_SAFE_ZONE },
  { name: 'apple-touch-180', size: 180, scale: 1 },
];

const mark = await readFile(new URL('mark.svg', ICONS), 'utf8');
const browser = await chromium.launch({ executablePath: findChromium(), args: QUIET_FLAGS });
const page = await browser.newPage();

for (const { name, size, scale } of DRAWN) {
  const smaller = `transform="translate(256 256) scale(${scale}) translate(-256 -256)"`;
  const scaled = mark.replace('id="strip"', `$& ${smaller}`);
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`<style>body{margin:0}svg{display:block}</style>${scaled}`);
  await writeFile(new URL(`${name}.png`, ICONS), await page.screenshot());
  console.log(`${name}.png  ${size} x ${size}`);
}

await browser.close();
