/** A sheet's titled parts, in columns where there is room. */

import type { ComponentChildren, JSX } from 'preact';
import styles from './SheetPart.module.css';

/** The parts of a sheet. */
export const SheetParts = ({ children }: { children: ComponentChildren }): JSX.Element => (
  <div class={styles.parts}>{children}</div>
);

interface SheetPartProps {
  /** Left out by a part that is one key. */
  readonly title?: string;
  readonly children: ComponentChildren;
}

export function SheetPart({ title, children }: SheetPartProps): JSX.Element {
  return (
    <section class={styles.part}>
      {title !== undefined && <h3 class={styles.title}>{title}</h3>}
      {children}
    </section>
  );
}
