/** The answer as the dial shows it. */

import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { answered, old } from '../../board/answered';
import type { WindAnswer } from '../../core';

interface Pictured {
  readonly answered: WindAnswer;
  readonly old: boolean;
}

const shown = signal<Pictured>({ answered: answered.peek(), old: old.peek() });

/** What the dial shows: the answer, one frame after its words, which the pilot reads first. */
export const pictured: ReadonlySignal<Pictured> = shown;

effect(() => {
  const next = { answered: answered.value, old: old.value };
  // A frame's callbacks run before it is painted; what they put off runs after.
  requestAnimationFrame(() =>
    setTimeout(() => {
      shown.value = next;
    }),
  );
});
