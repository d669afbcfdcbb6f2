/** Keys side by side, on as many lines as they need. */

import type { ComponentChildren, JSX } from 'preact';
import styles from './Keys.module.css';

/** The row. */
export const Keys = ({ children }: { children: ComponentChildren }): JSX.Element => (
  <div class={styles.keys}>{children}</div>
);
