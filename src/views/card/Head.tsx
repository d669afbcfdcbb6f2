/** The top edge: progress in the phase, and three short texts. */

import type { ComponentChildren, JSX } from 'preact';
import styles from './Card.module.css';

interface HeadProps {
  readonly cells: readonly [ComponentChildren, string, string];
  /** From 0 to 1; null if there is nothing to count. */
  readonly share: number | null;
}

/** The edge. */
export function Head({ cells: [where, end, live], share }: HeadProps): JSX.Element {
  return (
    <span class={styles.top}>
      <svg class={styles.bar} viewBox="0 0 100 1" preserveAspectRatio="none" aria-hidden="true">
        <rect class={styles.full} width={100 * (share ?? 0)} height="1" />
      </svg>
      <span class={styles.head}>
        <span>{where}</span>
        <b>{end}</b>
        <span>{live}</span>
      </span>
    </span>
  );
}
