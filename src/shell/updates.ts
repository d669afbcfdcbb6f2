/** Stores the app for use without a network, and learns of new versions, once the first answer stands. */

import { signal } from '@preact/signals';
import { startUpdates } from '../device/update';

/** A new version waits to be taken. */
export const updateReady = signal(false);

/** Everything is stored: the app starts without a network. */
export const worksOffline = signal(false);

/** Begins; call once. */
export function watchUpdates(): void {
  void startUpdates({
    onReady: () => {
      updateReady.value = true;
    },
    onOffline: () => {
      worksOffline.value = true;
    },
  });
}
