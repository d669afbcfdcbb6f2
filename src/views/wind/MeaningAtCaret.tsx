/** A tap on a piece of the report says what it means. */

import type { JSX } from 'preact';
import { typedRead } from '../../board/board';
import { shownReport } from '../../board/day';
import type { ReadSpan } from '../../core';
import { caret } from './caret';
import styles from './MeaningAtCaret.module.css';
import { words } from './meaningWords.en';

/** What a stretch of the text means, in words. */
export function spanWords({ kind, meaning }: ReadSpan): string {
  if (kind === 'unread') return words.notRead;
  const said = meaning === null ? words.noMeaning : words.meaning(meaning);
  if (kind === 'trend' || kind === 'forecast') return `${words.expected}: ${said}`;
  if (kind === 'another') return `${words.another}: ${said}`;
  return said;
}

/** The meaning of the group at the caret; nothing in a wind typed in short, whose words stand above. */
export function MeaningAtCaret(): JSX.Element | null {
  const at = caret.value;
  const kind = typedRead.value.report?.kind;
  if (at === null || kind === 'shorthand' || kind === 'nothing') return null;
  const span = shownReport.value?.spans.find(({ at: [from, to] }) => from <= at && at <= to);
  return span === undefined ? null : (
    <p class={styles.meaning} role="status">
      {spanWords(span)}
    </p>
  );
}
