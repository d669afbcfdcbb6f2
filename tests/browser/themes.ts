/** The three looks of the app, worn in turn by the page as it stands. */

import type { Page } from 'playwright-core';
import { drawn } from './frames';

/** Every theme, by the name that the page carries. */
export const THEMES = ['day', 'dusk', 'night'] as const;

/** The name of a theme. */
export type Theme = (typeof THEMES)[number];

/** Dresses the page in a theme, as the pilot's choice of it does; what stands there stays. */
export async function wear(page: Page, theme: Theme): Promise<void> {
  const isOther = await page.evaluate((name) => {
    const { dataset } = document.documentElement;
    const worn = dataset.theme;
    dataset.theme = name;
    return worn !== name;
  }, theme);
  // What is drawn to measure is drawn anew.
  if (isOther) await drawn(page, 2);
}
