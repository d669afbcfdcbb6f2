/** The name that this device bears in what it makes: the same for as long as the browser keeps anything. */

const KEY = 'lapstrip.device';

/** The device's name; a `fresh` one at the first time, and for each window where storage is refused. */
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
