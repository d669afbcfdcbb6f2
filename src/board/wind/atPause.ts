/** What follows typing by pauses, not by letters. */

import { type ReadonlySignal, signal } from '@preact/signals';

/** No letter has come for so long: typing pauses, ms. */
const PAUSE_MS = 200;

/**
 * A signal's value as it was when typing last paused. `isTyping` says of a change that just came
 * whether it is typed; one that is not is followed at once.
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
