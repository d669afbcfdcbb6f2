/** Asking the browser not to throw away what the pilot has recorded. */

/**
 * What the browser promised. `kept`: nothing is removed without the pilot's doing. `at risk`: it
 * may be removed when the device runs short of space. `unknown`: the browser does not say.
 */
export type StoragePromise = 'kept' | 'at risk' | 'unknown';

let asked: Promise<StoragePromise> | null = null;

/**
 * Asks for storage that lasts, unless it has been granted already. Some browsers ask the pilot, so
 * it is to be called once there is something worth keeping. It is asked once while the app
 * runs, however often this is called. Never rejects.
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
