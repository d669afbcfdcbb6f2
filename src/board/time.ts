/** The one place that reads the device's clocks; everything else is told the time. */

import { signal } from '@preact/signals';

/** The device's clock, ms since 1970 UTC. It may jump. */
export const wallNowMs = (): number => Date.now();

/** Time since the app started, ms; never jumps. For how long something takes within one run. */
export const elapsedNowMs = (): number => performance.now();

/** The device's clock, moved on every second while the app is shown. */
export const wallMs = signal(wallNowMs());

/** Starts the clock. */
export function startClock(): void {
  const tick = () => {
    wallMs.value = wallNowMs();
  };
  setInterval(tick, 1000);
  document.addEventListener('visibilitychange', tick);
}
