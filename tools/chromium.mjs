/** Finds a Chromium to run the browser tests, the bench and the pictures in. */

import { chromium } from 'playwright-core';
import { installed } from './debian.mjs';
import { programOnPath, runs } from './programs.mjs';

/** The one without a window of its own first: the same pages for a third less of the machine's time. */
const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
];

const ELSEWHERE = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const HOW_TO_GET_ONE =
  'No Chromium found: install your system\'s "chromium" package, run "npx playwright-core install chromium", or set LAPSTRIP_CHROMIUM to one.';

/**
 * What keeps Chromium from talking to anyone but the page, what root needs to run it at all, and
 * letters as wide without a screen as on one.
 */
export const QUIET_FLAGS = [
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--font-render-hinting=none',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const onPath = (names = NAMES) => names.map(programOnPath).find((path) => path !== undefined);

/** The one without a window where it is here or may be installed; older releases of Debian lack it. */
function withoutWindow() {
  const [name] = NAMES;
  return onPath([name]) ?? (installed(name) ? onPath([name]) : undefined);
}

const fromDebian = () => (installed('chromium') ? onPath() : undefined);

let found;

/**
 * The path of a Chromium: LAPSTRIP_CHROMIUM, then one without a window, then the system's, then one
 * that playwright manages, then Debian's, installed. Throws with one line saying how to get one.
 */
export function findChromium() {
  const asked = process.env.LAPSTRIP_CHROMIUM;
  if (asked) {
    if (runs(asked)) return asked;
    throw new Error(`LAPSTRIP_CHROMIUM names ${asked}, which cannot be run.`);
  }
  const managed = chromium.executablePath();
  found ??=
    withoutWindow() ??
    onPath() ??
    ELSEWHERE.find(runs) ??
    (runs(managed) ? managed : undefined) ??
    fromDebian();
  if (found) return found;
  throw new Error(HOW_TO_GET_ONE);
}
