/** The screens the app must fit, in CSS pixels, smallest first. */

import type { BrowserContextOptions } from 'playwright-core';

const size = (width: number, height: number, deviceScaleFactor: number) => ({
  viewport: { width, height },
  deviceScaleFactor,
  // Every one is a touch screen; keyboards work on all of them too.
  hasTouch: true,
});

/** Each screen, by its name in tests and pictures. */
export const SCREENS = {
  'small phone': size(360, 640, 2),
  phone: size(390, 844, 2),
  tablet: size(820, 1180, 1),
  'tablet on its side': size(1180, 820, 1),
  'large tablet on its side': size(1366, 1024, 1),
} as const satisfies Record<string, BrowserContextOptions>;

/** The name of a screen. */
export type Screen = keyof typeof SCREENS;

/** All names, for tests that must hold on each. */
export const EVERY_SCREEN = Object.keys(SCREENS) as readonly Screen[];
