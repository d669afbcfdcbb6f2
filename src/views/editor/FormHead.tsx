/** The head of a form, which takes the keyboard when the form is opened. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Heard, and not seen: the form says what it is of by its first entry. */
export function FormHead({ children }: { children: ComponentChildren }): JSX.Element {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus({ preventScroll: true });
    const form = head.current?.parentElement;
    // Beside the list it stays in sight; in the list's place it begins at its top.
    if (form && getComputedStyle(form).position !== 'sticky') form.scrollIntoView();
  }, []);
  return (
    <h3 ref={head} tabIndex={-1} class="spoken">
      {children}
    </h3>
  );
}
