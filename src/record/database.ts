/** Opening a database of the device, also one that a newer version of the app has made its own. */

import { type DBSchema, type IDBPDatabase, type OpenDBCallbacks, openDB } from 'idb';

interface Opening<Parts extends DBSchema> {
  /** The database was shut: a newer version of the app wanted it, or the device did it. */
  readonly lost: () => void;
  readonly upgrade: NonNullable<OpenDBCallbacks<Parts>['upgrade']>;
}

/** Whether a database is of a newer version of the app. */
export const isNewer = ({ version }: { readonly version: number }, than: number): boolean =>
  version > than;

/**
 * Opens a database; rejects where the device refuses. One that is newer than `version` is opened as it
 * is: whether what stands in it can be used is for the caller to see.
 */
export async function openDatabase<Parts extends DBSchema>(
  name: string,
  version: number,
  { lost, upgrade }: Opening<Parts>,
): Promise<IDBPDatabase<Parts>> {
  let opened: IDBPDatabase<Parts> | undefined;
  const callbacks: OpenDBCallbacks<Parts> = {
    // A newer version in another window waits for this one: give way rather than block the update.
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
