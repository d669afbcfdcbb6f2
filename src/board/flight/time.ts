/** The only place that reads the device's clocks; everything else takes the time as an argument. */

import { signal } from '@preact/signals';

/** The device's clock, ms since 1970 UTC. It may jump. */
export const wallNowMs = (): number => Date.now();

/** Time since the app started, ms; never jumps. For durations within one run. */
export const elapsedNowMs = (): number => performance.now();

/** A moment by both clocks. */
export interface ClockMoment {
  readonly elapsedMs: number;
  readonly wallMs: number;
}

/** Now, by both clocks. */
export const moment = (): ClockMoment => ({ elapsedMs: elapsedNowMs(), wallMs: wallNowMs() });

/**
 * How long ago a moment was, ms: the longer by the two clocks, because on some devices the time
 * since the start stops during sleep, and the device's clock may have been set back.
 */
export const goneMs = ({ elapsedMs, wallMs }: ClockMoment): number =>
  Math.max(elapsedNowMs() - elapsedMs, wallNowMs() - wallMs);

/** The device's clock, ticking every second while the app is visible. */
export const wallMs = signal(wallNowMs());

export function startClock(): void {
  const tick = () => {
    wallMs.value = wallNowMs();
  };
  setInterval(tick, 1000);
  document.addEventListener('visibilitychange', tick);
}
