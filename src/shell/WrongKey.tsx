/** The strip's key to the lists for when something is wrong; the roll has its own. */

import type { JSX } from 'preact';

import { chosenProcedure } from '../board/documents/inUse';
import { onRoll, openSheet } from '../board/places';
import { words } from './noticeWords';
import strip from './Strip.module.css';
import styles from './WrongKey.module.css';

/** The key, once there is a procedure with lists. */
export function WrongKey(): JSX.Element | null {
  if (chosenProcedure.value === null || onRoll.value) return null;
  return (
    <button
      type="button"
      class={`${strip.cell} ${styles.lists}`}
      aria-label={words.emergencies}
      aria-description={words.openLists}
      onClick={() => openSheet({ kind: 'wrong' })}
    >
      <span class={`${strip.value} ${styles.name}`}>{words.emergencies}</span>
    </button>
  );
}
