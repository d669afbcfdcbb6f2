/**
 * Whether two places fit side by side at the present letter size, which media queries in rem don't
 * know.
 */

import { wide } from './App';

/** From this size on two places stand side by side, rem. */
const WIDE = { width: 60, height: 36 };

/** Follows the size of the app, and of the letters in its strip. */
export function followWidth(): void {
  const app = document.getElementById('app');
  if (app === null) return;
  const sizes = new ResizeObserver(() => {
    const remPx = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const { clientWidth, clientHeight } = app;
    wide.value = clientWidth >= WIDE.width * remPx && clientHeight >= WIDE.height * remPx;
  });
  sizes.observe(app);
  const strip = app.querySelector('header');
  if (strip !== null) sizes.observe(strip);
}
