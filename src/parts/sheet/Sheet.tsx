/**
 * A sheet over the place: the browser's own dialog, so that focus, Escape and screen readers work.
 */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { Key } from '../key/Key';
import styles from './Sheet.module.css';

interface SheetProps {
  readonly title: ComponentChildren;
  readonly close: string;
  /** As narrow as its text, or as wide as the page. */
  readonly size?: 'note' | 'page';
  /** Leads to the other pages, if it is one of several. */
  readonly tabs?: ComponentChildren;
  /** Which of several pages it shows: each begins at its top. */
  readonly page?: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}

/** Whether the present press, or the last one, began outside a sheet. */
let beganOutside = false;

/** A titled sheet with a key to close it; Escape and a tap outside close it too. */
export function Sheet({
  title,
  close,
  size = 'note',
  tabs,
  page,
  onClose,
  children,
}: SheetProps): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const id = useId();
  useEffect(() => {
    const shown = dialog.current;
    const before = document.activeElement;
    if (shown !== null && !shown.open) shown.showModal();
    return () => {
      shown?.close();
      // By now it may be gone from the page, and then closing would return the focus to nothing.
      const isNowhere = document.activeElement === document.body;
      if (isNowhere && before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes it, by the browser's own event.
    <dialog
      ref={dialog}
      class={`${styles.sheet} ${styles[size]}`}
      aria-labelledby={id}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
      onPointerDown={({ target, currentTarget }) => {
        beganOutside = target === currentTarget;
      }}
      // On click and no sooner: what lies under the sheet must not get it.
      onClick={({ target, currentTarget }) => {
        if (beganOutside && target === currentTarget) onClose();
      }}
    >
      <div class={styles.body}>
        <header class={`${styles.head} ${tabs === undefined ? '' : styles.tabbed}`}>
          <h2 id={id} class={styles.title}>
            {title}
          </h2>
          {tabs}
          <Key className={styles.close} onPress={onClose}>
            {close}
          </Key>
        </header>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text longer than the sheet is moved with the keyboard. */}
        <div key={page} class={styles.content} tabIndex={0}>
          {children}
        </div>
      </div>
    </dialog>
  );
}
