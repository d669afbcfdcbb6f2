/** The cautions, shown before the first flight and in About. */

import type { JSX } from 'preact';
import styles from './Cautions.module.css';
import { words } from './words';

/** What Lapstrip is not. */
export function Cautions(): JSX.Element {
  return (
    <ul class={styles.cautions}>
      {words.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
