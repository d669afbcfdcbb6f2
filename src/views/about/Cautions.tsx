/** The cautions, as About shows them and as they stand before the first flight. */

import type { JSX } from 'preact';
import styles from './About.module.css';
import { words } from './words.en';

/** What Lapstrip is not. */
export function Cautions(): JSX.Element {
  return (
    <ul class={styles.list}>
      {words.cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
