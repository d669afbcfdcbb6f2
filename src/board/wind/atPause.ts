/** Following what is typed at pauses, not at every letter. */

import { type ReadonlySignal, signal } from '@preact/signals';

/** Typing pauses when no letter has come for this long, ms. */
const PAUSE_MS = 200;

/**
 * A signal's value at the last pause in typing. `isTyping` says whether a change that just came was
 * typed; one that wasn't is followed at once.
 */
export function atPause<T>(source: ReadonlySignal<T>, isTyping: () => boolean): ReadonlySignal<T> {
  const rested = signal(source.peek());
  let pause: ReturnType<typeof setTimeout> | undefined;
  source.subscribe((value) => {
    const rest = () => {
      rested.value = value;
    };
    clearTimeout(pause);
    if (isTyping()) pause = setTimeout(rest, PAUSE_MS);
    else rest();
  });
  return rested;
}
