/** Finds the other engines for the core browser tests, or installs Debian's if allowed. */

import { execFileSync } from 'node:child_process';
import { installed } from './debian.mjs';
import { programOnPath, runs } from './programs.mjs';

const MAC_FIREFOX = '/Applications/Firefox.app/Contents/MacOS/firefox';

const anyFirefox = () =>
  programOnPath('firefox-esr') ?? programOnPath('firefox') ?? [MAC_FIREFOX].find(runs);

/** A Firefox: LAPSTRIP_FIREFOX, else the system's, else Debian's, installed; null if none. */
export const findFirefox = () =>
  process.env.LAPSTRIP_FIREFOX ||
  (anyFirefox() ?? (installed('firefox-esr') ? anyFirefox() : undefined) ?? null);

const WEBKIT_PACKAGES = [
  'webkit2gtk-driver',
  'xvfb',
  // A window that keeps its profile while driven, unlike the one that ships with WebKit.
  'python3',
  'python3-gi',
  'gir1.2-gtk-3.0',
  'gir1.2-webkit2-4.1',
];

/** What there is of WebKit. Debian's Python is the one that knows Debian's GTK. */
function anyWebKit() {
  const driver = programOnPath('WebKitWebDriver');
  const screen = programOnPath('Xvfb');
  const python = ['/usr/bin/python3'].find(runs);
  if (driver === undefined || screen === undefined || python === undefined) return null;
  try {
    const ask = "import gi; gi.require_version('Gtk', '3.0'); gi.require_version('WebKit2', '4.1')";
    execFileSync(python, ['-c', ask], { stdio: 'ignore' });
    return { driver, screen, python };
  } catch {
    return null;
  }
}

/** The programs that drive WebKitGTK, installed if need be; null unless all are there. */
export const findWebKit = () => anyWebKit() ?? (installed(...WEBKIT_PACKAGES) ? anyWebKit() : null);
