/** What unfolds under its title when tapped. */

import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import styles from './Fold.module.css';

interface FoldProps {
  readonly title: string;
  /** Used at a desk, not in a moving aircraft: a smaller title. */
  readonly quiet?: boolean;
  /** Begins unfolded. */
  readonly opened?: boolean;
  /** Made only when it is open. */
  readonly children: () => ComponentChildren;
}

export function Fold({ title, quiet = false, opened = false, children }: FoldProps): JSX.Element {
  const [open, setOpen] = useState(opened);
  return (
    <details
      class={styles.fold}
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary class={`${styles.summary} ${quiet ? styles.quiet : ''}`}>{title}</summary>
      {open && children()}
    </details>
  );
}
