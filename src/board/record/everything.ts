/**
 * What the pilot can still do when a part of the screen can't be drawn: save everything, and start
 * afresh.
 */

import { storedSettings } from '../../device/drafts';
import { besideRecord } from '../../record/past';
import { storeBefore, storeBeside, useStore } from '../../record/storeName';
import { record } from '../board';
import { recordFiles } from '../documents/sharing';

/**
 * Everything stored, as it is, whether or not this version can use it: the record, which can be
 * merged again, and what belongs to the device. Rejects if the store can't be read.
 */
export async function everythingFiles(): Promise<readonly File[]> {
  const beside = await besideRecord(record).catch(() => null);
  const device = { lapstrip: 'device', settings: storedSettings(), ...beside };
  return [
    ...(await recordFiles()),
    new File([JSON.stringify(device)], 'lapstrip-device.json', { type: 'application/json' }),
  ];
}

/** What was set aside because it couldn't be read, as a file; null if nothing was. */
export async function setAsideFile(): Promise<File | null> {
  const { setAside } = await besideRecord(record);
  if (setAside.length === 0) return null;
  const text = JSON.stringify({ lapstrip: 'set-aside', version: 1, setAside });
  return new File([text, '\n'], 'lapstrip-set-aside.json', { type: 'application/json' });
}

/**
 * Starts with an empty store, and leaves this one as it is. Returns false if the device refuses.
 */
export function startAnewBeside(): boolean {
  return reopened(useStore(storeBeside()));
}

/** Whether the store in use was started beside another. */
export const isStoreBeside = (): boolean => storeBefore() !== null;

/** Returns to the store this one was started beside. Returns false if the device refuses. */
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
