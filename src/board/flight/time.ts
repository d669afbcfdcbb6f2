/** The one place that reads the device's clocks; everything else is told the time. */

import { signal } from '@preact/signals';

/** The device's clock, ms since 1970 UTC. It may jump. */
export const wallNowMs = (): number => Date.now();

/** Time since the app started, ms; never jumps. For how long something takes within one run. */
export const elapsedNowMs = (): number => performance.now();

/** A moment by both clocks. */
export interface Moment {
  readonly elapsedMs: number;
  readonly wallMs: number;
}

/** Now, by both clocks. */
export const moment = (): Moment => ({ elapsedMs: elapsedNowMs(), wallMs: wallNowMs() });

/**
 * How long a moment is gone, ms: the longer of what both clocks say, because on some devices the time
 * since the start stands still in sleep, and the device's clock may have been set back.
 */
export const goneMs = ({ elapsedMs, wallMs }: Moment): number =>
  Math.max(elapsedNowMs() - elapsedMs, wallNowMs() - wallMs);

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
