/** A sheet over the place: the browser's own dialog, so that focus, Escape and readers are right. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { Key } from '../key/Key';
import styles from './Sheet.module.css';

interface SheetProps {
  readonly title: ComponentChildren;
  readonly close: string;
  /** As narrow as its text, or as wide as the page. */
  readonly size?: 'note' | 'page';
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** A titled sheet with a key to close it; Escape and a tap outside close it too. */
export function Sheet({ title, close, size = 'note', onClose, children }: SheetProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const shown = dialog.current;
    const before = document.activeElement;
    if (shown !== null && !shown.open) shown.showModal();
    return () => {
      shown?.close();
      // It may be gone from the page by now, and then closing gives the keyboard back to nothing.
      const isNowhere = document.activeElement === document.body;
      if (isNowhere && before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      class={`${styles.sheet} ${styles[size]}`}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      // A tap outside asks to close as Escape does, in browsers that know of it.
      {...{ closedby: 'any' }}
    >
      <div class={styles.body}>
        <header class={styles.head}>
          <h2 id={id} class={styles.title}>
            {title}
          </h2>
          <Key onPress={onClose}>{close}</Key>
        </header>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text longer than the sheet is moved with the keyboard. */}
        <div class={styles.content} tabIndex={0}>
          {children}
        </div>
      </div>
    </dialog>
  );
}
