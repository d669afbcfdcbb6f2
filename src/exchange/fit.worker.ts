/** Fits an aircraft's physics to its handbook away from the page, which can end it at any moment. */

import { loadFitter } from '../core';
import type { FitAsked, FitTold } from './fitApart';

addEventListener('message', async ({ data }: MessageEvent<FitAsked>) => {
  const { asItStands, fitAircraft } = await loadFitter();
  const { aircraft, guesses } = data.question;
  const told: FitTold = {
    fit: data.isFitted ? asItStands(aircraft) : fitAircraft(aircraft, guesses),
  };
  postMessage(told);
});
