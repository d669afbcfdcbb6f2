/** One of a few: keys side by side, the chosen one down. */

import type { ComponentChildren, JSX } from 'preact';
import { Key } from '../key/Key';
import styles from './Choice.module.css';

interface ChoiceProps<T extends string> {
  readonly options: readonly { readonly value: T; readonly name: ComponentChildren }[];
  readonly chosen: T | null;
  /** What is being chosen, if no heading says it. */
  readonly label?: string;
  readonly onChoose: (value: T) => void;
}

/** The options that words name, in their order. */
export const choicesOf = <T extends string>(names: Readonly<Record<T, string>>) =>
  (Object.keys(names) as T[]).map((value) => ({ value, name: names[value] }));

/** A row of keys, one of them down. */
export function Choice<T extends string>({
  options,
  chosen,
  label,
  onChoose,
}: ChoiceProps<T>): JSX.Element {
  return (
    <fieldset class={styles.choice} aria-label={label}>
      {options.map(({ value, name }) => (
        <Key key={value} pressed={value === chosen} onPress={() => onChoose(value)}>
          {name}
        </Key>
      ))}
    </fieldset>
  );
}
