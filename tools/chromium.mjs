/** Finds a Chromium for the browser tests, the bench and the pictures. */

import { chromium } from 'playwright-core';
import { installed } from './debian.mjs';
import { programOnPath, runs } from './programs.mjs';

/** The headless shell first: the same pages for a third less processor time. */
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

/** Talk to no one but the page, run as root, and lay letters out as wide as on a screen. */
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

/** The headless shell, if present or installable; older Debian releases lack it. */
function withoutWindow() {
  const [name] = NAMES;
  return onPath([name]) ?? (installed(name) ? onPath([name]) : undefined);
}

const fromDebian = () => (installed('chromium') ? onPath() : undefined);

let found;

/**
 * The path of a Chromium: LAPSTRIP_CHROMIUM, else the headless shell, the system's, one managed by
 * playwright, or Debian's, freshly installed. Throws with one line on how to get one.
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
