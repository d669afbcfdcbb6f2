/** Vibration, if the device has it. */

/** Whether this device claims to vibrate; many that do have no motor. */
export const canVibrate = (): boolean => typeof navigator.vibrate === 'function';

/**
 * Vibrates, alternately on and off, ms. The browser may refuse, before the first touch for
 * instance.
 */
export function vibrate(pattern: readonly number[]): void {
  if (!canVibrate()) return;
  try {
    navigator.vibrate([...pattern]);
  } catch {
    // Forbidden on this page: nothing depends on it.
  }
}
