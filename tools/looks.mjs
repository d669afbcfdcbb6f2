/**
 * Compares how the built app looks with how it looked: `npm run looks`, or `npm run looks -- taxi`
 * for the looks whose name contains that. Every scene of tools/scenes.mjs is shot in five sizes and
 * three themes. What differs by more than tools/looks/compare.mjs tolerates is listed with its
 * share of the picture and the path of a marked copy.
 *
 * `--keep` keeps the present looks in tests/looks. `--faults` proves that faults are noticed: each,
 * put into each look, must be seen, and the look without it must match the kept one.
 */

import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { findChromium, QUIET_FLAGS } from './chromium.mjs';
import { openDarkroom } from './looks/darkroom.mjs';
import { FAULTS, inject, mend } from './looks/faults.mjs';
import { LOOKS } from './scenes.mjs';

process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING = 'true';
const { build, preview } = await import('vite');

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const KEPT = `${ROOT}tests/looks`;
const MARKED = `${ROOT}.cache/looks`;

/** CSS px. */
const SIZES = [
  { width: 360, height: 640 },
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1180, height: 820 },
  { width: 1366, height: 1024 },
];
const THEMES = ['day', 'dusk', 'night'];

/** Grey smoothing and no font hinting, as far as a machine can be told. */
const FLAGS = ['--font-render-hinting=none', '--disable-lcd-text', '--force-color-profile=srgb'];

const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: { keep: { type: 'boolean' }, faults: { type: 'boolean' } },
});
const [wanted = ''] = positionals;

const nameOf = (scene, { width, height }, theme) => `${scene}-${width}x${height}-${theme}`;
const looksOf = ({ scene }) =>
  SIZES.flatMap((size) =>
    THEMES.map((theme) => ({ size, theme, name: nameOf(scene, size, theme) })),
  );
const all = LOOKS.map((scene) => ({ ...scene, looks: looksOf(scene) }));
const scenes = all
  .map((scene) => ({ ...scene, looks: scene.looks.filter(({ name }) => name.includes(wanted)) }))
  .filter(({ looks }) => looks.length > 0);
const pathOf = (name) => `${KEPT}/${name}.webp`;

/** Plays the scene, then stops its clock. */
async function play(context, { at, place, play, still }) {
  await context.addInitScript(() => localStorage.setItem('lapstrip.cautionRead', 'yes'));
  context.setDefaultTimeout(20_000);
  const first = await context.newPage();
  await first.clock.install({ time: at });
  await first.goto(`${address}${place}`);
  const page = (await play(first)) ?? first;
  await page.bringToFront();
  await page.clock.pauseAt(still);
  // Animation goes on; only the time stands still.
  await page.clock.setFixedTime(still);
  await page.clock.resume();
  // A look has no pointer and no focus.
  await page.mouse.move(0, 0);
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    return document.fonts.ready;
  });
  return page;
}

/** A few frames, to draw a change. */
const DRAWN_MS = 60;
const draw = (page) => page.waitForTimeout(DRAWN_MS);

const shoot = (page) => page.screenshot({ animations: 'disabled', caret: 'hide' });

/** A screenshot once two in a row are the same. */
async function stillShot(page) {
  let last = await shoot(page);
  for (let tries = 0; tries < 10; tries += 1) {
    await draw(page);
    const next = await shoot(page);
    if (next.equals(last)) return next;
    last = next;
  }
  throw new Error('it does not stand still');
}

async function wear(page, { size, theme }) {
  await page.setViewportSize(size);
  await page.evaluate((name) => {
    document.documentElement.dataset.theme = name;
    for (const part of document.querySelectorAll('*')) part.scrollTop = 0;
  }, theme);
  await draw(page);
}

/** Two significant digits, so that a small share never reads as 0. */
const percent = (share) => `${(share * 100).toPrecision(2)} %`;

async function keptLook(name) {
  try {
    return await readFile(pathOf(name));
  } catch {
    throw new Error('no look is kept; look at it and keep it with --keep');
  }
}

/** Each returns what is wrong, or null. */
const modes = {
  async keep(page, { name }) {
    const shot = await stillShot(page);
    const known = await readFile(pathOf(name)).catch(() => null);
    // Leave unchanged looks alone, so that the repository changes only where the app did.
    if (known !== null && (await darkroom.compare(known, shot)).share === 0) return null;
    await writeFile(pathOf(name), await darkroom.look(shot));
    console.log(`${name}: kept`);
    return null;
  },

  async compare(page, { name }) {
    const { share, picture } = await darkroom.compare(
      await keptLook(name),
      await stillShot(page),
      true,
    );
    if (picture === null) return null;
    const path = `${MARKED}/${name}.png`;
    await writeFile(path, picture);
    return `${percent(share)} of it is different, see ${relative(process.cwd(), path)}`;
  },

  async faults(page, { name }) {
    const kept = await keptLook(name);
    const wrong = [];
    for (const fault of FAULTS) {
      const what = await inject(page, fault);
      if (what === null) continue;
      await draw(page);
      const { share } = await darkroom.compare(kept, await shoot(page));
      count.faults += 1;
      least.set(fault, Math.min(least.get(fault) ?? 1, share));
      if (share === 0) wrong.push(`${fault} is not noticed (${what})`);
      await mend(page);
    }
    await draw(page);
    const left = await modes.compare(page, { name });
    if (left !== null) wrong.push(`without a fault ${left}`);
    return wrong.length === 0 ? null : wrong.join('; ');
  },
};
const look = asked.keep ? modes.keep : asked.faults ? modes.faults : modes.compare;

await build({ root: `${ROOT}src`, configFile: `${ROOT}vite.config.ts`, logLevel: 'warn' });
const server = await preview({
  root: `${ROOT}src`,
  configFile: `${ROOT}vite.config.ts`,
  logLevel: 'error',
});
const [address] = server.resolvedUrls?.local ?? [];
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: [...QUIET_FLAGS, ...FLAGS],
});
const darkroom = await openDarkroom(browser);
const count = { looks: 0, faults: 0, wrong: 0 };
/** The smallest share of a picture that each fault changed. */
const least = new Map();

const told = (name, wrong) => {
  count.wrong += 1;
  console.error(`${name}: ${wrong}`);
};
const firstLine = (error) => (error instanceof Error ? error.message.split('\n')[0] : error);

await rm(MARKED, { recursive: true, force: true });
await mkdir(MARKED, { recursive: true });
await mkdir(KEPT, { recursive: true });

for (const scene of scenes) {
  const context = await browser.newContext({
    viewport: SIZES[2],
    hasTouch: true,
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
    locale: 'en-GB',
    timezoneId: 'UTC',
  });
  try {
    const page = await play(context, scene);
    for (const worn of scene.looks) {
      count.looks += 1;
      await wear(page, worn);
      const wrong = await look(page, worn).catch(firstLine);
      if (wrong !== null) told(worn.name, wrong);
    }
  } catch (error) {
    told(scene.scene, firstLine(error));
  } finally {
    await context.close();
  }
}
await browser.close();
await server.close();

if (wanted === '') {
  const known = new Set(all.flatMap(({ looks }) => looks.map(({ name }) => `${name}.webp`)));
  for (const file of (await readdir(KEPT)).filter((name) => !known.has(name))) {
    if (asked.keep) await rm(`${KEPT}/${file}`);
    else told(file, 'kept, but nothing looks like it is called');
  }
}
for (const [fault, share] of least) console.log(`${fault}: at least ${percent(share)} is changed`);
const kinds = asked.faults
  ? `${count.looks} looks, ${count.faults} faults`
  : `${count.looks} looks`;
console.log(`${kinds}, ${count.wrong} wrong`);
process.exitCode = count.wrong === 0 ? 0 : 1;
