/** Finds a Chromium to run the browser tests, the bench and the pictures in. */

import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright-core';

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

const runs = (path) => {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const onPath = () =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)))
    .find(runs);

/** Debian's own package, where this may install it; what apt has to say goes to stderr. */
function fromDebian() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return undefined;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...args) => {
    try {
      execFileSync('apt-get', args, { env, stdio: ['ignore', 2, 2] });
      return true;
    } catch {
      return false;
    }
  };
  const install = (name) => apt('install', '-y', '--no-install-recommends', name);
  apt('update');
  // Older releases have no package of the one without a window.
  return install('chromium-headless-shell') || install('chromium') ? onPath() : undefined;
}

/**
 * The path of a Chromium: LAPSTRIP_CHROMIUM, then the system's, then one that playwright manages,
 * then Debian's, installed. Throws with one line saying how to get one.
 */
export function findChromium() {
  const asked = process.env.LAPSTRIP_CHROMIUM;
  if (asked) {
    if (runs(asked)) return asked;
    throw new Error(`LAPSTRIP_CHROMIUM names ${asked}, which cannot be run.`);
  }
  const managed = chromium.executablePath();
  const found =
    onPath() ?? ELSEWHERE.find(runs) ?? (runs(managed) ? managed : undefined) ?? fromDebian();
  if (found) return found;
  throw new Error(HOW_TO_GET_ONE);
}
