/** What the first answer does not need, loaded once it stands. */

import { keepAwake } from '../board/awake';
import { loadTheRest } from '../board/board';
import { startCard } from '../board/card';
import { startDay } from '../board/day';
import { followOwnDocuments } from '../board/ownDocuments';
import { startTaxi } from '../board/taxi';
import { startToday } from '../board/today';
import { startSides } from '../device/sides';
import { applyUpdate, startUpdates } from '../device/update';
import { withWords } from '../parts/catalogues';
import { update } from './update';
import { loadViews } from './views';
import { startWhole } from './whole';
import { followWidth } from './wide';

/** Loads the sun, the other views and the worker. */
export function loadRest(): void {
  // One frame later, so that the answer is painted first.
  requestAnimationFrame(() =>
    setTimeout(() => {
      loadViews();
      startSides();
      followWidth();
      startCard();
      void startWhole().catch(() => undefined);
      keepAwake();
      void followOwnDocuments();
      void loadTheRest().catch(() => undefined);
      void startDay().catch(() => undefined);
      void startToday().catch(() => undefined);
      void startTaxi().catch(() => undefined);
      void withWords(() => import('../views/voice/start')).then(
        ({ startHandsAndVoice }) => startHandsAndVoice(),
        () => undefined,
      );
      void import('../board/launched').then(
        ({ takeLaunches }) => takeLaunches(),
        () => undefined,
      );
      void startUpdates({
        onReady: (news) => {
          update.value = { take: () => void applyUpdate(), news };
        },
        onOffline: () => undefined,
      });
    }),
  );
}
