/** What is left to a pilot when a part of the screen cannot be drawn: to save all there is, and to begin anew. */

import { storedSettings } from '../device/drafts';
import { storeBefore, storeBeside, useStore } from '../record/storeName';
import { readAllUnkept } from '../record/unkept';
import { recordFiles } from './sharing';

/**
 * All that is stored, as it is, whether or not this version can use it: the record, which can be
 * merged again, and what belongs to the device. Rejects where the store cannot be read.
 */
export async function everythingFiles(): Promise<readonly File[]> {
  const device = { lapstrip: 'device', settings: storedSettings(), unkept: await readAllUnkept() };
  return [
    ...(await recordFiles()),
    new File([JSON.stringify(device)], 'lapstrip-device.json', { type: 'application/json' }),
  ];
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
