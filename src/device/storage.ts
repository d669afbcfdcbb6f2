/** Asking the browser not to evict what the pilot has recorded. */

/**
 * What the browser promised. `kept`: nothing is removed unless the pilot does it. `at risk`: it may
 * be removed when the device runs short of space. `unknown`: the browser doesn't say.
 */
export type StoragePromise = 'kept' | 'at risk' | 'unknown';

let asked: Promise<StoragePromise> | null = null;

/**
 * Requests persistent storage, unless granted already. Some browsers ask the pilot, so call it once
 * there is something worth keeping. However often it is called, it asks once while the app runs.
 * Never rejects.
 */
export function askToKeepStorage(): Promise<StoragePromise> {
  asked ??= ask();
  return asked;
}

async function ask(): Promise<StoragePromise> {
  const { storage } = navigator;
  if (!storage?.persist || !storage.persisted) return 'unknown';
  try {
    return (await storage.persisted()) || (await storage.persist()) ? 'kept' : 'at risk';
  } catch {
    return 'unknown';
  }
}
