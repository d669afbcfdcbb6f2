/** Asking the browser not to throw away what the pilot has recorded. */

/**
 * What the browser promised. `kept`: nothing is removed without the pilot's doing. `at risk`: it
 * may be removed when the device runs short of space. `unknown`: the browser does not say.
 */
export type StoragePromise = 'kept' | 'at risk' | 'unknown';

/**
 * Asks for storage that lasts, unless it has been granted already. Some browsers ask the pilot, so
 * it is to be called once there is something worth keeping. Never rejects.
 */
export async function askToKeepStorage(): Promise<StoragePromise> {
  const { storage } = navigator;
  if (!storage?.persist || !storage.persisted) return 'unknown';
  try {
    return (await storage.persisted()) || (await storage.persist()) ? 'kept' : 'at risk';
  } catch {
    return 'unknown';
  }
}
