/**
 * What waits for a pause in typing, so that a letter costs no more than its answer: the dial, and
 * the meaning of a group.
 */

import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import { draft, typed } from '../../../board/board';
import { shownReport } from '../../../board/day';
import { answered, isOld } from '../../../board/wind/answered';
import { atPause } from '../../../board/wind/atPause';
import type { ReadSpan, WindAnswer } from '../../../core';
import { caret } from './caret';

interface Pictured {
  readonly answered: WindAnswer;
  readonly old: boolean;
}

/** What was typed at the last pause; a wind that is set or dropped is no longer typed. */
const rested = atPause(draft, () => draft.peek() !== '');

const isTyping = computed(() => draft.value !== rested.value);

const shown = signal<Pictured>({ answered: answered.peek(), old: isOld.peek() });

/** What the dial shows: the answer, one frame after its words, which the pilot reads first. */
export const pictured: ReadonlySignal<Pictured> = shown;

effect(() => {
  if (isTyping.value) return;
  const latest = { answered: answered.value, old: isOld.value };
  // A frame's callbacks run before it is painted; what they defer runs after.
  requestAnimationFrame(() =>
    setTimeout(() => {
      shown.value = latest;
    }),
  );
});

let lastAtCaret: ReadSpan | undefined;

/** The piece of text at the caret; none of a wind typed in short, whose words stand above. */
export const atCaret: ReadonlySignal<ReadSpan | undefined> = computed(() => {
  const at = caret.value;
  if (isTyping.value) return lastAtCaret;
  const kind = typed.read().report?.kind;
  const explains = at !== null && kind !== 'shorthand' && kind !== 'nothing';
  lastAtCaret = explains
    ? shownReport.value?.spans.find(({ at: [from, to] }) => from <= at && at <= to)
    : undefined;
  return lastAtCaret;
});
