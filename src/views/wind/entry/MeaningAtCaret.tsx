/** A tap on a piece of the report says what it means. */

import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { draft } from '../../../board/board';
import { notes } from '../../../board/day';
import type { ReadSpan } from '../../../core';
import { ExpectedBeyond } from '../report/Expected';
import { words } from '../report/meaningWords';
import { words as noteWords } from '../report/words';
import { atCaret } from './afterTyping';
import styles from './MeaningAtCaret.module.css';
import { WindElsewhere } from './WindElsewhere';

/** What a stretch of the text means, in words. */
export function spanWords({ kind, meaning }: ReadSpan): string {
  if (kind === 'unread') return words.notRead;
  const said = meaning === null ? words.noMeaning : words.meaning(meaning);
  if (kind === 'trend' || kind === 'forecast') return `${words.expected}: ${said}`;
  if (kind === 'another') return `${words.another}: ${said}`;
  return said;
}

/** Whether the entry shows the report in use, not what is typed. */
const isResting = computed(() => draft.value === '');

/**
 * Under the entry: the meaning of the group at the caret, and what to know about the report in use.
 */
export function MeaningAtCaret(): JSX.Element {
  return (
    <>
      <Meaning />
      {isResting.value &&
        notes.value.map((note) => (
          <p key={note.code} class={styles.note}>
            {noteWords.note(note)}
          </p>
        ))}
      {isResting.value && <WindElsewhere />}
      {isResting.value && <ExpectedBeyond />}
    </>
  );
}

function Meaning(): JSX.Element | null {
  const span = atCaret.value;
  return span === undefined ? null : (
    <p class={styles.meaning} role="status">
      {spanWords(span)}
    </p>
  );
}
