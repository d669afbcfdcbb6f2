/** A row of the answer: what it is, and how much. */

import type { JSX } from 'preact';
import styles from './Answer.module.css';

interface RowProps {
  readonly name: string;
  readonly children: JSX.Element | string;
}

/** A row of the answer. */
export function Row({ name, children }: RowProps): JSX.Element {
  return (
    <div class={styles.row}>
      <dt>{name}</dt>
      <dd class={styles.value}>{children}</dd>
    </div>
  );
}
