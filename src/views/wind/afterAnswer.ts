/** What of Wind comes after its first answer, which stands in words first. */

import type { ComponentType } from 'preact';
import { later } from '../../parts/later/Later';
import { words } from './words.en';

const part = (choose: (parts: typeof import('./Detail')) => ComponentType) =>
  later(() => import('./Detail').then(choose), words.later, 'asked');

/** The picture. */
export const dial = part(({ DialPanel }) => DialPanel);

/** The weather, every end, and the winds entered. */
export const list = part(({ Below }) => Below);

/** What the group at the caret means. */
export const meaning = part(({ MeaningAtCaret }) => MeaningAtCaret);

/** Loads them. */
export function loadWindDetail(): void {
  for (const one of [dial, list, meaning]) one.preload();
}
