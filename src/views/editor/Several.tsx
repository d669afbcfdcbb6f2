/** Several of a few: keys side by side, each up or down. */

import type { JSX } from 'preact';
import { Key } from '../../parts/key/Key';
import styles from './Editor.module.css';

interface SeveralProps<T extends string> {
  readonly options: readonly { readonly value: T; readonly name: string }[];
  readonly chosen: readonly T[];
  /** What is being chosen. */
  readonly label: string;
  /** Those now down, in the order of the options. */
  readonly onChoose: (chosen: T[]) => void;
}

/** A row of keys of which any number are down. */
export function Several<T extends string>({
  options,
  chosen,
  label,
  onChoose,
}: SeveralProps<T>): JSX.Element {
  const press = (pressed: T) =>
    onChoose(
      options
        .map(({ value }) => value)
        .filter((value) => chosen.includes(value) !== (value === pressed)),
    );
  return (
    <fieldset class={`${styles.keys} ${styles.several}`} aria-label={label}>
      {options.map(({ value, name }) => (
        <Key key={value} pressed={chosen.includes(value)} onPress={() => press(value)}>
          {name}
        </Key>
      ))}
    </fieldset>
  );
}
