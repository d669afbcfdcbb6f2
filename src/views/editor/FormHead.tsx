/** The head of a form, which takes the focus when the form opens. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/** Heard but not seen: the form's first entry says what it is about. */
export function FormHead({ children }: { children: ComponentChildren }): JSX.Element {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    head.current?.focus({ preventScroll: true });
    const form = head.current?.parentElement;
    // Beside the list it stays in view; in the list's place it starts at its top.
    if (form && getComputedStyle(form).position !== 'sticky') form.scrollIntoView();
  }, []);
  return (
    <h3 ref={head} tabIndex={-1} class="spoken">
      {children}
    </h3>
  );
}
