/** What the first answer doesn't need, loaded once it is on screen. */

import { keepAwake } from '../board/awake';
import { startChoosing } from '../board/day';
import { loadParts } from '../board/dayParts';
import { followOwnDocuments } from '../board/documents/ownDocuments';
import { startCard } from '../board/steps/card';

import { noteFailure } from '../device/failures';
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
      // If one fails, the others still start.
      for (const begin of [
        loadViews,
        startSides,
        followWidth,
        startCard,
        keepAwake,
        loadParts,
        startChoosing,
      ]) {
        try {
          begin();
        } catch (error) {
          noteFailure(error);
        }
      }
      void startWhole().catch(() => undefined);
      void followOwnDocuments();
      void withWords(() => import('../views/voice/start')).then(
        ({ startHandsAndVoice }) => startHandsAndVoice(),
        () => undefined,
      );
      void import('../board/documents/launched').then(
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
