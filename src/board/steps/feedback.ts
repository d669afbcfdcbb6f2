/** What was done is heard and felt: done, held back, and standing before the barrier. */

import { computed, effect } from '@preact/signals';
import { isForemost } from '../../device/foremost';
import { kept } from '../../device/kept';
import { play, type Sound } from '../../device/sounds';
import { vibrate } from '../../device/vibration';
import { keeping, record, sortie } from '../board';
import { wallNowMs } from '../flight/time';
import { walked } from './due';

/** Whether tones and vibration tell what was done. */
export const feedbackOn = kept('sounds', (stored) => stored !== false);

/** Ms on and off by turns, as different in rhythm as the tones are. */
const PATTERNS: Readonly<Record<Sound, readonly number[]>> = {
  done: [40],
  held: [40, 80, 40],
  barrier: [120, 80, 120, 80, 120],
};

/** The barrier is told when what was done to come before it has been, ms. */
const AFTER_MS = 250;

/** Makes a sound, and vibrates alike. */
export function tell(sound: Sound): void {
  play(sound);
  vibrate(PATTERNS[sound]);
}

/** Whether a barrier is due, or what is held back before one. */
const isAtBarrier = computed(() => {
  const position = walked.value?.position;
  if (position?.kind !== 'step') return false;
  return position.barrier !== null || position.row.step.kind === 'barrier';
});

/** Begins to tell. What other windows add is told there. */
export function startFeedback(): void {
  let known = record.entries.length;
  effect(() => {
    // Every entry that changes the steps changes the sortie.
    void sortie.value;
    const added = record.entries.slice(known);
    known = record.entries.length;
    if (keeping.peek() === 'opening' || added.length > MOST_AT_ONCE || !isTold()) return;
    const now = added.filter(({ at }) => wallNowMs() - at.wallMs < JUST_NOW_MS);
    if (now.some(({ kind }) => kind === 'held')) tell('held');
    else if (now.some(({ kind }) => kind === 'done' || kind === 'stamp')) tell('done');
  });
  let wasAtBarrier = isAtBarrier.peek();
  effect(() => {
    const reached = isAtBarrier.value && !wasAtBarrier;
    wasAtBarrier = isAtBarrier.value;
    if (reached && isTold()) setTimeout(() => tell('barrier'), AFTER_MS);
  });
}

/** What was done longer ago is read from the store, not done: a page that was just loaded stays silent, ms. */
const JUST_NOW_MS = 5000;

/** More than this comes from elsewhere: a log that was brought, another window that was open before. */
const MOST_AT_ONCE = 40;

const isTold = () => feedbackOn.peek() && isForemost.peek();
