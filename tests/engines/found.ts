/** The engines that this machine has, or may be given. */

import { findChromium } from '../../tools/chromium.mjs';
import { findFirefox, findWebKit } from '../../tools/engines.mjs';
import { chromiumAt, firefoxAt } from './bidi';
import type { Engine } from './engine';
import { webkitWith } from './webkit';

function chromium(): Engine | null {
  try {
    return chromiumAt(findChromium());
  } catch {
    return null;
  }
}

function firefox(): Engine | null {
  const path = findFirefox();
  return path === null ? null : firefoxAt(path);
}

function webkit(): Engine | null {
  const programs = findWebKit();
  return programs === null ? null : webkitWith(programs);
}

/** Each engine by its name; null comes back where it is not installed and may not be. */
export const ENGINES = { Chromium: chromium, Firefox: firefox, WebKit: webkit } as const;

/** The name of an engine. */
export type EngineName = keyof typeof ENGINES;
