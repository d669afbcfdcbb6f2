/** Sounds and vibration for what was done: done, held back, and at the barrier. */

import { computed, effect } from '@preact/signals';
import { isForemost } from '../../device/foremost';
import { kept } from '../../device/kept';
import { play, type Sound } from '../../device/sounds';
import { vibrate } from '../../device/vibration';
import { keeping, record, sortie } from '../board';
import { wallNowMs } from '../flight/time';
import { walked } from './due';

/** Whether tones and vibration confirm what was done. */
export const feedbackOn = kept('sounds', (stored) => stored !== false);

/** Vibration on and off, ms, with rhythms as distinct as the tones. */
const PATTERNS: Readonly<Record<Sound, readonly number[]>> = {
  done: [40],
  held: [40, 80, 40],
  barrier: [120, 80, 120, 80, 120],
};

/** The barrier sounds this long after the tick that led to it, ms. */
const AFTER_MS = 250;

/** Plays a sound and its vibration; neither is allowed to a page that nobody has touched yet. */
export function tell(sound: Sound): void {
  if (navigator.userActivation?.hasBeenActive === false) return;
  play(sound);
  vibrate(PATTERNS[sound]);
}

/** Whether a barrier is due, or something held back before one. */
const isAtBarrier = computed(() => {
  const position = walked.value?.position;
  if (position?.kind !== 'step') return false;
  return position.barrier !== null || position.row.step.kind === 'barrier';
});

/** Starts sounding. Entries of other windows are announced there. */
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

/**
 * Anything older was read from the store, not done just now: a freshly loaded page stays silent,
 * ms.
 */
const JUST_NOW_MS = 5000;

/** More than this came from elsewhere: an imported log, or a window that was already open. */
const MOST_AT_ONCE = 40;

const isTold = () => feedbackOn.peek() && isForemost.peek();
