/** The parts of Wind loaded after its first answer, which comes in words. */

import type { ComponentType } from 'preact';
import { later } from '../../parts/later/Later';

type Parts = typeof import('./Detail');

const part = <P = object>(
  choose: (parts: Parts) => ComponentType<P>,
  when: 'drawn silently' | 'asked' = 'asked',
) => later(() => import('./Detail').then(choose), when);

/** The picture. */
export const dial = part(({ DialPanel }) => DialPanel);

/** The weather, every end, and the winds entered. */
export const list = part(({ Below }) => Below);

export const meaning = part(({ MeaningAtCaret }) => MeaningAtCaret);

/** Why no end is best: rare, and so loaded when first needed, or with the others. */
export const noBest = part(({ NoBest }) => NoBest, 'drawn silently');

/** That the runway selected fails: as rare, one hopes. */
export const usingFails = part(({ UsingFails }) => UsingFails);

/** What is wrong with a text: just as rare. */
export const problemText = part(({ ProblemText }) => ProblemText, 'drawn silently');

/** The warning of a low sun; the sun's position comes later too. */
export const lowSunRow = part(({ LowSunRow }) => LowSunRow, 'drawn silently');

/** Loads them. */
export function loadWindDetail(): void {
  for (const one of [dial, list, meaning, noBest, usingFails, problemText, lowSunRow])
    one.preload();
}
