/** Installs Debian's own packages where allowed; apt's output goes to stderr. */

import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const MAY_INSTALL = process.getuid?.() === 0 && existsSync('/etc/debian_version');

let isListed = false;

function apt(...args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  try {
    execFileSync('apt-get', args, { env, stdio: ['ignore', 2, 2] });
    return true;
  } catch {
    return false;
  }
}

/** Installs all packages or none; false if not allowed, or failed. */
export function installed(...names) {
  if (!MAY_INSTALL) return false;
  if (!isListed) isListed = apt('update');
  return apt('install', '-y', '--no-install-recommends', ...names);
}
