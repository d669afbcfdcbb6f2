/** What is left to a pilot when a part of the screen cannot be drawn: to save all there is, and to begin anew. */

import { storedSettings } from '../../device/drafts';
import { besideRecord } from '../../record/past';
import { storeBefore, storeBeside, useStore } from '../../record/storeName';
import { record } from '../board';
import { recordFiles } from '../documents/sharing';

/**
 * All that is stored, as it is, whether or not this version can use it: the record, which can be
 * merged again, and what belongs to the device. Rejects where the store cannot be read.
 */
export async function everythingFiles(): Promise<readonly File[]> {
  const beside = await besideRecord(record).catch(() => null);
  const device = { lapstrip: 'device', settings: storedSettings(), ...beside };
  return [
    ...(await recordFiles()),
    new File([JSON.stringify(device)], 'lapstrip-device.json', { type: 'application/json' }),
  ];
}

/** What was set aside because it could not be read, as a file; null where nothing was. */
export async function setAsideFile(): Promise<File | null> {
  const { setAside } = await besideRecord(record);
  if (setAside.length === 0) return null;
  const text = JSON.stringify({ lapstrip: 'set-aside', version: 1, setAside });
  return new File([text, '\n'], 'lapstrip-set-aside.json', { type: 'application/json' });
}

/** Begins with an empty store, and leaves this one as it is. False where the device does not let it. */
export function startAnewBeside(): boolean {
  return reopened(useStore(storeBeside()));
}

/** Whether the store in use was begun beside another. */
export const isBeside = (): boolean => storeBefore() !== null;

/** Goes back to the store beside which this one was begun. False where the device does not let it. */
export function goBackToStoreBefore(): boolean {
  return reopened(useStore(storeBefore()));
}

function reopened(isSet: boolean): boolean {
  if (isSet) {
    history.replaceState(null, '', `${location.pathname}#/wind`);
    location.reload();
  }
  return isSet;
}
