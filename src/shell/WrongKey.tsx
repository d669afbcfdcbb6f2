/** The strip's key to the lists for when something is wrong; the roll has its own. */

import type { JSX } from 'preact';
import { inputs } from '../board/board';
import { onRoll, openSheet } from '../board/places';
import { words } from './noticeWords.en';
import styles from './Strip.module.css';

/** The key, once there is a procedure to have lists. */
export function WrongKey(): JSX.Element | null {
  if (inputs.value.procedure === null || onRoll.value) return null;
  return (
    <button
      type="button"
      class={`${styles.cell} ${styles.lists}`}
      aria-label={`${words.something} ${words.wrong}`}
      aria-description={words.openLists}
      onClick={() => openSheet({ kind: 'wrong' })}
    >
      <span class={styles.label}>{words.something}</span>
      <span class={styles.value}>{words.wrong}</span>
    </button>
  );
}
