/** Opening one of the app's databases, even if a newer version of the app has upgraded it. */

import { type DBSchema, type IDBPDatabase, type OpenDBCallbacks, openDB } from 'idb';

interface Opening<Parts extends DBSchema> {
  /**
   * The database was closed: by a newer version of the app that wants to upgrade it, or by the
   * device.
   */
  readonly lost: () => void;
  readonly upgrade: NonNullable<OpenDBCallbacks<Parts>['upgrade']>;
}

/** Whether a newer version of the app has upgraded a database. */
export const isNewer = ({ version }: { readonly version: number }, than: number): boolean =>
  version > than;

/**
 * Opens a database; rejects if the device refuses. A database newer than `version` is opened as it
 * is: the caller decides whether its content is usable.
 */
export async function openDatabase<Parts extends DBSchema>(
  name: string,
  version: number,
  { lost, upgrade }: Opening<Parts>,
): Promise<IDBPDatabase<Parts>> {
  let opened: IDBPDatabase<Parts> | undefined;
  const callbacks: OpenDBCallbacks<Parts> = {
    // A newer version in another window is waiting: give way rather than block its upgrade.
    blocking: () => {
      opened?.close();
      lost();
    },
    terminated: lost,
  };
  try {
    opened = await openDB<Parts>(name, version, { ...callbacks, upgrade });
  } catch (error) {
    if (!(error instanceof DOMException && error.name === 'VersionError')) throw error;
    opened = await openDB<Parts>(name, undefined, callbacks);
  }
  return opened;
}
