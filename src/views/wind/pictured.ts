/** The answer as the dial shows it. */

import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { answered, old } from '../../board/answered';
import { draft } from '../../board/board';
import type { WindAnswer } from '../../core';

interface Pictured {
  readonly answered: WindAnswer;
  readonly old: boolean;
}

const shown = signal<Pictured>({ answered: answered.peek(), old: old.peek() });

/**
 * What the dial shows: the answer, after its words, which the pilot reads first. One frame after
 * them, or while a wind is being typed once the typing pauses.
 */
export const pictured: ReadonlySignal<Pictured> = shown;

/** No letter has come for so long: the wind is typed, and is drawn, ms. */
const PAUSE_MS = 200;

let latest = shown.peek();
let typed = draft.peek();
let pause: ReturnType<typeof setTimeout> | undefined;

const draw = () => {
  shown.value = latest;
};

effect(() => {
  latest = { answered: answered.value, old: old.value };
  const isTyping = draft.value !== '' && draft.value !== typed;
  typed = draft.value;
  clearTimeout(pause);
  if (isTyping) pause = setTimeout(draw, PAUSE_MS);
  // A frame's callbacks run before it is painted; what they put off runs after.
  else requestAnimationFrame(() => setTimeout(draw));
});
