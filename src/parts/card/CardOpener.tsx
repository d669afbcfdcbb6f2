/**
 * The key that opens the Big card over a place: a word if there is room, otherwise an opening
 * frame.
 */

import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { keyClass } from '../key/Key';
import styles from './CardOpener.module.css';

interface CardOpenerProps {
  readonly name: string;
  readonly className?: string | undefined;
  /** Whether the card was just open: then the focus returns here. */
  readonly wasJustClosed: () => boolean;
  readonly onOpen: () => void;
}

/** The key. */
export function CardOpener({
  name,
  className,
  wasJustClosed,
  onOpen,
}: CardOpenerProps): JSX.Element {
  const key = useRef<HTMLButtonElement>(null);
  useLayoutEffect(() => {
    if (wasJustClosed()) key.current?.focus({ preventScroll: true });
  }, []);
  return (
    <button
      ref={key}
      type="button"
      class={keyClass({ className: `${styles.opener} ${className ?? ''}` })}
      aria-label={name}
      onClick={onOpen}
    >
      <svg class={styles.frame} viewBox="0 0 24 24" aria-hidden="true">
        <path d="M2 8V2H8M16 2H22V8M22 16V22H16M8 22H2V16" />
      </svg>
      <span class={styles.word}>{name}</span>
    </button>
  );
}
