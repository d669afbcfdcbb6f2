/** The one style of forms: a name over its input, what is wrong with it below, and hints. */

import type { ComponentChildren, JSX } from 'preact';
import styles from './Field.module.css';

/** Classes of an input or a list to pick from, of a text of several lines, of a hint, and of what is wrong. */
export const inputClass = styles.input;
export const linesClass = `${styles.input} ${styles.lines}`;
export const hintClass = styles.hint;
export const wrongClass = styles.wrong;

interface LabelledProps {
  readonly name: ComponentChildren;
  /** What is wrong with the input; false if nothing is. */
  readonly bad?: string | false;
  /** What it means, and the id that the input is described by. */
  readonly about?: { readonly id: string; readonly text: string } | undefined;
  /** The input. */
  readonly children: ComponentChildren;
}

/** A named input. */
export function Labelled({ name, bad = false, about, children }: LabelledProps): JSX.Element {
  const label = (
    // biome-ignore lint/a11y/noLabelWithoutControl: the input is what it is given.
    <label class={styles.field}>
      {name}
      {children}
      {bad !== false && <span class={wrongClass}>{bad}</span>}
    </label>
  );
  if (about === undefined) return label;
  return (
    <div class={styles.explained}>
      {label}
      <p id={about.id} class={styles.about}>
        {about.text}
      </p>
    </div>
  );
}

interface SaidProps {
  readonly children: ComponentChildren;
}

/** What helps to fill in a form. */
export const Hint = ({ children }: SaidProps): JSX.Element => <p class={hintClass}>{children}</p>;

/** What is wrong in a form, beside its inputs. */
export const Wrong = ({ children }: SaidProps): JSX.Element => <p class={wrongClass}>{children}</p>;
