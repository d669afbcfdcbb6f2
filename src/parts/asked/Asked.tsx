/** A number with a reason: a tap shows where it comes from. */

import type { ComponentChildren, JSX } from 'preact';
import styles from './Asked.module.css';

interface AskedProps {
  /** Said to a screen reader after the number. */
  readonly hint: string;
  readonly onAsk: () => void;
  readonly className?: string | undefined;
  readonly children: ComponentChildren;
}

/** A number that opens its reason. */
export function Asked({ hint, onAsk, className, children }: AskedProps): JSX.Element {
  return (
    <button
      type="button"
      class={`${styles.asked} ${className ?? ''}`}
      aria-description={hint}
      onClick={onAsk}
    >
      {children}
    </button>
  );
}
