/** What the first answer does not need, loaded once it stands. */

import { loadTheRest } from '../board/board';
import { startDay } from '../board/day';
import { loadWholeDocuments } from '../board/documents';
import { listOwnDocuments } from '../board/ownDocuments';
import { startTaxi } from '../board/taxi';
import { startToday } from '../board/today';
import { askToKeepStorage } from '../device/storage';
import { applyUpdate, startUpdates } from '../device/update';
import { takeUpdate } from './update';
import { loadViews } from './views';

/** Loads the sun, the other views and the worker, and asks the browser to keep what is stored. */
export function loadRest(): void {
  // One frame later, so that the answer is painted first.
  requestAnimationFrame(() =>
    setTimeout(() => {
      loadViews();
      void loadWholeDocuments();
      void listOwnDocuments();
      void loadTheRest().catch(() => undefined);
      void startDay().catch(() => undefined);
      void startToday().catch(() => undefined);
      void startTaxi().catch(() => undefined);
      void import('../views/voice/start').then(
        ({ startHandsAndVoice }) => startHandsAndVoice(),
        () => undefined,
      );
      void startUpdates({
        onReady: () => {
          takeUpdate.value = () => void applyUpdate();
        },
        onOffline: () => undefined,
      });
      void askToKeepStorage();
    }),
  );
}
