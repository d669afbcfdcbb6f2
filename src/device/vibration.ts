/** Vibration, where the device has any. */

/** Whether this device says that it can vibrate; many that say so have no motor. */
export const canVibrate = (): boolean => typeof navigator.vibrate === 'function';

/** Vibrates, ms on and off by turns. The browser may refuse, before the first touch for one. */
export function vibrate(pattern: readonly number[]): void {
  if (!canVibrate()) return;
  try {
    navigator.vibrate([...pattern]);
  } catch {
    // Forbidden to this page: nothing hangs on it.
  }
}
