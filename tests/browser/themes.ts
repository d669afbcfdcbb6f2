/** The app's three themes, applied in turn to the page as it stands. */

import type { Page } from 'playwright-core';
import { drawn } from './frames';

/** Every theme, by the name the page carries. */
export const THEMES = ['day', 'dusk', 'night'] as const;

/** The name of a theme. */
export type Theme = (typeof THEMES)[number];

/** Switches the page to a theme, as the pilot's choice would; its content stays. */
export async function wear(page: Page, theme: Theme): Promise<void> {
  const isOther = await page.evaluate((name) => {
    const { dataset } = document.documentElement;
    const worn = dataset.theme;
    dataset.theme = name;
    return worn !== name;
  }, theme);
  // Whatever is drawn to measure must be redrawn.
  if (isOther) await drawn(page, 2);
}
