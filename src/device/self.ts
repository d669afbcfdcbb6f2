/**
 * The name this device signs its entries with: the same for as long as the browser stores anything.
 */

const KEY = 'lapstrip.device';

/** The device's name; a `fresh` one the first time, and in every window if storage is refused. */
export function deviceId(fresh: () => string): string {
  try {
    const kept = localStorage.getItem(KEY);
    if (kept !== null && /^[0-9a-f]{32}$/.test(kept)) return kept;
    const id = fresh();
    localStorage.setItem(KEY, id);
    return id;
  } catch {
    return fresh();
  }
}
